import { describe, expect, test } from 'vitest';
import { boardData } from '../../../simulator/board/board-data.ts';
import { InputError } from '../../../simulator/file/input-error.ts';
import { markAnswer } from '../../../simulator/grade/mark.ts';
import { parseQuiz } from '../../../simulator/grade/quiz.ts';
import { parseScenario } from '../../../simulator/grade/scenario.ts';
import { findRig, QUIZ, SCENARIO } from './tasks.ts';

const scenario = parseScenario('task.yaml', SCENARIO, findRig);
const which = parseQuiz('sends.yaml', QUIZ, findRig).questions[0];
if (!which) throw new Error('The quiz of the tests has no question.');

describe('markAnswer()', () => {
  test('a board: the solution passes with all weights, the start does not', () => {
    const weight = scenario.checks.reduce((sum, check) => sum + check.weight, 0);
    const board = boardData(scenario.solution);
    const solved = markAnswer('a', scenario, { kind: 'board', board });
    expect(solved).toMatchObject({ passed: true, score: weight, of: weight });
    expect(solved.parts.map(({ id }) => id)).toEqual(scenario.checks.map(({ id }) => id));
    const start = markAnswer('a', scenario, { kind: 'board', board: boardData(scenario.start) });
    expect(start.passed).toBe(false);
    expect(start.score).toBeLessThan(weight);
  });

  test('an option: right is 1 of 1, wrong 0 of 1, with the question as its one part', () => {
    const { id } = which;
    expect(markAnswer('a', which, { kind: 'option', option: 'still' })).toEqual({
      passed: true,
      score: 1,
      of: 1,
      parts: [{ id, weight: 1, passed: true }],
    });
    expect(markAnswer('a', which, { kind: 'option', option: 'moves' })).toMatchObject({
      passed: false,
      score: 0,
    });
  });

  test('what the task cannot take is refused, never marked', () => {
    const refused = [
      () => markAnswer('a', which, { kind: 'option', option: 'neither' }),
      () => markAnswer('a', which, { kind: 'board', board: {} }),
      () => markAnswer('a', scenario, { kind: 'option', option: 'still' }),
      () => markAnswer('a', scenario, { kind: 'board', board: { 'desk.nowhere.fader': 0 } }),
    ];
    for (const marking of refused) expect(marking).toThrow(InputError);
  });
});
