import type { Circuit } from '../circuit/circuit.ts';
import type { Address } from '../rig/address.ts';
import { openWiresOf } from './open-wires.ts';
import { spread } from './spread.ts';

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
  const { stages } = circuit;
  const { onwards, backwards } = openWiresOf(circuit);
  const leading = spread(goals, backwards, (stage) => stages[stage]?.law.kind === 'decorrelator');
  if (leading[start] !== 1) return 0;
  /** The stages that the way walked so far has passed. */
  const walked = new Uint8Array(stages.length);
  let count = 0;
  const walk = (here: readonly number[]) => {
    if (here.some((stage) => goals.includes(stage))) count += 1;
    for (const legs of placesAfter(here)) {
      if (count >= most) return;
      for (const leg of legs) walked[leg] = 1;
      walk(legs);
      for (const leg of legs) walked[leg] = 0;
    }
  };
  walked[start] = 1;
  walk([start]);
  return count;

  /** The legs of each place that comes next. Left and right are one way. */
  function placesAfter(here: readonly number[]): Iterable<readonly number[]> {
    const ahead: number[] = [];
    for (const stage of here) {
      for (const to of onwards[stage] ?? []) {
        if (leading[to] === 1 && walked[to] !== 1 && !ahead.includes(to)) ahead.push(to);
      }
    }
    if (ahead.length < 2) return ahead.length === 0 ? [] : [ahead];
    return Map.groupBy(ahead, (stage): Address => stages[stage]?.place ?? '').values();
  }
}
