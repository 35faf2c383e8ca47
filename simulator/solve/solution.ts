import type { Circuit } from '../circuit/circuit.ts';
import type { Db } from '../units/level.ts';
import type { Columns } from './columns.ts';
import type { Loop } from './loop.ts';
import type { Row } from './row.ts';
import type { Grid } from './transfer.ts';

/** What stands at every stage of a circuit. */
export interface Solution<C extends Circuit = Circuit> {
  readonly circuit: C;
  /** The frequencies that it was computed at, where anything depends on frequency. */
  readonly grid: Grid;
  /** By stage. Nothing where an unstable loop reaches: there is no level then. */
  readonly rows: readonly (Row | undefined)[];
  /** All stages, each after those that it depends on; those that depend on one another together. */
  readonly order: readonly (readonly number[])[];
  readonly columns: Columns;
  /** All loops that are closed, stable or not. */
  readonly loops: readonly Loop[];
  /** Gain of each compressor by its stage: 0 dB or a loss. */
  readonly compression: ReadonlyMap<number, Db>;
}
