import type { Circuit } from '../circuit/circuit.ts';
import { compressionGain } from '../units/compression.ts';
import { GRID } from '../units/frequency.ts';
import { type Db, levelOfPower, ratioOf } from '../units/level.ts';
import { Columns } from './columns.ts';
import { componentsInOrder } from './components.ts';
import { dependsOnFrequency, lawTransfer } from './law-transfer.ts';
import { type Loop, type SolveAt, settleLoop } from './loop.ts';
import { combine, type Row, scale, soleColumn } from './row.ts';
import type { Grid } from './transfer.ts';

/** What stands at every stage of a circuit. */
export interface Solution {
  readonly circuit: Circuit;
  /** The frequencies that it was computed at, where anything depends on frequency. */
  readonly grid: Grid;
  /** By stage. Nothing where an unstable loop reaches: there is no level then. */
  readonly rows: readonly (Row | undefined)[];
  readonly columns: Columns;
  /** All loops that are closed, stable or not. */
  readonly loops: readonly Loop[];
  /** Gain of each compressor by its stage: 0 dB or a loss. */
  readonly compression: ReadonlyMap<number, Db>;
}

/**
 * Computes what stands at every stage: stage by stage where signals only go forward, all at once
 * inside loops. One figure for each signal where nothing depends on frequency, else a spectrum.
 */
export function solve(circuit: Circuit, at: SolveAt = { grid: GRID }): Solution {
  const columns = new Columns(circuit, at.spread);
  const rows = new Array<Row | undefined>(circuit.stages.length).fill(undefined);
  const loops: Loop[] = [];
  const compression = new Map<number, Db>();
  const signalAt = new Map(circuit.signals.map(({ stage }, index) => [stage, index] as const));

  for (const component of componentsInOrder(circuit)) {
    const [stage] = component;
    if (stage === undefined) continue;
    if (component.length > 1 || feedsItself(circuit, stage)) {
      const settled = settleLoop(circuit, component, rows, columns, at);
      if (settled.loop) loops.push(settled.loop);
      for (const [member, row] of settled.rows) rows[member] = row;
      for (const [member, gain] of settled.compression) compression.set(member, gain);
      continue;
    }
    rows[stage] = rowOf(stage);
  }
  return { circuit, grid: at.grid, rows, columns, loops, compression };

  function rowOf(stage: number): Row | undefined {
    const signal = signalAt.get(stage);
    if (signal !== undefined) return soleColumn(signal);
    const incoming = sumOfWires(circuit, stage, rows);
    const law = circuit.stages[stage]?.law;
    if (!incoming || !law) return undefined;
    if (law.kind === 'decorrelator') {
      return soleColumn(columns.addDecorrelated(columns.powersOf(incoming)));
    }
    if (dependsOnFrequency(law)) return scale(incoming, lawTransfer(law, at.grid));
    if (law.kind !== 'compressor') return incoming;
    const heard = powerHeard(law.listensTo, rows, columns);
    if (heard === undefined) return undefined;
    const gain = at.compression?.get(stage) ?? compressionGain(law.curve, levelOfPower(heard));
    compression.set(stage, gain);
    return scale(incoming, ratioOf(gain));
  }
}

/** What open wires bring to a stage; nothing when one of them comes from where there is no level. */
export function sumOfWires(
  { wires }: Circuit,
  stage: number,
  rows: readonly (Row | undefined)[],
): Row | undefined {
  const terms = [];
  for (const { from, ratio } of wires[stage] ?? []) {
    if (ratio === 0) continue;
    const row = rows[from];
    if (!row) return undefined;
    terms.push({ row, ratio });
  }
  return combine(terms);
}

/** Power at all these stages together; nothing when one of them has no level. */
export function powerHeard(
  stages: readonly number[],
  rows: readonly (Row | undefined)[],
  columns: Columns,
): number | undefined {
  let sum = 0;
  for (const stage of stages) {
    const row = rows[stage];
    if (!row) return undefined;
    sum += columns.powerOf(row);
  }
  return sum;
}

const feedsItself = ({ wires }: Circuit, stage: number): boolean =>
  (wires[stage] ?? []).some(({ from, ratio }) => from === stage && ratio !== 0);
