import type { Backwards } from '../trace/open-wires.ts';

/** The stages of a shortest open way, its start left out; nothing when there is none. */
export function shortestWay(
  backwards: Backwards,
  starts: readonly number[],
  goals: readonly number[],
  isBarred: (stage: number) => boolean = () => false,
): number[] | undefined {
  const free = goals.filter((goal) => !isBarred(goal));
  const next = new Map<number, number | undefined>(free.map((goal) => [goal, undefined]));
  for (const stage of next.keys()) {
    if (starts.includes(stage)) {
      const way: number[] = [];
      for (let step = next.get(stage); step !== undefined; step = next.get(step)) way.push(step);
      return way;
    }
    for (const from of backwards[stage] ?? []) {
      if (!next.has(from) && !isBarred(from)) next.set(from, stage);
    }
  }
  return undefined;
}

/** The stages of an open way that does not pass these stops in this order, its start left out. */
export function wayAstray(
  backwards: Backwards,
  start: number,
  goals: readonly number[],
  stops: readonly (readonly number[])[],
): number[] | undefined {
  const steps = stops.length + 1;
  const after = (stage: number, left: number): number =>
    left > 0 && stops[left - 1]?.includes(stage) ? after(stage, left - 1) : left;
  const keyOf = (stage: number, left: number) => stage * steps + after(stage, left);
  const next = new Map<number, number | undefined>(
    goals.map((goal) => [keyOf(goal, stops.length), undefined]),
  );
  for (const key of next.keys()) {
    const [stage, left] = [Math.floor(key / steps), key % steps];
    if (stage === start && left > 0) {
      const way: number[] = [];
      for (let step = next.get(key); step !== undefined; step = next.get(step)) {
        way.push(Math.floor(step / steps));
      }
      return way;
    }
    for (const from of backwards[stage] ?? []) {
      const before = keyOf(from, left);
      if (!next.has(before)) next.set(before, key);
    }
  }
  return undefined;
}
