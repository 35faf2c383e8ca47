import { describe, expect, test } from 'vitest';
import { optionResults } from '../../simulator/index.ts';
import { course, glossary, tasksIn } from './the-course.ts';

const LEAST_APART_DB = 0.5;

describe.each(tasksIn('quiz', course.quizzes))('$file', ({ task: { questions } }) => {
  for (const question of questions) {
    test(`${question.id}: exactly one option holds`, () => {
      expect(optionResults(question).filter(({ holds }) => holds)).toHaveLength(1);
    });

    if (question.kind !== 'number') continue;
    test(`${question.id}: its numbers are computed, and ${LEAST_APART_DB} dB apart`, () => {
      const values = optionResults(question).map(({ value }) => value ?? Number.NaN);
      const inOrder = values.toSorted((a, b) => a - b);
      const steps = inOrder.slice(1).map((value, index) => value - (inOrder[index] ?? value));
      expect(values.filter((value) => !Number.isFinite(value))).toEqual([]);
      expect(Math.min(...steps)).toBeGreaterThanOrEqual(LEAST_APART_DB);
    });
  }

  test('the concepts of its questions are words of the glossary', () => {
    const words = glossary.map(({ id }) => id);
    expect(questions.map(({ concept }) => concept).filter((id) => !words.includes(id))).toEqual([]);
  });

  test('its keys do not all stand in the same place', () => {
    const places = questions.map((question) =>
      optionResults(question).findIndex(({ holds }) => holds),
    );
    expect(new Set(places).size).toBeGreaterThan(1);
  });
});
