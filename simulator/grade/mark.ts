import { boardOf } from '../board/file-board.ts';
import type { Answer } from './answer.ts';
import { grade, type Task } from './grade.ts';
import { markQuestion } from './mark-question.ts';
import type { Question } from './question.ts';
import { refuseOtherKind } from './refuse-answer.ts';

/** One thing that was asked, and whether it was met. */
export interface MarkedPart {
  /** Id of the check; of a question, its own or that of an option. */
  readonly id: string;
  readonly weight: number;
  readonly passed: boolean;
}

/** What came of an answer, alike for every kind of task. */
export interface Mark {
  readonly passed: boolean;
  /** Weight of the parts that were passed; 0 where a locked control was moved. */
  readonly score: number;
  /** Weight of all parts. */
  readonly of: number;
  readonly parts: readonly MarkedPart[];
}

/**
 * Marks an answer by what the simulator says.
 *
 * @param where what the answer stands in, as errors name it.
 * @throws InputError when the answer is of a kind that the task does not take, names an option that there is not,
 *   leaves a stop out, or sets what the rig has not.
 */
export function markAnswer(where: string, task: Task | Question, answer: Answer): Mark {
  if (!('checks' in task)) {
    const marked = markQuestion(where, task, answer);
    const parts = marked.parts.map((part) => ({ ...part, weight: 1 }));
    const score = parts.filter(({ passed }) => passed).length;
    return { passed: score === parts.length, score, of: parts.length, parts };
  }
  refuseOtherKind(where, 'board', answer);
  const verdict = grade(task, boardOf(where, task.rig, answer.board));
  return {
    passed: verdict.passed,
    score: verdict.movedLocks.length > 0 ? 0 : verdict.score,
    of: verdict.of,
    parts: verdict.results.map(({ check, holds }) => ({
      id: check.id,
      weight: check.weight,
      passed: holds,
    })),
  };
}
