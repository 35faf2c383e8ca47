import type { Circuit } from '../circuit/circuit.ts';
import { compressionGain } from '../units/compression.ts';
import { GRID } from '../units/frequency.ts';
import { type Db, levelOfPower, ratioOf } from '../units/level.ts';
import { Columns } from './columns.ts';
import { componentsInOrder } from './components.ts';
import { isReached, keptFrom } from './kept.ts';
import { dependsOnFrequency, lawTransfer } from './law-transfer.ts';
import { type Loop, type SolveAt, settleLoop } from './loop.ts';
import { combine, type Row, scale, soleColumn } from './row.ts';
import type { Solution } from './solution.ts';

/** How a simulation is made: over the whole grid, with compressors that follow what they hear. */
const SIMULATION: SolveAt = { grid: GRID };

/**
 * Computes what stands at every stage: stage by stage where signals only go forward, all at once
 * inside loops. One figure for each signal where nothing depends on frequency, else a spectrum.
 *
 * @param before a simulation of a circuit of the same rig: what no change reaches is taken over from it.
 */
export function solve<C extends Circuit>(
  circuit: C,
  at: SolveAt = SIMULATION,
  before?: Solution,
): Solution<C> {
  const kept = before && keptFrom(circuit, before);
  const columns = new Columns(circuit, at.spread, kept?.before.columns);
  const rows: (Row | undefined)[] = kept
    ? [...kept.before.rows]
    : new Array(circuit.stages.length).fill(undefined);
  const reached = new Uint8Array(circuit.stages.length);
  const loops: Loop[] = [];
  const compression = new Map<number, Db>();
  const signalAt = new Map(circuit.signals.map(({ stage }, index) => [stage, index] as const));
  const order = kept?.isInOrder ? kept.before.order : componentsInOrder(circuit);

  for (const component of order) {
    const [stage] = component;
    if (stage === undefined) continue;
    if (kept && !isReached(kept, circuit, component, reached)) {
      takeOver(kept.before, component);
      continue;
    }
    for (const member of component) {
      reached[member] = 1;
      rows[member] = undefined;
    }
    if (component.length > 1 || feedsItself(circuit, stage)) {
      const settled = settleLoop(circuit, component, rows, columns, at);
      if (settled.loop) loops.push(settled.loop);
      for (const [member, row] of settled.rows) rows[member] = row;
      for (const [member, gain] of settled.compression) compression.set(member, gain);
      continue;
    }
    rows[stage] = rowOf(stage);
  }
  return { circuit, grid: at.grid, rows, order, columns, loops, compression };

  /** The rows are there already. */
  function takeOver(from: Solution, component: readonly number[]): void {
    for (const stage of component) {
      const gain = from.compression.get(stage);
      if (gain !== undefined) compression.set(stage, gain);
    }
    if (from.loops.length === 0) return;
    loops.push(...from.loops.filter(({ ring: [first] }) => component.includes(first ?? -1)));
  }

  function rowOf(stage: number): Row | undefined {
    const signal = signalAt.get(stage);
    if (signal !== undefined) return soleColumn(signal);
    const incoming = sumOfWires(circuit, stage, rows);
    const law = circuit.stages[stage]?.law;
    if (!incoming || !law) return undefined;
    if (law.kind === 'decorrelator') {
      const column = columns.columnOf(stage);
      columns.setPowers(column, columns.powersOf(incoming));
      return soleColumn(column);
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
