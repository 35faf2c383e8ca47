import type { Random } from './random.ts';
import type { DeviceData, DeviceKind, RigData, StripStage, StripTypeData } from './setup-file.ts';

/** What a random setup may hold. */
export interface Kinds {
  readonly strips: readonly [fewest: number, most: number];
  readonly devices: readonly DeviceKind[];
  /** Whether buses may lead back into what feeds them. */
  readonly loops: boolean;
  /** Times that a delay may stand at, in ms. */
  readonly delays?: readonly string[];
  /** Whether a delay may feed itself. */
  readonly feedback?: boolean;
}

const range = (count: number) => Array.from({ length: count }, (_, index) => index);

/** Kin with ids and labels: `ch1`, `ch2` and so on. */
const kin = (count: number, id: string) =>
  range(count).map((index) => ({ id: `${id}${index + 1}`, label: `${id} ${index + 1}` }));

/** The strips behind this share of them are returns: what comes back from devices and buses goes there. */
const RETURNS = 0.25;

/** A random rig as plain data; where its controls stand is not in it. */
export function randomRig(random: Random, kinds: Kinds): RigData {
  const stripCount = random.int(...kinds.strips);
  const returns = stripCount < 3 ? 1 : Math.max(1, Math.floor(stripCount * RETURNS));
  const trackCount = Math.max(1, stripCount - returns - random.int(0, 1));
  const tracks = kin(trackCount, 't').map((one) => ({
    ...one,
    levelDbfs: random.decimal(-40, -3),
    stereo: random.chance(0.25),
  }));
  const stripTypes: StripTypeData[] = [
    stripType(random, 'narrow', false),
    stripType(random, 'other', false),
    stripType(random, 'wide', true),
  ];
  const strips = kin(stripCount, 'ch').map((one, index) => ({
    ...one,
    mark: String(index + 1),
    type: random.chance(index < stripCount - returns ? 0.2 : 0.6)
      ? 'wide'
      : random.pick(['narrow', 'other']),
  }));
  const deviceCount = random.int(kinds.devices.length > 1 ? 2 : 1, 2 + Math.ceil(stripCount / 5));
  return {
    id: 'random',
    label: 'A random room',
    box: {
      tracks,
      buses: kin(random.int(0, 3), 'bus'),
      panLaw: random.pick(['equal-power', 'compromise', 'linear']),
    },
    converter: {
      outputs:
        Math.max(
          2,
          tracks.reduce((sum, { stereo }) => sum + (stereo ? 2 : 1), 0),
        ) + 2,
      fullScaleDbu: random.pick([15, 18, 22, 24]),
    },
    desk: {
      panLaw: random.pick(['equal-power', 'compromise', 'linear']),
      stripTypes,
      strips,
      auxes: kin(random.int(1, Math.min(8, 2 + Math.floor(stripCount / 4))), 'aux').map((one) => ({
        ...one,
        tap: random.pick(['pre', 'post', 'switchable', 'switchable']),
      })),
      subgroups: kin(random.int(0, Math.min(8, 1 + Math.floor(stripCount / 4))), 'sub'),
    },
    rack: kin(deviceCount, 'dev').map((one) => ({ ...one, ...device(random, kinds.devices) })),
    outputs: [
      { id: 'capture', label: 'Capture', stereo: true },
      ...kin(random.int(1, 3), 'phones').map((one) => ({ ...one, stereo: random.chance(0.4) })),
    ],
    defaults: {},
  };
}

/** A strip type with its stages in any order that a desk can have. */
function stripType(random: Random, id: string, stereo: boolean): StripTypeData {
  const all: readonly StripStage[] = ['trim', 'polarity', 'insert', 'fader', 'mute', 'pan'];
  const usual = all.filter((stage) => stage === 'pan' || random.chance(0.9));
  const stages = random.chance(0.5) ? usual : random.shuffled(usual);
  // The insert of a mono strip has jacks for one leg, so it stands before the pan.
  const ordered =
    stereo || stages.indexOf('insert') < stages.indexOf('pan')
      ? stages
      : (['insert', ...stages.filter((stage) => stage !== 'insert')] as const);
  // A send before the fader needs a stage to be taken behind, so that the fader is not the first one.
  const [first, second, ...others] = ordered;
  const placed = first === 'fader' && second ? [second, first, ...others] : ordered;
  const fader = placed.indexOf('fader');
  const [before, after] =
    fader < 0 ? [placed, placed] : [placed.slice(0, fader), placed.slice(fader)];
  return {
    id,
    stereo,
    stages: placed,
    taps: { pre: random.pick(before), post: random.pick(after) },
  };
}

function device(
  random: Random,
  kinds: readonly DeviceKind[],
): Pick<DeviceData, 'kind' | 'inputs' | 'outputs'> {
  const kind = random.pick(kinds);
  const inputs = random.pick([1, 1, 2] as const);
  const outputs = kind === 'reverb' && random.chance(0.6) ? 2 : inputs;
  return { kind, inputs, outputs };
}
