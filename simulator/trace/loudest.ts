import type { Setup } from '../board/board.ts';
import type { Address } from '../rig/address.ts';
import { levelOf } from '../solve/levels.ts';
import type { Solution } from '../solve/solution.ts';
import { amplify, db, powerOf, SILENCE } from '../units/level.ts';

/** The fewest tracks whose peaks make half of those of all tracks at a place, the loudest first. */
export function loudestAt(
  { setup, solution }: { readonly setup: Setup; readonly solution: Solution },
  place: Address,
): string[] {
  const peaks = setup.rig.box.tracks
    .map(({ id, crestDb }) => {
      const level = levelOf(solution, id, place) ?? SILENCE;
      return { id, power: powerOf(amplify(level, db(crestDb))) };
    })
    .sort((one, other) => other.power - one.power);
  let left = peaks.reduce((sum, { power }) => sum + power, 0) / 2;
  return peaks.flatMap(({ id, power }) => {
    if (left <= 0) return [];
    left -= power;
    return [id];
  });
}
