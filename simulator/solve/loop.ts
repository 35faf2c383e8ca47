import type { Circuit } from '../circuit/circuit.ts';
import { magnitude } from '../units/complex.ts';
import type { Hz } from '../units/frequency.ts';
import { type Db, db, gainOf, ratioOf, UNITY } from '../units/level.ts';
import type { Columns } from './columns.ts';
import { lawTransfer } from './law-transfer.ts';
import { LoopEquations } from './loop-equations.ts';
import { largestMagnitude } from './loop-spectrum.ts';
import type { Spread } from './power.ts';
import { hasRing, type Ring, strongestRing } from './ring.ts';
import type { Row } from './row.ts';
import { cascade, type Grid, gainAt, gainOf as gainThrough, type Transfer } from './transfer.ts';

/** Stages that feed one another in a ring, or in several rings with stages in common. */
export interface Loop {
  /** The stages of its strongest ring, in signal order. */
  readonly ring: readonly number[];
  /** Gain once round this ring, in dB. */
  readonly gain: Db;
  /** Whether what circulates dies away. An unstable loop has no level, and neither has all that it reaches. */
  readonly stable: boolean;
  /** Where what circulates is strongest; nothing where all frequencies are alike. */
  readonly worst: Hz | undefined;
}

/** What a computation is made with. */
export interface SolveAt {
  readonly grid: Grid;
  /** Gains of the compressors, where they are known; else they follow from what each hears. */
  readonly compression?: ReadonlyMap<number, Db> | undefined;
  /** How signals are born over the grid; without it evenly over the third-octave bands. */
  readonly spread?: Spread;
}

/** A loop that was solved: its rows and compressor gains by stage. The rows are missing when there is no level. */
export interface SettledLoop {
  /** Nothing when no wires close a ring: when all that leads back is what a compressor listens to. */
  readonly loop: Loop | undefined;
  readonly rows: ReadonlyMap<number, Row>;
  readonly compression: ReadonlyMap<number, Db>;
}

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
  { grid, compression }: SolveAt,
): SettledLoop {
  const parts = new LoopEquations(circuit, component, rows, columns, grid);
  let gains = new Map<number, Db>(
    parts.compressors.map((stage) => [stage, compression?.get(stage) ?? UNITY]),
  );
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
    const wanted = compression ? gains : parts.gainsHeard(solved);
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
  const found = strongestRing(circuit, component, (stage) => {
    const law = circuit.stages[stage]?.law;
    const own = law ? largestMagnitude(lawTransfer(law, grid)) : 1;
    return own * ratioOf(gains.get(stage) ?? UNITY);
  });
  const { ring } = found;
  const { ratio, worst } = atItsWorst(circuit, found, grid);
  // What comes in from an unstable loop has no level, but that does not make this loop unstable.
  const stable =
    settled !== undefined || (parts.hasUnknownInput && parts.rowsWith(gains) !== undefined);
  const isRing = hasRing(circuit, component);
  const loop = isRing || !stable ? { ring, gain: gainOf(ratio), stable, worst } : undefined;
  return { loop, rows: settled ?? new Map(), compression: settled ? gains : new Map() };
}

/** The gain once round a ring at the frequency where it is largest; the search took the largest of each stage. */
function atItsWorst(
  { stages }: Circuit,
  { ring, ratio }: Ring,
  grid: Grid,
): { ratio: number; worst?: Hz } {
  const laws = ring.map((stage) => stages[stage]?.law).filter((law) => law !== undefined);
  const apart = laws.reduce(
    (product, law) => product * largestMagnitude(lawTransfer(law, grid)),
    1,
  );
  const together = laws.reduce<Transfer>(
    (product, law) => cascade(product, lawTransfer(law, grid)),
    1,
  );
  const gain = gainThrough(together);
  if (typeof gain === 'number' || apart === 0) return { ratio };
  const sizes = grid.map((_, point) => magnitude(gainAt(gain, point)));
  const largest = Math.max(...sizes);
  const worst = grid[sizes.indexOf(largest)];
  return { ratio: (ratio / apart) * largest, ...(worst === undefined ? {} : { worst }) };
}
