import { expect, test } from 'vitest';
import { boardData } from '../../../simulator/board/board-data.ts';
import { grade } from '../../../simulator/grade/grade.ts';
import { markAnswer } from '../../../simulator/grade/mark.ts';
import { readCourse } from '../../../src/course/index.ts';

const BOARDS = [...readCourse().scenarios.values()].flatMap((scenario) =>
  [{ name: 'start', board: scenario.start }, ...scenario.proofs].map(
    ({ name, board }) => [scenario.id, name, scenario, board] as const,
  ),
);

test.each(BOARDS)(
  'markAnswer() finds of %s, “%s”, what grade() finds',
  (_id, _name, task, board) => {
    const { passed, score, of, parts } = markAnswer('here', task, {
      kind: 'board',
      board: boardData(board),
    });
    const verdict = grade(task, board);
    expect({ passed, of }).toEqual({ passed: verdict.passed, of: verdict.of });
    expect(score).toBe(verdict.movedLocks.length > 0 ? 0 : verdict.score);
    expect(parts.map(({ id, passed: isMet }) => [id, isMet])).toEqual(
      verdict.results.map(({ check, holds }) => [check.id, holds]),
    );
  },
);
