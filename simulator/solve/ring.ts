import type { Circuit } from '../circuit/circuit.ts';

/** A simple ring through a circuit. */
export interface Ring {
  /** Its stages in signal order. */
  readonly ring: readonly number[];
  /** Magnitude of the voltage ratio once round. */
  readonly ratio: number;
}

/** Whether wires close a ring among some stages: whether any is left when those that none of the others feeds are taken away. */
export function hasRing({ wires }: Circuit, component: readonly number[]): boolean {
  let left = new Set(component);
  for (;;) {
    const fed = [...left].filter((stage) =>
      (wires[stage] ?? []).some(({ from, ratio }) => ratio !== 0 && left.has(from)),
    );
    if (fed.length === left.size) return fed.length > 0;
    left = new Set(fed);
  }
}

/** How many steps the search takes at the most; beyond, the strongest ring found so far stands. */
const MOST_STEPS = 20_000;

/**
 * The ring with the highest gain among stages that depend on one another.
 *
 * @param gainOf ratio that a stage itself has, beside its wires: that of a compressor.
 */
export function strongestRing(
  { wires }: Circuit,
  component: readonly number[],
  gainOf: (stage: number) => number,
): Ring {
  const members = new Set(component);
  let best: Ring = { ring: [...component], ratio: 0 };
  let steps = 0;

  // Rings are walked against the signal, each from its first member in the list, so that none is found twice.
  for (const start of component) {
    const walked: number[] = [];
    const walk = (stage: number, ratio: number) => {
      steps += 1;
      if (steps > MOST_STEPS) return;
      walked.push(stage);
      for (const wire of wires[stage] ?? []) {
        const through = ratio * Math.abs(wire.ratio) * gainOf(stage);
        if (wire.from === start && through > best.ratio) {
          best = { ring: [...walked].reverse(), ratio: through };
        } else if (through > 0 && members.has(wire.from) && !walked.includes(wire.from)) {
          walk(wire.from, through);
        }
      }
      walked.pop();
    };
    walk(start, 1);
    members.delete(start);
  }
  return best;
}
