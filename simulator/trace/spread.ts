/** A set of stages of a circuit: 1 for each that is in it. */
export type StageSet = Uint8Array;

/** Wires by the stage at one of their ends: the stages at the other. */
type Wires = readonly (readonly number[])[];

/** Where wires lead from some stages, these included, without stages that are barred. */
export function spread(
  from: Iterable<number>,
  wires: Wires,
  isBarred?: (stage: number) => boolean,
): StageSet {
  const set = new Uint8Array(wires.length);
  walk(from, wires, set, isBarred);
  return set;
}

/** Where wires lead from some stages, these included, in the order in which a walk meets them. */
export const stagesMet = (from: Iterable<number>, wires: Wires): number[] =>
  walk(from, wires, new Uint8Array(wires.length));

/** @param set what was met is added to it. */
function walk(
  from: Iterable<number>,
  wires: Wires,
  set: StageSet,
  isBarred?: (stage: number) => boolean,
): number[] {
  const met: number[] = [];
  const waiting: number[] = [];
  const meet = (stages: Iterable<number>) => {
    for (const stage of stages) {
      if (set[stage] === 1 || isBarred?.(stage)) continue;
      set[stage] = 1;
      met.push(stage);
      waiting.push(stage);
    }
  };
  meet(from);
  for (let stage = waiting.pop(); stage !== undefined; stage = waiting.pop()) {
    meet(wires[stage] ?? []);
  }
  return met;
}
