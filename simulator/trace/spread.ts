/** A set of stages of a circuit: 1 for each that is in it. */
export type StageSet = Uint8Array;

/** Where wires lead from some stages, these included, without stages that are barred. */
export function spread(
  from: Iterable<number>,
  wires: readonly (readonly number[])[],
  isBarred?: (stage: number) => boolean,
): StageSet {
  const set = new Uint8Array(wires.length);
  const waiting: number[] = [];
  const meet = (stages: Iterable<number>) => {
    for (const stage of stages) {
      if (set[stage] === 1 || isBarred?.(stage)) continue;
      set[stage] = 1;
      waiting.push(stage);
    }
  };
  meet(from);
  for (let stage = waiting.pop(); stage !== undefined; stage = waiting.pop()) {
    meet(wires[stage] ?? []);
  }
  return set;
}
