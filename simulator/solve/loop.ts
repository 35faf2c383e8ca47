import type { Circuit } from '../circuit/circuit.ts';
import { compressionGain } from '../units/compression.ts';
import { type Db, db, gainOf, levelOfPower, ratioOf, UNITY } from '../units/level.ts';
import type { Columns } from './columns.ts';
import { type Matrix, solveFeedback, spectralRadius, zeros } from './matrix.ts';
import { hasRing, strongestRing } from './ring.ts';
import { combine, type Row, type Term } from './row.ts';

/** Stages that feed one another in a ring, or in several rings with stages in common. */
export interface Loop {
  /** The stages of its strongest ring, in signal order. */
  readonly ring: readonly number[];
  /** Gain once round this ring, in dB. */
  readonly gain: Db;
  /** Whether what circulates dies away. An unstable loop has no level, and neither has all that it reaches. */
  readonly stable: boolean;
}

/** A loop that was solved: its rows and compressor gains by stage. The rows are missing when there is no level. */
export interface SettledLoop {
  /** Nothing when no wires close a ring: when all that leads back is what a compressor listens to. */
  readonly loop: Loop | undefined;
  readonly rows: ReadonlyMap<number, Row>;
  readonly compression: ReadonlyMap<number, Db>;
}

/** A spectral radius above this counts as unstable: a loop at exactly unity must not slip through by rounding. */
const STABLE_BELOW = 1 - 1e-9;
const MOST_ROUNDS = 200;
const SETTLED_DB = 1e-9;
/** Share of the way that a compressor's gain moves in the first round, and the least that it ever moves. */
const FIRST_SHARE = 0.5;
const LEAST_SHARE = 1e-4;

/**
 * Solves stages that depend on one another.
 *
 * Voltages that circulate are solved as linear equations; stability is decided by the spectral radius,
 * also for inverted loops, since every real loop has some delay. Through a decorrelator it is power that
 * circulates, so those are solved once more in power. Compressors are found by iteration on their gains,
 * each damped as its last two rounds ask for (Aitken's relaxation): the nearer a loop is to unity, the more
 * it makes of a change of gain. A loop whose gains do not settle counts as unstable.
 */
export function settleLoop(
  circuit: Circuit,
  component: readonly number[],
  rows: readonly (Row | undefined)[],
  columns: Columns,
): SettledLoop {
  const parts = new LoopParts(circuit, component, rows, columns);
  let gains = new Map<number, Db>(parts.compressors.map((stage) => [stage, UNITY]));
  let settled: Map<number, Row> | undefined;
  const shares = new Map<number, number>();
  const lastErrors = new Map<number, number>();
  const nextGain = (stage: number, gain: number, error: number): Db => {
    const last = lastErrors.get(stage);
    const known = shares.get(stage) ?? FIRST_SHARE;
    const asked = last === undefined || last === error ? known : (known * last) / (last - error);
    const share = Math.min(1, Math.max(LEAST_SHARE, asked));
    shares.set(stage, share);
    lastErrors.set(stage, error);
    return db(Math.min(0, gain + share * error));
  };
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const solved = parts.hasUnknownInput ? undefined : parts.rowsWith(gains);
    if (!solved) break;
    const wanted = parts.gainsHeard(solved);
    const distance = Math.max(
      0,
      ...[...wanted].map(([stage, gain]) => Math.abs(gain - (gains.get(stage) ?? 0))),
    );
    if (distance < SETTLED_DB) {
      settled = solved;
      break;
    }
    gains = new Map(
      [...gains].map(([stage, gain]) => [
        stage,
        nextGain(stage, gain, (wanted.get(stage) ?? gain) - gain),
      ]),
    );
  }
  const { ring, ratio } = strongestRing(circuit, component, (stage) =>
    ratioOf(gains.get(stage) ?? UNITY),
  );
  // What comes in from an unstable loop has no level, but that does not make this loop unstable.
  const stable =
    settled !== undefined || (parts.hasUnknownInput && parts.rowsWith(gains) !== undefined);
  const isRing = hasRing(circuit, component);
  const loop = isRing || !stable ? { ring, gain: gainOf(ratio), stable } : undefined;
  return { loop, rows: settled ?? new Map(), compression: settled ? gains : new Map() };
}

