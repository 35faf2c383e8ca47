import type {
  Bay,
  BoxBus,
  Device,
  FileBoard,
  Output,
  Plugin,
  Rig,
  SoloMode,
} from '../rig/schema.ts';
import type { RandomStream } from './random-stream.ts';

/** Players of the net-loft session that are recorded with one microphone, with the levels of their tracks in dBFS. */
const MONO = {
  tenor: ['Tenor', -20],
  alto: ['Alto', -21],
  cello: ['Cello', -19],
  dulcimer: ['Dulcimer', -24],
  drum: ['Frame drum', -23],
  bass: ['Bass', -18],
} as const satisfies Record<string, readonly [label: string, levelDbfs: number]>;
export type MonoPlayer = keyof typeof MONO;

/** Those that are recorded in stereo. */
const STEREO = { piano: ['Piano', -22], room: ['Room', -30] } as const;
export type StereoPlayer = keyof typeof STEREO;

/** In which order players sit at the desk. Few, so that what is found out about a room serves many drills. */
const SEATINGS: readonly (readonly MonoPlayer[])[] = [
  ['tenor', 'alto', 'cello', 'dulcimer', 'drum', 'bass'],
  ['cello', 'bass', 'tenor', 'drum', 'alto', 'dulcimer'],
  ['drum', 'bass', 'dulcimer', 'cello', 'tenor', 'alto'],
  ['alto', 'dulcimer', 'bass', 'tenor', 'cello', 'drum'],
  ['dulcimer', 'tenor', 'drum', 'alto', 'bass', 'cello'],
  ['bass', 'cello', 'alto', 'drum', 'dulcimer', 'tenor'],
];

/** So many players, as they sit in one of the usual orders. */
export const seated = (stream: RandomStream, count: number): readonly MonoPlayer[] =>
  stream.pick(SEATINGS).slice(0, count);

/** What a small room of the net-loft session has. Everybody who plays has a track, an output and a strip. */
export interface RoomPlan {
  /** One strip each, `ch1` and on. */
  readonly players: readonly MonoPlayer[];
  /** Two strips each, behind those of the others. */
  readonly pairs?: readonly StereoPlayer[];
  /** Strips `par1` and on behind these, each on an output of its own that nothing is assigned to. */
  readonly spareStrips?: readonly string[];
  /** Rails: where their sends are taken. `aux1` feeds headphones A, `aux2` headphones B. */
  readonly auxes?: readonly Rig['desk']['auxes'][number]['tap'][];
  /** How many subgroups there are. */
  readonly groups?: number;
  readonly rack?: readonly Device[];
  /** Stereo strips for what comes back: `ret1` and on. */
  readonly returns?: readonly string[];
  readonly plugins?: Readonly<Partial<Record<MonoPlayer, readonly Plugin[]>>>;
  readonly buses?: readonly BoxBus[];
  /** How many outputs the converter has besides. */
  readonly moreOutputs?: number;
  readonly outputs?: readonly Output[];
  readonly solo?: SoloMode[];
  readonly bay?: Bay;
  /** Cords and settings of the room as one finds it. */
  readonly defaults?: FileBoard;
}

const rooms = new Map<string, Rig>();

/** The rig of a plan. The same plan gives the same rig. */
export function roomOf(plan: RoomPlan): Rig {
  const key = JSON.stringify(plan);
  const before = rooms.get(key);
  if (before) return before;
  const room = build(plan);
  rooms.set(key, room);
  return room;
}

