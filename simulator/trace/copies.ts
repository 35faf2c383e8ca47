import { signalsNamed } from '../circuit/circuit.ts';
import type { Solution } from '../solve/solution.ts';

/** So many ways are counted; more make no difference to anybody. */
const MOST_COPIES = 9;

/**
 * By how many ways one and the same sound of a source comes to each stage, by stage: 0 where it does not come, 2 or
 * more where copies of it add up. What a reverb makes of it is another sound, counted from there on by itself.
 * What goes round in a loop counts once.
 *
 * @param source a track (both sides where it is stereo) or one signal. @throws RangeError when there is no such source.
 */
export function copiesOf(solution: Solution, source: string): Uint8Array {
  const { circuit, rows, columns } = solution;
  const signals = signalsNamed(circuit, source);
  const copies = new Uint8Array(circuit.stages.length);
  const count = (birth: number, column: number) => {
    const ways = waysFrom(solution, birth);
    ways.forEach((many, stage) => {
      if (many <= (copies[stage] ?? 0)) return;
      const row = rows[stage];
      if (!row || row.columns.includes(column)) copies[stage] = many;
    });
  };
  for (const signal of signals) count(signal.stage, circuit.signals.indexOf(signal));
  circuit.stages.forEach(({ law }, stage) => {
    const row = rows[stage];
    if (law.kind !== 'decorrelator' || !row) return;
    const isOfSource = signals.some(
      (signal) => columns.powerOfSignal(row, circuit.signals.indexOf(signal)) > 0,
    );
    if (isOfSource) count(stage, columns.columnOf(stage));
  });
  return copies;
}

/** By how many open ways what begins at a stage comes to each stage, without passing another decorrelator. */
function waysFrom({ circuit: { stages, wires }, order }: Solution, birth: number): Uint8Array {
  const ways = new Uint8Array(stages.length);
  const begun = (stage: number) => {
    if (stages[stage]?.law.kind === 'decorrelator' && stage !== birth) return 0;
    return ways[stage] ?? 0;
  };
  const comingTo = (stage: number, ring: readonly number[] | undefined) => {
    let sum = 0;
    for (const { from, ratio } of wires[stage] ?? []) {
      if (ratio !== 0 && !ring?.includes(from)) sum += begun(from);
    }
    return sum;
  };
  for (const component of order) {
    const isRing = component.length > 1;
    for (const stage of component) {
      const many = comingTo(stage, isRing ? component : undefined);
      ways[stage] = stage === birth ? 1 : Math.min(MOST_COPIES, many);
    }
    // Within a ring each stage passes on what has come in, and none of what has been round.
    for (let round = 1; isRing && round < component.length; round += 1) {
      for (const stage of component) {
        for (const { from, ratio } of wires[stage] ?? []) {
          if (ratio === 0 || !component.includes(from) || stage === birth) continue;
          ways[stage] = Math.max(ways[stage] ?? 0, begun(from));
        }
      }
    }
  }
  return ways;
}
