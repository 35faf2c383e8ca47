import { signalsNamed, stagesOf } from '../circuit/circuit.ts';
import type { Address } from '../rig/address.ts';
import { type Dbu, levelOfPower } from '../units/level.ts';
import type { Solution } from './solution.ts';

/** A level in dBu, or nothing where an unstable loop leaves none. Silence is `-Infinity`. */
export type Level = Dbu | undefined;

/**
 * Level of all signals together at a place, or at one leg of it (`desk.main.out.l`).
 *
 * A stereo place counts both its legs in power, so that a level does not depend on the pan of an
 * equal-power law. @throws RangeError when the circuit has no such place.
 */
export function levelAt({ circuit, rows, columns }: Solution, place: Address): Level {
  let power = 0;
  for (const stage of stagesOf(circuit, place)) {
    const row = rows[stage];
    if (!row) return undefined;
    power += columns.powerOf(row);
  }
  return levelOfPower(power);
}

/**
 * Level of one source at a place: of what came straight, and of what reverbs made of it.
 *
 * @param source a track (both sides where it is stereo) or one signal.
 * @throws RangeError when there is no such source or place.
 */
export const levelOf = (solution: Solution, source: string, place: Address): Level =>
  levelsFrom(solution, source)(place);

/** Like {@link levelOf}, for many places: it throws at once when there is no such source. */
export function levelsFrom(solution: Solution, source: string): (place: Address) => Level {
  const { circuit, rows, columns } = solution;
  const sought = signalsNamed(circuit, source).map((signal) => circuit.signals.indexOf(signal));
  return (place) => {
    let power = 0;
    for (const stage of stagesOf(circuit, place)) {
      const row = rows[stage];
      if (!row) return undefined;
      for (const signal of sought) power += columns.powerOfSignal(row, signal);
    }
    return levelOfPower(power);
  };
}

/**
 * The places where not the very same stands in two solutions, as it does where nothing between one and the next one
 * reaches. It is a quick look that computes no level: what stands at one of them can sound as it did all the same.
 *
 * @returns nothing where the solutions have not the same stages.
 */
export function placesReached(before: Solution, after: Solution): ReadonlySet<Address> | undefined {
  const { stages, stagesAt } = after.circuit;
  if (before.circuit.stagesAt !== stagesAt) return undefined;
  const reached = new Set<Address>();
  stages.forEach(({ place }, stage) => {
    if (before.rows[stage] !== after.rows[stage]) reached.add(place);
  });
  return reached;
}