/** The equations of one loop. Positions count its stages; lanes count the columns that enter or arise in it. */
class LoopParts {
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

  constructor(
    circuit: Circuit,
    stages: readonly number[],
    rows: readonly (Row | undefined)[],
    columns: Columns,
  ) {
    const kind = (stage: number) => circuit.stages[stage]?.law.kind;
    this.#circuit = circuit;
    this.#stages = stages;
    this.#columns = columns;
    this.#outside = rows;
    this.#position = new Map(stages.map((stage, position) => [stage, position]));
    this.compressors = stages.filter((stage) => kind(stage) === 'compressor');
    this.#decorrelators = stages.filter((stage) => kind(stage) === 'decorrelator');
    this.#ownColumn = new Map(
      this.#decorrelators.map((stage) => [stage, columns.addDecorrelated()]),
    );
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
    const matrix = this.#matrix(gains);
    if (spectralRadius(matrix) >= STABLE_BELOW) return undefined;
    const lanes = this.#lanes();
    const sides = this.#stages.map((stage, position) => {
      const side = new Float64Array(lanes.length);
      const own = this.#ownColumn.get(stage);
      if (own !== undefined) {
        side[lanes.indexOf(own)] = 1;
        return side;
      }
      const entering = this.#entering[position];
      const ratio = ratioOf(gains.get(stage) ?? UNITY);
      entering?.columns.forEach((column, index) => {
        side[lanes.indexOf(column)] = ratio * (entering.ratios[index] ?? 0);
      });
      return side;
    });
    const solved = solveFeedback(matrix, sides);
    const rows = new Map(
      this.#stages.map((stage, position) => [
        stage,
        { columns: lanes, ratios: [...(solved[position] ?? [])] },
      ]),
    );
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

  /** Ratios from stage to stage inside the loop. What enters a decorrelator does not leave it as the same signal. */
  #matrix(gains: ReadonlyMap<number, Db>): Matrix {
    const matrix = zeros(this.#stages.length);
    this.#stages.forEach((stage, position) => {
      if (this.#ownColumn.has(stage)) return;
      const gain = ratioOf(gains.get(stage) ?? UNITY);
      for (const { from, ratio } of this.#circuit.wires[stage] ?? []) {
        const source = this.#position.get(from);
        const row = matrix[position];
        if (source !== undefined && row) row[source] = (row[source] ?? 0) + gain * ratio;
      }
    });
    return matrix;
  }

  #lanes(): number[] {
    const entering = this.#entering.flatMap(({ columns }) => columns);
    return [...new Set([...entering, ...this.#ownColumn.values()])];
  }

  /** Finds the powers of the loop's decorrelators from the rows. @returns whether they settle. */
  #settlePowers(rows: ReadonlyMap<number, Row>): boolean {
    if (this.#decorrelators.length === 0) return true;
    const own = [...this.#ownColumn.values()];
    const incoming = this.#decorrelators.map((stage) => this.#incoming(stage, rows));
    const circulating: Matrix = incoming.map(({ columns, ratios }) =>
      Float64Array.from(own, (column) => (ratios[columns.indexOf(column)] ?? 0) ** 2),
    );
    if (spectralRadius(circulating) >= STABLE_BELOW) return false;
    const entering = incoming.map((row) =>
      this.#columns.powersOf(row, (column) => !own.includes(column)),
    );
    const powers = solveFeedback(circulating, entering);
    own.forEach((column, index) => {
      this.#columns.setPowers(column, powers[index] ?? new Float64Array());
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
