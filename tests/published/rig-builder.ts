import { type ControlValue, parseSetup, type Setup } from '../../simulator/index.ts';

/** Alignment of a bench that names none: 0 dBFS in dBu. */
export const FULL_SCALE_DBU = 24;

export type TapOfAux = 'pre' | 'post' | 'switchable';

export interface BenchDevice {
  readonly id: string;
  readonly kind: 'gain' | 'compressor' | 'equaliser' | 'delay' | 'reverb';
  readonly inputs?: 1 | 2;
  readonly outputs?: 1 | 2;
  readonly level?: 'plus4' | 'minus10';
  readonly noiseDbu?: number;
  readonly clipDbu?: number;
}

export interface BenchPlugin {
  readonly id: string;
  readonly kind: BenchDevice['kind'];
  readonly latencyMs?: number;
}

/** As good as none. */
export const NO_NOISE = -200;

/** A rig for one check, with where its controls stand. */
export interface Bench {
  /**
   * Level of each track, in dBFS. Track `t1` comes out of output 1 and into strip `ch1`, and so on.
   * Every strip is on the main bus, and the main bus on the stereo output `capture`.
   */
  readonly levels: readonly number[];
  readonly fullScaleDbu?: number;
  /** By how much the peaks of every track stand above its level; without it that of the format. */
  readonly crestDb?: number;
  /** How many mono strips there are; without it, one for each track. */
  readonly strips?: number;
  /** Auxes `aux1`, `aux2` and so on, by where their sends are taken. */
  readonly auxes?: readonly TapOfAux[];
  /** How many subgroups there are: `sub1`, `sub2` and so on. */
  readonly subgroups?: number;
  readonly rack?: readonly BenchDevice[];
  /** Plug-ins by track; each has its id as its name. */
  readonly plugins?: Readonly<Record<string, readonly BenchPlugin[]>>;
  /** Latency of the converter, each way. With one, it has an input for a capture track `recorded`. */
  readonly converterMs?: number;
  readonly panLaw?: 'equal-power' | 'compromise' | 'linear';
  /** Noises of the desk in dBu, and of each converter output in dBFS; without them those of the format. */
  readonly noise?: {
    readonly line?: number;
    readonly fader?: number;
    readonly bus?: number;
    readonly converterDbfs?: number;
  };
  /** A patchbay, as data of the setup file. */
  readonly bay?: object;
  readonly board?: Readonly<Record<string, ControlValue>>;
}

/**
 * The setup of a bench, written as the text of a setup file and read back through the public door.
 * Besides its mono strips it has a stereo strip `ret` and a mono output `phones`, with nothing in them.
 *
 * @throws InputError when the bench is no sound setup.
 */
export function setUp(bench: Bench): Setup {
  const { levels, fullScaleDbu = FULL_SCALE_DBU, auxes = [], subgroups = 0, rack = [] } = bench;
  const { converterMs } = bench;
  const { converterDbfs, ...deskNoise } = bench.noise ?? {};
  const stripCount = bench.strips ?? levels.length;
  const panLaw = bench.panLaw ?? 'equal-power';
  const tracks = levels.map((levelDbfs, index) => ({
    ...named(`t${index + 1}`),
    levelDbfs,
    ...(bench.crestDb === undefined ? {} : { crestDb: bench.crestDb }),
    plugins: (bench.plugins?.[`t${index + 1}`] ?? []).map((one) => ({ ...named(one.id), ...one })),
  }));
  const strips = numbers(stripCount).map((number) => ({
    ...named(`ch${number}`),
    mark: String(number),
    type: 'mono',
  }));
  const file = {
    format: 'tap-and-sum/setup',
    version: 1,
    rig: {
      ...named('bench'),
      box: {
        tracks,
        buses: [named('blend')],
        captures: converterMs === undefined ? [] : [named('recorded')],
        panLaw,
      },
      // Two at least, so that there is a pair of outputs for the main mix of the box.
      converter: {
        outputs: Math.max(2, levels.length),
        ...(converterMs === undefined ? {} : { inputs: 1, latencyMs: converterMs }),
        fullScaleDbu,
        ...(converterDbfs === undefined ? {} : { noiseDbfs: converterDbfs }),
      },
      desk: {
        panLaw,
        noise: deskNoise,
        stripTypes: [
          {
            id: 'mono',
            stages: ['trim', 'polarity', 'insert', 'fader', 'mute', 'pan'],
            taps: { pre: 'insert', post: 'mute' },
          },
          {
            id: 'stereo',
            stereo: true,
            stages: ['trim', 'insert', 'fader', 'mute', 'pan'],
            taps: { pre: 'insert', post: 'mute' },
          },
        ],
        strips: [...strips, { ...named('ret'), mark: 'R', type: 'stereo' }],
        auxes: auxes.map((tap, index) => ({ ...named(`aux${index + 1}`), tap })),
        subgroups: numbers(subgroups).map((number) => named(`sub${number}`)),
      },
      rack: rack.map((device) => ({ ...named(device.id), ...device })),
      ...(bench.bay ? { bay: bench.bay } : {}),
      outputs: [{ ...named('capture'), stereo: true }, named('phones')],
      defaults: {
        ...Object.fromEntries(
          levels.flatMap((_, index) => [
            [`box.t${index + 1}.to`, `out${index + 1}`],
            [`desk.ch${index + 1}.in`, `converter.out${index + 1}`],
          ]),
        ),
        'out.capture.l': 'desk.main.out.l',
        'out.capture.r': 'desk.main.out.r',
      },
    },
    board: bench.board ?? {},
  };
  return parseSetup('bench', JSON.stringify(file, closedAsText));
}

const named = (id: string) => ({ id, label: id });
const numbers = (count: number) => Array.from({ length: count }, (_, index) => index + 1);
/** JSON has no infinity: a closed control is written as text. */
const closedAsText = (_key: string, value: unknown) => (value === -Infinity ? '-inf' : value);
