import { type Circuit, stagesOf } from '../circuit/circuit.ts';
import type { Address } from '../rig/address.ts';
import { openWiresOf } from './open-wires.ts';
import { spread } from './spread.ts';
import { stagesWithin } from './stages-within.ts';

/** Whether some open way of a signal to an output passes a place, or a place of an owner. */
export function leadsThrough(
  circuit: Circuit,
  start: number,
  placeOrOwner: Address,
  output: Address,
): boolean {
  const { onwards, backwards } = openWiresOf(circuit);
  const reached = spread([start], onwards);
  const leading = spread(stagesOf(circuit, output), backwards);
  return stagesWithin(circuit, placeOrOwner).some(
    (stage) => reached[stage] === 1 && leading[stage] === 1,
  );
}

/** Whether some open way of a signal to an output passes no place of an owner, or not this place. */
export function leadsPast(
  circuit: Circuit,
  start: number,
  placeOrOwner: Address,
  output: Address,
): boolean {
  const barred = stagesWithin(circuit, placeOrOwner);
  const { backwards } = openWiresOf(circuit);
  const leading = spread(stagesOf(circuit, output), backwards, (stage) => barred.includes(stage));
  return leading[start] === 1;
}

/**
 * Whether every open way of a signal to an output passes all these stops in this order, and there is one.
 *
 * An owner may be passed more than once, a strip before and after its insert: it is enough that the stops
 * come one after the other somewhere on the way.
 */
export function alwaysPasses(
  circuit: Circuit,
  start: number,
  stops: readonly Address[],
  output: Address,
): boolean {
  const { backwards } = openWiresOf(circuit);
  const atStop = stops.map((stop) => stagesWithin(circuit, stop));
  /** How many stops are left to pass, from the first on, once a stage was passed against the signal. */
  const leftAfter = (stage: number, left: number): number =>
    left > 0 && atStop[left - 1]?.includes(stage) ? leftAfter(stage, left - 1) : left;

  // Walks against the signal from the output. What stands at a stage is seen once for each count of stops left.
  const counts = stops.length + 1;
  const seen = new Uint8Array(circuit.stages.length * counts);
  const waiting: number[] = [];
  const reach = (stage: number, before: number) => {
    const key = stage * counts + leftAfter(stage, before);
    if (seen[key] === 1) return;
    seen[key] = 1;
    waiting.push(key);
  };
  for (const stage of stagesOf(circuit, output)) reach(stage, stops.length);
  let arrives = false;
  for (let key = waiting.pop(); key !== undefined; key = waiting.pop()) {
    const [stage, left] = [Math.floor(key / counts), key % counts];
    if (stage === start) {
      if (left > 0) return false;
      arrives = true;
    }
    for (const from of backwards[stage] ?? []) reach(from, left);
  }
  return arrives;
}
