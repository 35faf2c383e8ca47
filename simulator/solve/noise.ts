import { stagesOf } from '../circuit/circuit.ts';
import { noiseCircuit } from '../circuit/noise-circuit.ts';
import type { Address } from '../rig/address.ts';
import { type Dbu, levelOfPower } from '../units/level.ts';
import { whiteOver } from '../units/white-noise.ts';
import { type Level, levelAt } from './levels.ts';
import type { Solution } from './solution.ts';
import { solve } from './solve.ts';

/** What the noise of one place makes of the noise at another. */
export interface NoiseShare {
  /** Whose noise it is: both legs together where it is stereo. */
  readonly place: Address;
  /** Level that it arrives with, RMS over a bandwidth of 20 kHz. */
  readonly level: Dbu;
  /** Its part of the noise power, 0 to 1. */
  readonly share: number;
}

/** Noises that were computed, by the solution that they belong to. */
const known = new WeakMap<Solution, Solution>();

/**
 * What stands at every stage when nothing plays but the noise of the stages: the same solver over the same wires,
 * with white noise in place of recordings, and every compressor at the gain that the music gives it.
 */
function noiseOf(solution: Solution): Solution {
  const found = known.get(solution);
  if (found) return found;
  const { circuit, grid, compression } = solution;
  const noise = solve(noiseCircuit(circuit), { grid, compression, spread: whiteOver(grid) });
  known.set(solution, noise);
  return noise;
}

const hasLevel = ({ circuit, rows }: Solution, place: Address): boolean =>
  stagesOf(circuit, place).every((stage) => rows[stage] !== undefined);

/**
 * Noise at a place, or at one leg of it: what every stage before it adds, and the place itself, by all the ways
 * that the signals take. RMS over a bandwidth of 20 kHz, unweighted; a stereo place counts both its legs.
 *
 * @returns nothing where an unstable loop leaves no level; `-Infinity` where no active stage leads.
 * @throws RangeError when the circuit has no such place.
 */
export const noiseAt = (solution: Solution, place: Address): Level =>
  hasLevel(solution, place) ? levelAt(noiseOf(solution), place) : undefined;

/**
 * The noise at a place by where it comes from, largest first. The powers add up to that of {@link noiseAt}; what
 * adds nothing is left out.
 *
 * @returns nothing where an unstable loop leaves no level.
 * @throws RangeError when the circuit has no such place.
 */
export function noiseShares(solution: Solution, place: Address): readonly NoiseShare[] | undefined {
  if (!hasLevel(solution, place)) return undefined;
  const { circuit, rows, columns } = noiseOf(solution);
  const powers = new Map<Address, number>();
  for (const stage of stagesOf(circuit, place)) {
    const row = rows[stage];
    if (!row) return undefined;
    for (const [signal, power] of columns.totalsOf(row)) {
      const born = circuit.signals[signal]?.track;
      if (born !== undefined) powers.set(born, (powers.get(born) ?? 0) + power);
    }
  }
  const whole = [...powers.values()].reduce((sum, power) => sum + power, 0);
  return [...powers]
    .filter(([, power]) => power > 0)
    .map(([born, power]) => ({ place: born, level: levelOfPower(power), share: power / whole }))
    .sort((one, other) => other.level - one.level);
}
