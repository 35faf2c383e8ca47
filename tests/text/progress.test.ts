import { describe, expect, test } from 'vitest';
import {
  dueText,
  effortSentence,
  STANDING_MEANINGS,
  STANDING_WORDS,
  shareText,
  unitText,
} from '../../src/text/index.ts';

const DAY = 86_400_000;

test.each([
  [0, '0 %'],
  [0.996, '99 %'],
  [1, '100 %'],
])('shareText(%d) is %s: only all points are 100 %%', (share, expected) => {
  expect(shareText(share)).toBe(expected);
});

test.each([
  [undefined, 'No more'],
  [-1, 'Now'],
  [0, 'Now'],
  [1, 'Within a day'],
  [DAY, 'Within a day'],
  [DAY + 1, 'In 2 days'],
  [21 * DAY, 'In 21 days'],
])('dueText() of what is due in %s ms is %s', (ahead, expected) => {
  const now = 50 * DAY;
  expect(dueText(ahead === undefined ? undefined : now + ahead, now)).toBe(expected);
});

describe('effortSentence()', () => {
  test('says only what there is', () => {
    const none = { best: undefined, passedAt: undefined };
    expect(effortSentence({ attempts: 1, hints: 0, ...none })).toBe('1 attempt.');
  });

  test('says everything there is', () => {
    const passedAt = new Date(2026, 10, 26, 12).getTime();
    expect(effortSentence({ attempts: 3, hints: 2, best: 0.75, passedAt })).toBe(
      '3 attempts, 2 hints, best 75 %, passed on 26 November 2026.',
    );
  });
});

test('unitText() counts what was passed, and says when that is enough', () => {
  expect(unitText(2, 5, false)).toBe('2 of 5 passed');
  expect(unitText(4, 5, true)).toBe('4 of 5 passed, known');
});

test('every standing has a word of its own, and a meaning', () => {
  const words = Object.values(STANDING_WORDS);
  expect(new Set(words).size).toBe(words.length);
  expect(Object.keys(STANDING_MEANINGS).sort()).toEqual(Object.keys(STANDING_WORDS).sort());
});
