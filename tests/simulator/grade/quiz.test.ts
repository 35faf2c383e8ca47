import { describe, expect, test } from 'vitest';
import { optionResults } from '../../../simulator/grade/option-results.ts';
import { parseQuiz } from '../../../simulator/grade/quiz.ts';
import { findRig, KINDS, lineWith, problemsOf, QUIZ, replaced } from './tasks.ts';

const quiz = parseQuiz('sends.yaml', QUIZ, findRig);
const [which, howMuch, byHowMuch] = quiz.questions;

describe('optionResults()', () => {
  test('of statements: the one that the simulator finds true, with what was heard', () => {
    const options = which ? optionResults(which) : [];
    expect(options.map(({ id, holds }) => [id, holds])).toEqual([
      ['still', true],
      ['moves', false],
    ]);
    expect(options[1]?.judgement?.reasons[0]).toMatchObject({
      code: 'misses-probe',
      leavesAt: 'desk.a.ears',
    });
  });

  test('of a level: −2 + 5 = 3 dBu, as if doubled −2 + 10 = 8 dBu', () => {
    const options = howMuch ? optionResults(howMuch) : [];
    expect(options).toEqual([
      { id: 'right', reason: 'Minus two, and five.', holds: true, value: expect.closeTo(3, 9) },
      { id: 'twice', reason: 'Counted twice.', holds: false, value: expect.closeTo(8, 9) },
    ]);
  });

  test('of a move: −7 dB, and none where there is silence before and after', () => {
    const options = byHowMuch ? optionResults(byHowMuch) : [];
    expect(options[0]).toMatchObject({ id: 'all', holds: true, value: expect.closeTo(-7, 9) });
    expect(options[1]).toEqual({ id: 'none', reason: 'It is not even there.', holds: false });
  });
});

describe('parseQuiz() refuses', () => {
  test.each<[what: string, from: string, to: string, place: string, part: string, found: string]>([
    [
      'an unknown source to follow',
      'follow: horn',
      'follow: bugle',
      'questions[1].follow',
      'follow: bugle',
      '"bugle"',
    ],
    [
      'a start that does not fit',
      'desk.b.trim: 5',
      'desk.b.trim: 25',
      'questions[1].start["desk.b.trim"]',
      'desk.b.trim: 25',
      '25',
    ],
    [
      'a mistaken idea that does not fit',
      'desk.b.trim: 10',
      'desk.b.trimm: 10',
      'questions[1].options[1].asIf["desk.b.trimm"]',
      'desk.b.trimm',
      '"desk.b.trimm"',
    ],
    [
      'a question whose id is used',
      'id: how-much',
      'id: which',
      'questions[1].id',
      'id: which\n    kind: number',
      '"which" twice',
    ],
    [
      'an option whose id is used',
      '- id: moves',
      '- id: still',
      'questions[0].options[1].id',
      'id: still\n        text: It moves',
      '"still" twice',
    ],
    [
      'an unknown kind of question',
      'kind: statements',
      'kind: essay',
      'questions[0].kind',
      'kind: essay',
      '"essay"',
    ],
    [
      'an unknown output of a quantity',
      'source: horn, output: tape',
      'source: horn, output: disc',
      'questions[1].quantity.output',
      'output: disc',
      '"disc"',
    ],
    [
      'a probe of no control',
      'of: viola, byDb: -7',
      'of: cello, byDb: -7',
      'questions[2].quantity.probe.of',
      'of: cello',
      '"cello"',
    ],
    [
      'a claim about no source',
      'kind: follows, source: viola',
      'kind: follows, source: cello',
      'questions[0].options[1].claim.source',
      'kind: follows, source: cello',
      '"cello"',
    ],
    ['a revision of 0', 'revision: 1', 'revision: 0', 'revision', 'revision: 0', '0'],
    [
      'a key that is written down',
      '{ id: right,',
      '{ id: right, key: true,',
      'questions[1].options[0].key',
      'key: true',
      'the unknown key key',
    ],
  ])('%s', (_what, from, to, place, part, found) => {
    const text = replaced(QUIZ, from, to);
    const [problem, ...more] = problemsOf(() => parseQuiz('f', text, findRig));
    expect(problem).toMatchObject({ place, line: lineWith(text, part), found });
    expect(more).toEqual([]);
  });
});

describe('parseQuiz() refuses, of other kinds,', () => {
  test.each<[what: string, from: string, to: string, place: string, found: string]>([
    [
      'a tolerance beyond a finger’s reach',
      'toleranceDb: 0.3',
      'toleranceDb: 0.05',
      'questions[0].toleranceDb',
      '0.05',
    ],
    [
      'an unknown output',
      'output: rack.hall.in',
      'output: rack.hall.inn',
      'questions[1].options[2].output',
      '"rack.hall.inn"',
    ],
    [
      'an owner as an output',
      'output: rack.hall.in',
      'output: rack.hall',
      'questions[1].options[2].output',
      '"rack.hall"',
    ],
    [
      'an unknown end of a way',
      'output: tape\n    start',
      'output: disc\n    start',
      'questions[2].output',
      '"disc"',
    ],
    [
      'an unknown stop',
      'stop: rack.squash',
      'stop: rack.squish',
      'questions[2].options[2].stop',
      '"rack.squish"',
    ],
    [
      'an unknown finding',
      'finding: arrives-twice',
      'finding: arrives-thrice',
      'questions[3].options[2].finding',
      '"arrives-thrice"',
    ],
    ['a finding at no place', 'at: desk.b', 'at: desk.q', 'questions[3].options[1].at', '"desk.q"'],
  ])('%s', (_what, from, to, place, found) => {
    const problems = problemsOf(() => parseQuiz('f', replaced(KINDS, from, to), findRig));
    expect(problems.map((problem) => [problem.place, problem.found])).toEqual([[place, found]]);
  });
});
