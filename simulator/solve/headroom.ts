import { stagesOf } from '../circuit/circuit.ts';
import type { Address } from '../rig/address.ts';
import { type Db, type Dbu, levelOfPower, ratioOf } from '../units/level.ts';
import type { Level } from './levels.ts';
import type { Row } from './row.ts';
import type { Solution } from './solution.ts';

/** How near to its clip level an active stage is driven. */
export interface Headroom {
  /** The place, and its leg where it is stereo: `desk.main.sum.l`. */
  readonly stage: Address;
  readonly place: Address;
  /** The largest sine that passes, RMS. */
  readonly clip: Dbu;
  /** RMS level and crest together: a sine that large has the same peaks. Silence is `-Infinity`. */
  readonly peak: Dbu;
  /** From the peaks up to the clip level, in dB. Below 0 the stage clips; `Infinity` when nothing comes. */
  readonly headroom: Db;
}

/** Headrooms nearer to one another than this are alike: what is between them is rounding. */
const ALIKE_DB = 1e-6;

/**
 * Headroom at a place: clip level − (RMS level + crest). Of a stereo place the leg that has less.
 *
 * Peaks of different signals do not come at once: they add in power, as the signals do. So the crest of a mix is
 * the mean of its signals' crests, as power ratios, weighted by their powers: that of a signal alone is its own,
 * and a quiet signal does not decide. A reverb and a compressor leave the crest as it was.
 *
 * @returns nothing where no stage is active, and where an unstable loop leaves no level.
 * @throws RangeError when the circuit has no such place.
 */
export function headroomAt(solution: Solution, place: Address): Headroom | undefined {
  const legs = stagesOf(solution.circuit, place);
  if (legs.some((stage) => !solution.rows[stage])) return undefined;
  return leastOf(legs.flatMap((stage) => headroomOf(solution, stage) ?? []));
}

/**
 * RMS level and crest together at a place, in dBu: a sine that large has the same peaks. Of a stereo place the leg
 * with the larger one.
 *
 * @returns nothing where an unstable loop leaves no level; `-Infinity` where nothing comes.
 * @throws RangeError when the circuit has no such place.
 */
export function peakAt(solution: Solution, place: Address): Level {
  const rows = stagesOf(solution.circuit, place).map((stage) => solution.rows[stage]);
  if (!rows.every((row) => row !== undefined)) return undefined;
  return levelOfPower(Math.max(...rows.map((row) => peakPower(solution, row))));
}

/**
 * The stage that clips first when everything is turned up: the one with the least headroom, and among those that
 * are alike the first in signal order. Each stage is held against what would come if those before it did not clip.
 *
 * @returns nothing when all is silent or without level.
 */
export const firstToClip = (solution: Solution): Headroom | undefined =>
  leastOf(inSignalOrder(solution).filter(({ headroom }) => headroom < Infinity));

/** All stages that clip, in signal order: sums at the converter as well as amplifiers on the desk. */
export const clippingStages = (solution: Solution): readonly Headroom[] =>
  inSignalOrder(solution).filter(({ headroom }) => headroom < -ALIKE_DB);

function inSignalOrder(solution: Solution): Headroom[] {
  return solution.order.flat().flatMap((stage) => headroomOf(solution, stage) ?? []);
}

function headroomOf({ circuit, rows, columns }: Solution, stage: number): Headroom | undefined {
  const [active, row, named] = [circuit.active.get(stage), rows[stage], circuit.stages[stage]];
  if (!active || !row || !named) return undefined;
  const peak = levelOfPower(peakPower({ circuit, columns }, row));
  const headroom = (active.clip - peak) as Db;
  return { stage: named.id, place: named.place, clip: active.clip, peak, headroom };
}

function peakPower({ circuit, columns }: Pick<Solution, 'circuit' | 'columns'>, row: Row): number {
  let sum = 0;
  for (const [signal, power] of columns.totalsOf(row)) {
    const crest = circuit.signals[signal]?.crest;
    if (crest !== undefined) sum += power * ratioOf(crest) ** 2;
  }
  return sum;
}

/** The first of those with the least headroom. */
function leastOf(headrooms: readonly Headroom[]): Headroom | undefined {
  const [first, ...others] = headrooms;
  if (!first) return undefined;
  return others.reduce(
    (least, one) => (one.headroom < least.headroom - ALIKE_DB ? one : least),
    first,
  );
}
