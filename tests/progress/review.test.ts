import { describe, expect, test } from 'vitest';
import {
  afterAttempt,
  isDue,
  type Review,
  type ReviewedAttempt,
} from '../../src/progress/review.ts';
import { RECORD_VERSION } from '../../src/progress/task-record.ts';

const DAY = 86_400_000;
const START = 1_000 * DAY;
const attempt = (at: number, more: Partial<ReviewedAttempt> = {}): ReviewedAttempt => ({
  concept: 'send',
  at,
  passed: true,
  isAided: false,
  wasPassed: true,
  ...more,
});
const daysUntilDue = (review: Review | undefined, at: number) =>
  review?.dueAt === undefined ? undefined : (review.dueAt - at) / DAY;

describe('afterAttempt()', () => {
  // Source: Latimier et al. 2021 for spacing as such; the days are those of the issue.
  test('passes when due come back after 1, 3, 7 and 21 days, and then no more', () => {
    let at = START;
    let review = afterAttempt(undefined, attempt(at));
    const days = [daysUntilDue(review, at)];
    while (review?.dueAt !== undefined) {
      at = review.dueAt;
      review = afterAttempt(review, attempt(at));
      days.push(daysUntilDue(review, at));
    }
    expect(days).toEqual([1, 3, 7, 21, undefined]);
    expect(review).toMatchObject({ stage: 4, hasLapsed: false });
    expect(isDue(review, at + 1000 * DAY)).toBe(false);
  });

  const later: Review = {
    version: RECORD_VERSION,
    concept: 'send',
    stage: 2,
    dueAt: START + 7 * DAY,
    hasLapsed: false,
    at: START,
  };
  const due = START + 8 * DAY;

  test.each([
    ['a pass before it is due', START + 6 * DAY, {}],
    ['a failure before it is due', START + 6 * DAY, { passed: false }],
    ['a failure when due, at a task never passed', due, { passed: false, wasPassed: false }],
  ])('%s is practice and changes nothing', (_, at, more) => {
    expect(afterAttempt(later, attempt(at, more))).toBe(later);
  });

  test.each([
    ['a failure', { passed: false }],
    ['a pass that needed the solution', { isAided: true }],
    ['a pass of a new task that needed the solution', { isAided: true, wasPassed: false }],
  ])('%s when due sends it back to 1 day', (_, more) => {
    const review = afterAttempt(later, attempt(due, more));
    expect(review).toMatchObject({ stage: 0, hasLapsed: true });
    expect(daysUntilDue(review, due)).toBe(1);
  });

  test('what lapsed is sound again after the next pass when due', () => {
    const lapsed = afterAttempt(later, attempt(due, { passed: false }));
    expect(afterAttempt(lapsed, attempt(due + 100))).toBe(lapsed);
    expect(afterAttempt(lapsed, attempt(due + 2 * DAY))).toMatchObject({
      stage: 1,
      hasLapsed: false,
    });
  });

  test('a failure before the first pass begins no review, a pass with aid begins one as shaky', () => {
    expect(afterAttempt(undefined, attempt(START, { passed: false }))).toBeUndefined();
    expect(afterAttempt(undefined, attempt(START, { isAided: true }))).toMatchObject({
      stage: 0,
      dueAt: START + DAY,
      hasLapsed: true,
    });
  });
});

test.each([
  [999, false],
  [1000, true],
  [1001, true],
])('isDue() at %d of what is due at 1000 is %s', (now, expected) => {
  const review: Review = {
    version: RECORD_VERSION,
    concept: 'send',
    stage: 0,
    dueAt: 1000,
    hasLapsed: false,
    at: 1,
  };
  expect(isDue(review, now)).toBe(expected);
});
