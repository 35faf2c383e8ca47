import type { Circuit } from '../circuit/circuit.ts';
import type { Address } from '../rig/address.ts';
import { stagesLeadingTo } from './paths.ts';

/**
 * By how many open ways a signal arrives, those through a reverb not counted: as many as `paths` lists of them,
 * without computing what any of them carries.
 *
 * @param start the stage where the signal enters.
 * @param goals the stages where it is listened to.
 * @param most the count stops there.
 */
export function countWays(
  circuit: Circuit,
  start: number,
  goals: readonly number[],
  most: number,
): number {
  const leading = stagesLeadingTo(circuit, goals);
  if (!leading.has(start)) return 0;
  const next = onwardsFrom(circuit, leading);
  let count = 0;
  const walk = (here: ReadonlySet<number>, walked: ReadonlySet<number>) => {
    if (goals.some((goal) => here.has(goal))) count += 1;
    for (const legs of placesAfter(circuit, here, next, walked).values()) {
      if (count >= most) return;
      walk(legs, new Set([...walked, ...legs]));
    }
  };
  walk(new Set([start]), new Set([start]));
  return count;
}

/** Where open wires lead from a stage, of those that lead on to the goals. */
function onwardsFrom({ wires }: Circuit, leading: ReadonlySet<number>): Map<number, number[]> {
  const next = new Map<number, number[]>();
  for (const to of leading) {
    for (const { from, ratio } of wires[to] ?? []) {
      if (ratio === 0) continue;
      const known = next.get(from);
      if (known) known.push(to);
      else next.set(from, [to]);
    }
  }
  return next;
}

/** The places that come next, reverbs left out, each with the legs that are reached. Left and right are one way. */
function placesAfter(
  { stages }: Circuit,
  here: ReadonlySet<number>,
  next: ReadonlyMap<number, readonly number[]>,
  walked: ReadonlySet<number>,
): Map<Address, Set<number>> {
  const places = new Map<Address, Set<number>>();
  for (const stage of here) {
    for (const to of next.get(stage) ?? []) {
      const { place, law } = stages[to] ?? {};
      if (place === undefined || law?.kind === 'decorrelator' || walked.has(to)) continue;
      const legs = places.get(place);
      if (legs) legs.add(to);
      else places.set(place, new Set([to]));
    }
  }
  return places;
}
