import { judge, simulate, type WalkThrough } from '../../simulator/index.ts';
import { claimSentence, heardSentence } from '../text/index.ts';
import type { Remark } from './remark.ts';

/** What is wrong with a walk-through: a step that says what is not heard. */
export function walkThroughComplaints({ rig, steps }: WalkThrough): Remark[] {
  return steps.flatMap(({ id, board, heard }) => {
    if (heard.length === 0) return [];
    const setup = { rig, board };
    const hearing = { setup, solution: simulate(setup) };
    return heard
      .map((claim) => judge(claim, hearing))
      .filter(({ holds }) => !holds)
      .map((judgement) => ({
        what: `step ${id} says: ${claimSentence(rig, judgement.claim)} ${heardSentence(rig, judgement)}`,
      }));
  });
}
