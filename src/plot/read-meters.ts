import {
  type Address,
  headroomAt,
  levelAt,
  noiseAt,
  type Owner,
  outputPlace,
  part,
  peakAt,
  type Solution,
} from '../../simulator/index.ts';
import type { MeterReading } from '../text/index.ts';

/**
 * Where an owner is metered as something comes in, and as it goes out: the first of these that it has. A line input
 * is metered behind its trim, where its amplifier clips.
 */
const COMES_IN = ['path', 'trim', 'in', 'listen', 'sum', 'source'];
const GOES_OUT = ['out', 'pan', 'mute', 'fader', 'level'];

/** The places of an owner that meters stand at: where something comes in, and where it has passed everything. */
export function meteredPlaces({ circuit }: Solution, owner: Owner): Address[] {
  if (circuit.stagesAt.has(owner)) return [owner];
  const firstOf = (names: readonly string[]) =>
    names.map((name) => part(owner, name)).find((place) => circuit.stagesAt.has(place));
  return [firstOf(COMES_IN), firstOf(GOES_OUT)].filter((place) => place !== undefined);
}

/** What meters show at every output of the room, and at an owner that is no output; leg by leg. */
export function readMeters(
  solution: Solution,
  outputs: readonly { readonly id: string }[],
  owner: Owner | undefined,
): MeterReading[] {
  const places = outputs.map(({ id }) => outputPlace(id));
  const touched = owner === undefined ? [] : meteredPlaces(solution, owner);
  return [...new Set([...places, ...touched])]
    .flatMap((place) => legsAt(solution, place))
    .map((leg) => readMeter(solution, leg));
}

function readMeter(solution: Solution, place: Address): MeterReading {
  return {
    place,
    rms: levelAt(solution, place),
    peak: peakAt(solution, place),
    noise: noiseAt(solution, place),
    limit: headroomAt(solution, place),
  };
}

const legsAt = ({ circuit }: Solution, place: Address): Address[] =>
  (circuit.stagesAt.get(place) ?? []).map((stage) => circuit.stages[stage]?.id ?? place);
