import type { Circuit } from '../circuit/circuit.ts';
import { compressionGain } from '../units/compression.ts';
import { type Db, levelOfPower, ratioOf, UNITY } from '../units/level.ts';
import type { Columns } from './columns.ts';
import { dependsOnFrequency, lawTransfer } from './law-transfer.ts';
import { isStableOverGrid, solveFeedbackOverGrid, type TransferMatrix } from './loop-spectrum.ts';
import { solveFeedback, spectralRadius, zeros } from './matrix.ts';
import { type Power, powerAt, powerThrough } from './power.ts';
import { combine, type Row, soleColumn, type Term } from './row.ts';
import { addTransfers, cascade, type Grid, type Transfer } from './transfer.ts';

/** A spectral radius above this counts as unstable: a loop at exactly unity must not slip through by rounding. */
export const STABLE_BELOW = 1 - 1e-9;

/** The equations of stages that depend on one another. Positions count its stages. */
export class LoopEquations {
  readonly compressors: readonly number[];
  readonly hasUnknownInput: boolean;
  readonly #circuit: Circuit;
  readonly #stages: readonly number[];
  readonly #position: ReadonlyMap<number, number>;
  /** What enters each stage from outside the loop, by position. */
  readonly #entering: readonly Row[];
  readonly #decorrelators: readonly number[];
  readonly #ownColumn: ReadonlyMap<number, number>;
  readonly #columns: Columns;
  readonly #outside: readonly (Row | undefined)[];
  /** Whether all frequencies go round alike. */
  readonly #isFlat: boolean;
  readonly #grid: Grid;

