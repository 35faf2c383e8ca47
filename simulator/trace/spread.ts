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
  const add = (stage: number) => {
    if (set[stage] === 1 || isBarred?.(stage)) return;
    set[stage] = 1;
    waiting.push(stage);
  };
  for (const stage of from) add(stage);
  for (let stage = waiting.pop(); stage !== undefined; stage = waiting.pop()) {
    for (const next of wires[stage] ?? []) add(next);
  }
  return set;
}

/** The stages that are in a set. */
export const stagesIn = (set: StageSet): number[] =>
  Array.from(set.keys()).filter((stage) => set[stage] === 1);
