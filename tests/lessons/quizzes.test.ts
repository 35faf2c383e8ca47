import { describe, expect, test } from 'vitest';
import { markAnswer, optionResults, rightAnswer } from '../../simulator/index.ts';
import { course, glossary, tasksIn } from './the-course.ts';

const LEAST_APART_DB = 0.5;

describe.each(tasksIn('quiz', course.quizzes))('$file', ({ task: { questions } }) => {
  for (const question of questions) {
    test(`${question.id}: it has one right answer, which passes`, () => {
      const answer = rightAnswer(question);
      expect(answer && markAnswer(question.id, question, answer).passed).toBe(true);
    });

    if (question.kind !== 'number' && question.kind !== 'predict') continue;
    const apart = question.kind === 'number' ? LEAST_APART_DB : 2 * question.toleranceDb;
    test(`${question.id}: its numbers are computed, and ${apart} dB apart`, () => {
      const values = optionResults(question).map(({ value }) => value ?? Number.NaN);
      const inOrder = values.toSorted((a, b) => a - b);
      const steps = inOrder.slice(1).map((value, index) => value - (inOrder[index] ?? value));
      expect(values.filter((value) => !Number.isFinite(value))).toEqual([]);
      expect(Math.min(...steps)).toBeGreaterThanOrEqual(apart);
    });
  }

  test('the concepts of its questions are words of the glossary', () => {
    const words = glossary.map(({ id }) => id);
    expect(questions.map(({ concept }) => concept).filter((id) => !words.includes(id))).toEqual([]);
  });

  test('its keys do not all stand in the same place', () => {
    const places = questions
      .filter(({ kind }) => kind !== 'outputs' && kind !== 'order')
      .map((question) => optionResults(question).findIndex(({ holds }) => holds));
    expect(places.length < 2 || new Set(places).size > 1).toBe(true);
  });
});
