import { signalsNamed, stagesOf } from '../circuit/circuit.ts';
import type { Address } from '../rig/address.ts';
import type { Hz } from '../units/frequency.ts';
import { type Db, gainOf } from '../units/level.ts';
import { powerAt } from './power.ts';
import type { Solution } from './solution.ts';
import { solve } from './solve.ts';

/**
 * Response of a source at a place: by how much each frequency is raised or lowered from the recording to
 * here, in dB, in the order of the frequencies. Legs of a place and both sides of a source count together in
 * power; compressors stand at the gain that the whole music gives them.
 *
 * @returns nothing where an unstable loop leaves no level; `-Infinity` where a frequency does not arrive.
 * @throws RangeError when there is no such source or place.
 */
export function response(
  { circuit, compression }: Solution,
  source: string,
  place: Address,
  frequencies: readonly Hz[],
): Db[] | undefined {
  const signals = signalsNamed(circuit, source);
  const wanted = signals.map((signal) => circuit.signals.indexOf(signal));
  const { rows, columns } = solve(circuit, { grid: frequencies, compression });
  const born = wanted.reduce((sum, signal) => sum + columns.powerBorn(signal), 0);
  const arrived = new Float64Array(frequencies.length);
  for (const stage of stagesOf(circuit, place)) {
    const row = rows[stage];
    if (!row) return undefined;
    const powers = columns.powersOf(row);
    for (const signal of wanted) {
      const power = powers.get(signal) ?? 0;
      frequencies.forEach((_, point) => {
        arrived[point] = (arrived[point] ?? 0) + powerAt(power, point);
      });
    }
  }
  return Array.from(arrived, (power) => gainOf(Math.sqrt(power / born)));
}
