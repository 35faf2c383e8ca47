import type { Board } from '../board/board.ts';
import { DRAW } from './concepts.ts';
import type { Draft } from './draft.ts';
import { type DrillConcept, type DrillLevel, SIZES } from './drill-name.ts';
import { prove } from './prove.ts';
import { RandomStream } from './random-stream.ts';
import { SEED } from './seed.ts';

/** A task that was generated and proven. */
export interface Drill extends Draft {
  readonly concept: DrillConcept;
  readonly level: DrillLevel;
  readonly seed: string;
  /** The fewest moves that solve it. */
  readonly par: number;
  /** A board that they lead to. */
  readonly solution: Board;
  /** Which way of saying it is taken, where there are several: 0 to 11. */
  readonly voice: number;
}

/** How many drafts are drawn for a seed at most, until one is proven. */
export const MOST_DRAFTS = 60;

/**
 * The drill of a concept, a level and a seed: the same on every machine.
 *
 * @param seed see {@link SEED}.
 * @throws RangeError when the seed is none, or when none of {@link MOST_DRAFTS} drafts can be proven.
 */
export function drillOf(concept: DrillConcept, level: DrillLevel, seed: string): Drill {
  if (!SEED.test(seed)) {
    throw new RangeError(`Expected a seed of 1 to 12 letters a–z and digits, but got "${seed}".`);
  }
  const stream = new RandomStream(`drill/${concept}/${level}/${seed}`);
  const { fewest, most } = SIZES[level];
  for (let attempt = 1; attempt <= MOST_DRAFTS; attempt += 1) {
    const drawn = stream.part(String(attempt));
    const draft = DRAW[concept](drawn, level);
    const proof = prove(draft, draft.right, fewest, most);
    if (proof) {
      return { ...draft, concept, level, seed, ...proof, voice: drawn.part('voice').int(0, 11) };
    }
  }
  throw new RangeError(`Expected one of ${MOST_DRAFTS} drafts of ${concept} to be proven.`);
}
