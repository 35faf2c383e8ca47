import type { Circuit } from '../circuit/circuit.ts';
import { powerOf } from '../units/level.ts';
import {
  addPowers,
  multiplyPowers,
  type Power,
  powerThrough,
  type Spread,
  totalOf,
} from './power.ts';
import type { Row } from './row.ts';

/**
 * The independent signals of a circuit and their powers: first the recorded ones, then one for each
 * decorrelator, whose power is shared out among the recorded signals that it came from. Recorded signals
 * have the same power in every third-octave band, unless the spread says otherwise.
 */
export class Columns {
  readonly #signalPowers: readonly number[];
  /** The decorrelators, in the order of their columns. */
  readonly #decorrelators: readonly number[];
  /** Powers by recorded signal, for each decorrelator; what is absent is silent. */
  readonly #decorrelated: ReadonlyMap<number, Power>[];

  readonly #spread: Spread;

  /** @param before the columns of a circuit with the same signals and stages, to start from. */
  constructor({ signals, stages }: Circuit, spread?: Spread, before?: Columns) {
    this.#spread = spread;
    this.#signalPowers = before ? before.#signalPowers : signals.map(({ level }) => powerOf(level));
    this.#decorrelators = before
      ? before.#decorrelators
      : stages.flatMap(({ law }, stage) => (law.kind === 'decorrelator' ? [stage] : []));
    this.#decorrelated = before
      ? [...before.#decorrelated]
      : this.#decorrelators.map(() => new Map());
  }

  get signalCount(): number {
    return this.#signalPowers.length;
  }

  /** Whether a column is the output of a decorrelator. */
  isDecorrelated(column: number): boolean {
    return column >= this.signalCount;
  }

  /** The column that a decorrelator's output is. @throws RangeError when the stage is none. */
  columnOf(decorrelator: number): number {
    const index = this.#decorrelators.indexOf(decorrelator);
    if (index < 0) throw new RangeError(`Expected a decorrelator, but got stage ${decorrelator}.`);
    return this.signalCount + index;
  }

  /** Sets the powers of a decorrelator's output, by recorded signal. */
  setPowers(column: number, powers: ReadonlyMap<number, Power>): void {
    this.#decorrelated[column - this.signalCount] = powers;
  }

  /** Power of all that stands at a row, relative to that of 0 dBu. */
  powerOf({ columns, transfers }: Row): number {
    let sum = 0;
    columns.forEach((column, index) => {
      const through = powerThrough(transfers[index] ?? 0);
      if (through === 0) return;
      if (this.isDecorrelated(column)) {
        this.#decorrelated[column - this.signalCount]?.forEach((power) => {
          sum += totalOf(multiplyPowers(power, through), this.#spread);
        });
      } else {
        sum += totalOf(multiplyPowers(this.powerBorn(column), through), this.#spread);
      }
    });
    return sum;
  }

  /** Power of what stands at a row, by recorded signal; of the columns that `counts` accepts. */
  powersOf({ columns, transfers }: Row, counts = (_column: number) => true): Map<number, Power> {
    const powers = new Map<number, Power>();
    columns.forEach((column, index) => {
      if (!counts(column)) return;
      const through = powerThrough(transfers[index] ?? 0);
      if (through === 0) return;
      for (const [signal, power] of this.#sharesOf(column)) {
        const added = multiplyPowers(power, through);
        powers.set(signal, addPowers(powers.get(signal) ?? 0, added));
      }
    });
    return powers;
  }

  /** Power of a recorded signal where it enters. */
  powerBorn(signal: number): number {
    return this.#signalPowers[signal] ?? 0;
  }

  /** Powers at a row, by recorded signal, each as one figure. */
  totalsOf(row: Row): Map<number, number> {
    const totals = new Map<number, number>();
    for (const [signal, power] of this.powersOf(row)) {
      totals.set(signal, totalOf(power, this.#spread));
    }
    return totals;
  }

  /** Power of one recorded signal at a row. */
  powerOfSignal({ columns, transfers }: Row, signal: number): number {
    let sum = 0;
    columns.forEach((column, index) => {
      const power = this.#shareOf(column, signal);
      if (power === 0) return;
      const arrived = multiplyPowers(power, powerThrough(transfers[index] ?? 0));
      sum += totalOf(arrived, this.#spread);
    });
    return sum;
  }

  /** Whose power a column is, by recorded signal. */
  #sharesOf(column: number): Iterable<readonly [number, Power]> {
    if (this.isDecorrelated(column)) return this.#decorrelated[column - this.signalCount] ?? [];
    return [[column, this.#signalPowers[column] ?? 0]];
  }

  #shareOf(column: number, signal: number): Power {
    if (!this.isDecorrelated(column)) {
      return column === signal ? (this.#signalPowers[signal] ?? 0) : 0;
    }
    return this.#decorrelated[column - this.signalCount]?.get(signal) ?? 0;
  }
}
