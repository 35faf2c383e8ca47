import { stagesOf } from '../circuit/circuit.ts';
import type { Address } from '../rig/address.ts';
import type { Level } from '../solve/levels.ts';
import type { Solution } from '../solve/solution.ts';
import { levelOfPower, ratioOf } from '../units/level.ts';

/** For a place: the level at which what stands there arrives at some output. Nothing where there is no level. */
export type LevelToward = (place: Address) => Level;

/**
 * Looks at a circuit from one of its outputs: what stands at a place, turned up and down by the loudest way from
 * there to the output. Silence where no way leads there. Filters on the way count as if they passed everything.
 *
 * @param output any place. @throws RangeError when there is no such place, here or later.
 */
export function levelsToward(solution: Solution, output: Address): LevelToward {
  const { circuit, rows, columns } = solution;
  const ratios = ratiosToward(solution, stagesOf(circuit, output));
  return (place) => {
    let power = 0;
    for (const stage of stagesOf(circuit, place)) {
      const ratio = ratios[stage] ?? 0;
      if (ratio === 0) continue;
      const row = rows[stage];
      if (!row) return undefined;
      power += columns.powerOf(row) * ratio ** 2;
    }
    return levelOfPower(power);
  };
}

/** The voltage ratio of the loudest way from each stage to one of some stages, by stage; 0 where there is none. */
function ratiosToward(
  { circuit: { stages, wires }, order, compression }: Solution,
  outputs: readonly number[],
): Float64Array {
  const ratios = new Float64Array(stages.length);
  for (const stage of outputs) ratios[stage] = 1;
  for (const component of order.toReversed()) {
    // What goes round a ring comes by all of its stages before long.
    for (let rounds = component.length; rounds > 0; rounds -= 1) {
      for (const stage of component) {
        const gain = compression.get(stage);
        const onward = (ratios[stage] ?? 0) * (gain === undefined ? 1 : ratioOf(gain));
        if (onward === 0) continue;
        for (const { from, ratio } of wires[stage] ?? []) {
          ratios[from] = Math.max(ratios[from] ?? 0, Math.min(1e6, Math.abs(ratio) * onward));
        }
      }
    }
  }
  return ratios;
}
