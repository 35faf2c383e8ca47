import { boardOf } from '../board/file-board.ts';
import { InputError } from '../file/input-error.ts';
import type { Answer } from './answer.ts';
import { grade, type Task } from './grade.ts';
import { optionResults } from './option-results.ts';
import type { Question } from './quiz.ts';

/** One thing that was asked, and whether it was met. */
export interface MarkedPart {
  /** Id of the check; of a question, its own. */
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
 *   or sets what the rig has not.
 */
export function markAnswer(where: string, task: Task | Question, answer: Answer): Mark {
  if (!('checks' in task)) return markQuestion(where, task, answer);
  if (answer.kind !== 'board') throw otherKind(where, 'board', answer);
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

function markQuestion(where: string, question: Question, answer: Answer): Mark {
  if (answer.kind !== 'option') throw otherKind(where, 'option', answer);
  const results = optionResults(question);
  const chosen = results.find(({ id }) => id === answer.option);
  if (!chosen) {
    const expected = `one of ${results.map(({ id }) => id).join(', ')}`;
    throw new InputError(where, [{ place: 'option', expected, found: `"${answer.option}"` }]);
  }
  const passed = chosen.holds;
  const weight = 1;
  const parts = [{ id: question.id, weight, passed }];
  return { passed, score: passed ? weight : 0, of: weight, parts };
}

const otherKind = (where: string, kind: Answer['kind'], answer: Answer): InputError =>
  new InputError(where, [
    { place: 'kind', expected: `the answer "${kind}", which this task takes`, found: answer.kind },
  ]);