  constructor(
    circuit: Circuit,
    stages: readonly number[],
    rows: readonly (Row | undefined)[],
    columns: Columns,
    grid: Grid,
  ) {
    this.#grid = grid;
    const kind = (stage: number) => circuit.stages[stage]?.law.kind;
    this.#circuit = circuit;
    this.#stages = stages;
    this.#columns = columns;
    this.#outside = rows;
    this.#position = new Map(stages.map((stage, position) => [stage, position]));
    this.#isFlat = !stages.some((stage) => {
      const law = circuit.stages[stage]?.law;
      return law !== undefined && dependsOnFrequency(law);
    });
    this.compressors = stages.filter((stage) => kind(stage) === 'compressor');
    this.#decorrelators = stages.filter((stage) => kind(stage) === 'decorrelator');
    this.#ownColumn = new Map(this.#decorrelators.map((stage) => [stage, columns.columnOf(stage)]));
    let hasUnknownInput = false;
    this.#entering = stages.map((stage) => {
      const terms: Term[] = [];
      for (const { from, ratio } of circuit.wires[stage] ?? []) {
        if (ratio === 0 || this.#position.has(from)) continue;
        const row = rows[from];
        if (row) terms.push({ row, ratio });
        else hasUnknownInput = true;
      }
      return combine(terms);
    });
    const heard = this.compressors.flatMap((stage) => listenedTo(circuit, stage));
    this.hasUnknownInput =
      hasUnknownInput || heard.some((stage) => !this.#position.has(stage) && !rows[stage]);
  }

  /** The rows of all stages for given compressor gains; nothing when the loop is unstable with them. */
  rowsWith(gains: ReadonlyMap<number, Db>): Map<number, Row> | undefined {
    const own = this.#stages.map((stage) => this.#ownTransfer(stage, gains));
    const sides = this.#stages.map((stage, position) => {
      const column = this.#ownColumn.get(stage);
      if (column !== undefined) return soleColumn(column);
      return combine([
        { row: this.#entering[position] ?? soleColumn(-1), ratio: own[position] ?? 1 },
      ]);
    });
    const solved = this.#isFlat ? this.#solveFlat(own, sides) : this.#solveOverGrid(own, sides);
    if (!solved) return undefined;
    const rows = new Map(this.#stages.map((stage, position) => [stage, solved[position] as Row]));
    return this.#settlePowers(rows) ? rows : undefined;
  }

  /** The gain that each compressor would take at what it hears now. */
  gainsHeard(rows: ReadonlyMap<number, Row>): Map<number, Db> {
    return new Map(
      this.compressors.map((stage) => {
        const law = this.#circuit.stages[stage]?.law;
        if (law?.kind !== 'compressor') return [stage, UNITY];
        const heard = law.listensTo.reduce((sum, one) => {
          const row = rows.get(one) ?? this.#outside[one];
          return sum + (row ? this.#columns.powerOf(row) : 0);
        }, 0);
        return [stage, compressionGain(law.curve, levelOfPower(heard))];
      }),
    );
  }

  /** What a stage itself does to the sum of its wires. */
  #ownTransfer(stage: number, gains: ReadonlyMap<number, Db>): Transfer {
    const law = this.#circuit.stages[stage]?.law;
    const gain = ratioOf(gains.get(stage) ?? UNITY);
    return law ? cascade(gain, lawTransfer(law, this.#grid)) : gain;
  }

  /** Transfers from stage to stage inside the loop. What enters a decorrelator does not leave it as the same signal. */
  #matrix(own: readonly Transfer[]): TransferMatrix {
    return this.#stages.map((stage, position) => {
      const row = new Map<number, Transfer>();
      if (this.#ownColumn.has(stage)) return row;
      for (const { from, ratio } of this.#circuit.wires[stage] ?? []) {
        const source = this.#position.get(from);
        if (source === undefined || ratio === 0) continue;
        row.set(source, addTransfers(row.get(source) ?? 0, cascade(ratio, own[position] ?? 1)));
      }
      return row;
    });
  }

  /** The same ratios at all frequencies: one matrix, whose inverse shares out whatever enters. */
  #solveFlat(own: readonly Transfer[], sides: readonly Row[]): Row[] | undefined {
    const matrix = zeros(this.#stages.length);
    this.#matrix(own).forEach((row, position) => {
      for (const [source, ratio] of row) (matrix[position] as Float64Array)[source] = Number(ratio);
    });
    if (spectralRadius(matrix, STABLE_BELOW) >= STABLE_BELOW) return undefined;
    const unit = zeros(this.#stages.length);
    unit.forEach((row, position) => {
      row[position] = 1;
    });
    const shares = solveFeedback(matrix, unit);
    return shares.map((row) =>
      combine(sides.map((side, position) => ({ row: side, ratio: row[position] ?? 0 }))),
    );
  }

  #solveOverGrid(own: readonly Transfer[], sides: readonly Row[]): Row[] | undefined {
    const matrix = this.#matrix(own);
    if (!isStableOverGrid(matrix, STABLE_BELOW, this.#grid)) return undefined;
    return solveFeedbackOverGrid(matrix, sides, this.#grid);
  }

  /** Finds the powers of the loop's decorrelators from the rows. @returns whether they settle. */
  #settlePowers(rows: ReadonlyMap<number, Row>): boolean {
    if (this.#decorrelators.length === 0) return true;
    const own = [...this.#ownColumn.values()];
    const incoming = this.#decorrelators.map((stage) => this.#incoming(stage, rows));
    const circulating = incoming.map(({ columns, transfers }) =>
      own.map((column) => powerThrough(transfers[columns.indexOf(column)] ?? 0)),
    );
    const entering = incoming.map((row) =>
      this.#columns.powersOf(row, (column) => !own.includes(column)),
    );
    const powers = settledPowers(circulating, entering, this.#grid.length);
    if (!powers) return false;
    own.forEach((column, index) => {
      this.#columns.setPowers(column, powers[index] ?? new Map());
    });
    return true;
  }

  /** What comes to a stage from inside and outside the loop. */
  #incoming(stage: number, rows: ReadonlyMap<number, Row>): Row {
    const entering = this.#entering[this.#position.get(stage) ?? -1];
    const inside = (this.#circuit.wires[stage] ?? []).flatMap(({ from, ratio }): Term[] => {
      const row = rows.get(from);
      return row ? [{ row, ratio }] : [];
    });
    return combine([...inside, ...(entering ? [{ row: entering, ratio: 1 }] : [])]);
  }
}

function listenedTo({ stages }: Circuit, compressor: number): readonly number[] {
  const law = stages[compressor]?.law;
  return law?.kind === 'compressor' ? law.listensTo : [];
}

/**
 * Powers that go round through decorrelators once they have settled, by recorded signal; nothing when they grow.
 * Solved once where all is even over the bands, else point by point.
 */
function settledPowers(
  circulating: readonly (readonly Power[])[],
  entering: readonly ReadonlyMap<number, Power>[],
  gridLength: number,
): Map<number, Power>[] | undefined {
  const signals = [...new Set(entering.flatMap((powers) => [...powers.keys()]))];
  const isEven = [
    ...circulating.flat(),
    ...entering.flatMap((powers) => [...powers.values()]),
  ].every((power) => typeof power === 'number');
  const points = isEven ? 1 : gridLength;
  const settled = entering.map(() => signals.map(() => new Float64Array(points)));
  for (let point = 0; point < points; point += 1) {
    const matrix = circulating.map((row) =>
      Float64Array.from(row, (power) => powerAt(power, point)),
    );
    if (spectralRadius(matrix, STABLE_BELOW) >= STABLE_BELOW) return undefined;
    const sides = entering.map((powers) =>
      Float64Array.from(signals, (signal) => powerAt(powers.get(signal) ?? 0, point)),
    );
    solveFeedback(matrix, sides).forEach((row, position) => {
      row.forEach((power, signal) => {
        const target = settled[position]?.[signal];
        if (target) target[point] = power;
      });
    });
  }
  return settled.map(
    (row) =>
      new Map(
        row.map((power, signal) => [signals[signal] ?? -1, isEven ? (power[0] ?? 0) : power]),
      ),
  );
}
