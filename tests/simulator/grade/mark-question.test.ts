import { describe, expect, test } from 'vitest';
import { InputError } from '../../../simulator/file/input-error.ts';
import type { Answer } from '../../../simulator/grade/answer.ts';
import { markAnswer } from '../../../simulator/grade/mark.ts';
import { markQuestion } from '../../../simulator/grade/mark-question.ts';
import { optionResults } from '../../../simulator/grade/option-results.ts';
import type { Question } from '../../../simulator/grade/question.ts';
import { parseQuiz } from '../../../simulator/grade/quiz.ts';
import { rightAnswer } from '../../../simulator/grade/right-answer.ts';
import { findRig, KINDS, QUIZ } from './tasks.ts';

const questions = [
  ...parseQuiz('sends.yaml', QUIZ, findRig).questions,
  ...parseQuiz('kinds.yaml', KINDS, findRig).questions,
];
function named(id: string): Question {
  const question = questions.find((one) => one.id === id);
  if (!question) throw new Error(`The quizzes of the tests have no question ${id}.`);
  return question;
}
const told = (id: string, answer: Answer) =>
  markQuestion('a', named(id), answer).told.map((option) => option.id);
const number = (value: number | '-inf'): Answer => ({ kind: 'number', value });
const outputs = (...ids: string[]): Answer => ({ kind: 'outputs', outputs: ids });
const order = (...ids: string[]): Answer => ({ kind: 'order', order: ids });

describe('rightAnswer()', () => {
  test.each<[string, Answer]>([
    ['which', { kind: 'option', option: 'still' }],
    ['how-much', { kind: 'option', option: 'right' }],
    ['say', { kind: 'number', value: expect.closeTo(-2 + 5, 9) }],
    ['where', outputs('cans')],
    ['sequence', order('trim', 'squash', 'fader', 'main')],
    ['why', { kind: 'option', option: 'sent' }],
  ])('of %s', (id, answer) => {
    expect(rightAnswer(named(id))).toEqual(answer);
  });

  test.each(questions)('of $id passes with all its parts', (question) => {
    const answer = rightAnswer(question);
    if (!answer) throw new Error(`Expected an answer to ${question.id}.`);
    const mark = markAnswer('a', question, answer);
    expect(mark).toMatchObject({ passed: true, score: mark.parts.length, of: mark.parts.length });
    expect(mark.parts.length).toBeGreaterThan(0);
  });
});

describe('markAnswer()', () => {
  test('a number: 3.29 is within 0.3 dB of 3 dBu, 3.31 is not', () => {
    expect(markAnswer('a', named('say'), number(3.29)).passed).toBe(true);
    expect(markAnswer('a', named('say'), number(3.31)).passed).toBe(false);
    expect(told('say', number(3.31))).toEqual([]);
  });

  test('a number near that of a mistaken idea is told why: −2 + 10 = 8 dBu, and silence', () => {
    expect(told('say', number(7.8))).toEqual(['twice']);
    expect(told('say', number('-inf'))).toEqual(['shut']);
    expect(markAnswer('a', named('say'), number(7.8))).toMatchObject({ passed: false, score: 0 });
  });

  test('outputs: each is a part, whether it is reached or not; wrong ones are told', () => {
    expect(markAnswer('a', named('where'), outputs('tape', 'cans'))).toEqual({
      passed: false,
      score: 2,
      of: 3,
      parts: [
        { id: 'tape', weight: 1, passed: false },
        { id: 'cans', weight: 1, passed: true },
        { id: 'hall', weight: 1, passed: true },
      ],
    });
    expect(told('where', outputs('tape'))).toEqual(['tape', 'cans']);
    expect(told('where', outputs('cans'))).toEqual([]);
  });

  test('an order: each neighbour behind the one before it is a part; the first that is elsewhere is told', () => {
    const mark = markAnswer('a', named('sequence'), order('trim', 'fader', 'squash', 'main'));
    expect(mark.parts.map(({ id, passed }) => [id, passed])).toEqual([
      ['squash', true],
      ['fader', false],
      ['main', true],
    ]);
    expect(mark).toMatchObject({ passed: false, score: 2, of: 3 });
    expect(told('sequence', order('trim', 'fader', 'squash', 'main'))).toEqual(['fader']);
  });

  test('an explanation: the finding at the strip that has it, with the finding', () => {
    const wrong: Answer = { kind: 'option', option: 'horn-sent' };
    expect(markAnswer('a', named('why'), wrong).passed).toBe(false);
    const right = markQuestion('a', named('why'), { kind: 'option', option: 'sent' });
    expect(right.told[0]?.finding).toMatchObject({ code: 'insert-not-sent', owner: 'desk.a' });
  });

  test.each<[string, string, Answer]>([
    ['an option to a number', 'say', { kind: 'option', option: 'right' }],
    ['a number to an option', 'which', number(3)],
    ['a number to outputs', 'where', number(3)],
    ['outputs to an order', 'sequence', outputs('trim')],
    ['an order to outputs', 'where', order('tape')],
    ['an output that is not asked for', 'where', outputs('tape', 'disc')],
    ['an output twice', 'where', outputs('tape', 'tape')],
    ['a stop that is not asked for', 'sequence', order('trim', 'squash', 'fader', 'pan')],
    ['a stop twice', 'sequence', order('trim', 'squash', 'trim', 'main')],
    ['an order without a stop', 'sequence', order('trim', 'squash', 'main')],
  ])('refuses %s', (_what, id, answer) => {
    expect(() => markAnswer('a', named(id), answer)).toThrow(InputError);
  });
});

describe('optionResults()', () => {
  test('of outputs: what is heard there, and why nothing is', () => {
    const [tape, cans, hall] = optionResults(named('where'));
    expect([tape, cans, hall].map((option) => option?.holds)).toEqual([false, true, false]);
    expect(tape?.judgement?.reasons[0]).toMatchObject({ code: 'stops' });
    expect(cans?.judgement?.heard).toMatchObject({ level: expect.closeTo(4 - 3, 9) });
  });
});
