import { describe, expect, test } from 'vitest';
import {
  underName,
  withAttempt,
  withDraft,
  withHint,
  withoutDraft,
} from '../../src/progress/change-record.ts';
import { type Draft, newRecord, total } from '../../src/progress/task-record.ts';

const NAME = { id: 'task-a', kind: 'patch', revision: 2, concept: 'send', unit: 'sends' };
const start = newRecord(NAME);
const failed = { score: 0.25, passed: false, isAided: false };
const passed = { score: 1, passed: true, isAided: false };

describe('withAttempt()', () => {
  test('the best attempt counts, the last is told', () => {
    const record = [
      [0.75, 3],
      [0.25, 5],
    ].reduce((so, [score = 0, at = 0]) => withAttempt(so, { ...failed, score }, at, 'w'), start);
    expect(record).toMatchObject({ best: 0.75, last: { at: 5, score: 0.25, passed: false } });
    expect(total(record.attempts)).toBe(2);
    expect(record.passedAt).toBeUndefined();
  });

  test('the first pass stays the first', () => {
    const record = withAttempt(withAttempt(start, passed, 4, 'w'), passed, 9, 'w');
    expect(record).toMatchObject({ passedAt: 4, last: { at: 9 } });
  });

  test('a pass with the solution shown is an attempt, but neither a best score nor a pass', () => {
    const record = withAttempt(start, { ...passed, isAided: true }, 4, 'w');
    expect(record.best).toBeUndefined();
    expect(record.passedAt).toBeUndefined();
    expect(record.last).toMatchObject({ passed: true, isAided: true });
    expect(total(record.attempts)).toBe(1);
  });
});

test('withHint() counts for its writer: 2 here and 1 there are 3', () => {
  const record = ['here', 'there', 'here'].reduce(withHint, start);
  expect(record.hints).toEqual({ here: 2, there: 1 });
});

describe('withDraft()', () => {
  const draft = (by: string, text: string, at: number): Draft => ({
    text,
    at,
    by,
    revision: 2,
    isFinished: false,
  });
  const texts = (drafts: readonly Draft[]) => drafts.map(({ text }) => text);
  const first = withDraft(start, draft('tab1', 'one', 10), undefined);

  test('a tab writes over its own', () => {
    expect(texts(withDraft(first, draft('tab1', 'two', 11), undefined).drafts)).toEqual(['two']);
  });

  test('what a tab took up is its own from then on', () => {
    const takenUp = { by: 'tab1', at: 10 };
    expect(texts(withDraft(first, draft('tab2', 'two', 11), takenUp).drafts)).toEqual(['two']);
  });

  test('what another tab wrote meanwhile stays beside it', () => {
    const meanwhile = withDraft(first, draft('tab1', 'more', 12), undefined);
    const both = withDraft(meanwhile, draft('tab2', 'two', 13), { by: 'tab1', at: 10 });
    expect(texts(both.drafts)).toEqual(['two', 'more']);
  });

  test('withoutDraft() leaves the others', () => {
    const both = withDraft(first, draft('tab2', 'two', 13), undefined);
    expect(texts(withoutDraft(both, { by: 'tab2', at: 13 }).drafts)).toEqual(['one']);
  });
});

test('underName() takes what a later revision says, and nothing of an earlier one', () => {
  const later = { ...NAME, revision: 3, concept: 'return' };
  const earlier = { ...NAME, revision: 1, concept: 'loop' };
  expect(underName(start, later)).toMatchObject({ revision: 3, concept: 'return' });
  expect(underName(start, earlier)).toBe(start);
});
