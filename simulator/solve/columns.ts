import type { Circuit } from '../circuit/circuit.ts';
import { powerOf } from '../units/level.ts';
import type { Row } from './row.ts';

/**
 * The independent signals of a circuit and their powers: first the recorded ones, then one for each
 * decorrelator, whose power is shared out among the recorded signals that it came from.
 */
export class Columns {
  readonly #signalPowers: readonly number[];
  readonly #decorrelated: Float64Array[] = [];
  readonly #decorrelatedTotals: number[] = [];

  constructor({ signals }: Circuit) {
    this.#signalPowers = signals.map(({ level }) => powerOf(level));
  }

  get signalCount(): number {
    return this.#signalPowers.length;
  }

  /** How many columns there are by now. */
  get count(): number {
    return this.signalCount + this.#decorrelated.length;
  }

  /** Whether a column is the output of a decorrelator. */
  isDecorrelated(column: number): boolean {
    return column >= this.signalCount;
  }

  /** Adds the output of a decorrelator. @returns its column. */
  addDecorrelated(powers: Float64Array = new Float64Array(this.signalCount)): number {
    this.#decorrelated.push(powers);
    this.#decorrelatedTotals.push(total(powers));
    return this.count - 1;
  }

  /** Sets the powers of a decorrelator's output, by recorded signal. */
  setPowers(column: number, powers: Float64Array): void {
    this.#decorrelated[column - this.signalCount] = powers;
    this.#decorrelatedTotals[column - this.signalCount] = total(powers);
  }

  /** Power of all that stands at a row, relative to that of 0 dBu. */
  powerOf({ columns, ratios }: Row): number {
    return columns.reduce((sum, column, index) => {
      const power = this.isDecorrelated(column)
        ? this.#decorrelatedTotals[column - this.signalCount]
        : this.#signalPowers[column];
      return sum + (ratios[index] ?? 0) ** 2 * (power ?? 0);
    }, 0);
  }

  /** Power of what stands at a row, by recorded signal; of the columns that `counts` accepts. */
  powersOf(
    { columns, ratios }: Row,
    counts = (_column: number) => true,
  ): Float64Array<ArrayBuffer> {
    const powers = new Float64Array(this.signalCount);
    columns.forEach((column, index) => {
      const squared = (ratios[index] ?? 0) ** 2;
      if (squared === 0 || !counts(column)) return;
      if (!this.isDecorrelated(column)) {
        powers[column] = (powers[column] ?? 0) + squared * (this.#signalPowers[column] ?? 0);
        return;
      }
      const shares = this.#decorrelated[column - this.signalCount];
      shares?.forEach((share, signal) => {
        powers[signal] = (powers[signal] ?? 0) + squared * share;
      });
    });
    return powers;
  }

  /** Power of one recorded signal at a row. */
  powerOfSignal({ columns, ratios }: Row, signal: number): number {
    return columns.reduce((sum, column, index) => {
      const power = this.isDecorrelated(column)
        ? (this.#decorrelated[column - this.signalCount]?.[signal] ?? 0)
        : column === signal
          ? (this.#signalPowers[signal] ?? 0)
          : 0;
      return sum + (ratios[index] ?? 0) ** 2 * power;
    }, 0);
  }
}

const total = (powers: Float64Array): number => powers.reduce((sum, power) => sum + power, 0);
