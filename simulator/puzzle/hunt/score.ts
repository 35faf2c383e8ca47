import type { Hunt } from './hunt.ts';
import { allSuspects, type HuntStep, judgeSteps } from './judge-steps.ts';

/** How a hunt went, against the best strategy on its circuit. */
export interface HuntScore {
  readonly isFound: boolean;
  readonly probes: number;
  /** Accusations of what it was not. Each counts as one probe. */
  readonly wrong: number;
  /**
   * How many probes the best strategy would still have needed, in the worst case, when the right fault was
   * accused. They count as well, and the guess itself as one more: luck is no proof.
   */
  readonly owed: number;
  /** How many probes the best strategy needs in the worst case. */
  readonly best: number;
  /** What the best needs by what was needed, from 0 to 1; 0 where nothing was found. */
  readonly score: number;
}

/** Reckons up the steps of a hunt. @throws RangeError for a step that the hunt does not have. */
export function scoreHunt(hunt: Hunt, steps: readonly HuntStep[]): HuntScore {
  const judged = judgeSteps(hunt, steps);
  const probes = judged.filter(({ kind }) => kind === 'probe').length;
  const accusations = judged.filter((step) => step.kind === 'accusation');
  const right = accusations.find(({ isRight }) => isRight);
  const wrong = accusations.length - (right ? 1 : 0);
  const left = right?.before ?? judged.at(-1)?.after ?? allSuspects(hunt);
  const owed = hunt.strategy.worstOf(left);
  const { best } = hunt;
  const guess = owed > 0 ? owed + 1 : 0;
  const needed = probes + wrong + guess;
  const score = right ? best / Math.max(best, needed) : 0;
  return { isFound: right !== undefined, probes, wrong, owed, best, score };
}
