import type { Board } from '../board/board.ts';
import { boardOf } from '../board/file-board.ts';
import { simulate } from '../solve/simulate.ts';
import type { Answer } from './answer.ts';
import type { Task } from './grade.ts';
import { holds } from './holds.ts';
import { markQuestion } from './mark-question.ts';
import { movedLocks } from './moved-locks.ts';
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
  return markBoard(task, boardOf(where, task.rig, answer.board));
}

/** What {@link grade} says of a board, without what was heard and why, which takes as long again. */
function markBoard({ rig, checks, open, start }: Task, board: Board): Mark {
  const setup = { rig, board };
  const hearing = { setup, solution: simulate(setup) };
  const parts = checks.map(({ id, weight, claim }) => ({
    id,
    weight,
    passed: holds(claim, hearing),
  }));
  const weightOf = (list: readonly MarkedPart[]) =>
    list.reduce((sum, part) => sum + part.weight, 0);
  const met = parts.filter(({ passed }) => passed);
  const isLocked = movedLocks(rig, open, start, board).length > 0;
  return {
    passed: !isLocked && met.length === parts.length,
    score: isLocked ? 0 : weightOf(met),
    of: weightOf(parts),
    parts,
  };
}