function build(plan: RoomPlan): Rig {
  const { players, pairs = [], spareStrips = [], auxes = [], groups = 0, returns = [] } = plan;
  const single = players.length;
  const lines = single + 2 * pairs.length + spareStrips.length;
  const stripLabels = [
    ...players.map((id) => MONO[id][0]),
    ...pairs.flatMap((id) => [`${STEREO[id][0]} L`, `${STEREO[id][0]} R`]),
  ];
  const lineIds = [
    ...stripLabels.map((_, index) => `ch${index + 1}`),
    ...spareStrips.map((_, index) => `par${index + 1}`),
  ];
  const byBay = plan.bay !== undefined;
  return {
    id: 'drill-room',
    label: 'The net-loft session, a part of it',
    box: {
      tracks: [
        ...players.map((id) => trackOf(id, MONO[id], false, plan.plugins?.[id] ?? [])),
        ...pairs.map((id) => trackOf(id, STEREO[id], true, [])),
      ],
      buses: [...(plan.buses ?? [])],
      captures: [],
      compensates: false,
      panLaw: 'equal-power',
    },
    converter: {
      outputs: Math.max(2, lines + (plan.moreOutputs ?? 0)),
      inputs: 0,
      fullScaleDbu: 22,
      noiseDbfs: -118,
      latencyMs: 0,
    },
    desk: {
      panLaw: 'equal-power',
      noise: { line: -95, fader: -100, bus: -115 },
      clipDbu: 24,
      stripTypes: [
        {
          id: 'mono',
          stereo: false,
          stages: ['trim', 'polarity', 'insert', 'fader', 'mute', 'pan'],
          taps: { pre: 'insert', post: 'mute' },
        },
        {
          id: 'stereo-return',
          stereo: true,
          stages: ['trim', 'insert', 'fader', 'mute', 'pan'],
          taps: { pre: 'insert', post: 'mute' },
        },
      ],
      strips: [
        ...stripLabels.map((label, index) => strip(`ch${index + 1}`, String(index + 1), label)),
        ...spareStrips.map((label, index) => strip(`par${index + 1}`, `P${index + 1}`, label)),
        ...returns.map((label, index) => ({
          id: `ret${index + 1}`,
          mark: `R${index + 1}`,
          label,
          type: 'stereo-return',
        })),
      ],
      auxes: auxes.map((tap, index) => ({ id: `aux${index + 1}`, label: `Aux ${index + 1}`, tap })),
      subgroups: Array.from({ length: groups }, (_, index) => ({
        id: `sub${index + 1}`,
        label: `Subgroup ${index + 1}`,
        takes: 'both' as const,
        main: true,
      })),
      ...(plan.solo ? { solo: plan.solo, controlRoom: { inputs: [] } } : {}),
    },
    rack: [...(plan.rack ?? [])],
    ...(plan.bay ? { bay: plan.bay } : {}),
    outputs: [{ id: 'capture', label: 'Capture', stereo: true }, ...(plan.outputs ?? [])],
    defaults: {
      ...Object.fromEntries(players.map((id, index) => [`box.${id}.to`, `out${index + 1}`])),
      ...Object.fromEntries(
        pairs.flatMap((id, index) => {
          const first = single + 2 * index + 1;
          return [
            [`box.${id}.to`, `out${first}-${first + 1}`],
            [`desk.ch${first}.pan`, -1],
            [`desk.ch${first + 1}.pan`, 1],
          ];
        }),
      ),
      ...(byBay
        ? {}
        : Object.fromEntries(
            lineIds.map((id, index) => [`desk.${id}.in`, `converter.out${index + 1}`]),
          )),
      'out.capture.l': 'desk.main.out.l',
      'out.capture.r': 'desk.main.out.r',
      ...plan.defaults,
    },
  };
}

const trackOf = (
  id: string,
  [label, levelDbfs]: readonly [string, number],
  stereo: boolean,
  plugins: readonly Plugin[],
): Rig['box']['tracks'][number] => ({
  id,
  label,
  levelDbfs,
  stereo,
  crestDb: 12,
  plugins: [...plugins],
});

const strip = (id: string, mark: string, label: string) => ({ id, mark, label, type: 'mono' });

const device = (id: string, label: string, kind: Device['kind'], outputs: 1 | 2): Device => ({
  id,
  label,
  kind,
  inputs: 1,
  outputs,
  level: 'plus4',
});

/** What the rack of a small room may hold. */
export const COMPRESSOR = device('comp', 'Compressor', 'compressor', 1);
export const EQUALISER = device('eq', 'Equaliser', 'equaliser', 1);
export const LINE = device('line', 'Line amplifier', 'gain', 1);
export const PLATE = device('plate', 'Plate', 'reverb', 2);
export const CHAMBER = device('chamber', 'Chamber', 'reverb', 2);

/** Outputs besides the capture. */
export const HEADPHONES_A: Output = { id: 'headphones-a', label: 'Headphones A', stereo: false };
export const HEADPHONES_B: Output = { id: 'headphones-b', label: 'Headphones B', stereo: false };

/** The cords of an effect on a rail that comes back on a stereo strip. */
export const effectCords = (device: string, aux: string, ret: string): FileBoard => ({
  [`rack.${device}.in`]: `desk.${aux}.out`,
  [`desk.${ret}.in.l`]: `rack.${device}.out.l`,
  [`desk.${ret}.in.r`]: `rack.${device}.out.r`,
});
