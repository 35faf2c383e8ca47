import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { keptDrafts, mergeReviews, mergeTasks } from '../../src/progress/merge.ts';
import { type Draft, newRecord, type TaskRecord, total } from '../../src/progress/task-record.ts';
import { arbitraryDraft, arbitraryReview, arbitraryTask } from './arbitrary-record.ts';

const RUNS = { numRuns: 300 };
const record = fc
  .tuple(arbitraryTask, fc.array(arbitraryDraft, { maxLength: 5 }))
  .map(([task, drafts]): TaskRecord => ({ ...task, drafts: keptDrafts(drafts) }));

describe('mergeTasks()', () => {
  test('a record with itself is itself', () => {
    fc.assert(
      fc.property(record, (one) => {
        expect(mergeTasks(one, one)).toEqual(one);
      }),
      RUNS,
    );
  });

  test('which comes first says nothing', () => {
    fc.assert(
      fc.property(record, record, (one, other) => {
        expect(mergeTasks(one, other)).toEqual(mergeTasks(other, one));
      }),
      RUNS,
    );
  });

  test('which two are merged first says nothing', () => {
    fc.assert(
      fc.property(record, record, record, (a, b, c) => {
        expect(mergeTasks(mergeTasks(a, b), c)).toEqual(mergeTasks(a, mergeTasks(b, c)));
      }),
      RUNS,
    );
  });

  test('nothing is lost: no count, no score, no pass falls behind either', () => {
    fc.assert(
      fc.property(record, record, (one, other) => {
        const both = mergeTasks(one, other);
        for (const each of [one, other]) {
          expect(total(both.attempts)).toBeGreaterThanOrEqual(total(each.attempts));
          expect(total(both.hints)).toBeGreaterThanOrEqual(total(each.hints));
          expect(both.best ?? 0).toBeGreaterThanOrEqual(each.best ?? 0);
          expect(both.passedAt ?? Infinity).toBeLessThanOrEqual(each.passedAt ?? Infinity);
          expect(both.revision).toBeGreaterThanOrEqual(each.revision);
          if (each.drafts.length > 0) expect(both.drafts.length).toBeGreaterThan(0);
        }
      }),
      RUNS,
    );
  });

  test('attempts of two writers add up, those of one do not count twice: 3 and max(2, 5) are 8', () => {
    const start = newRecord({
      id: 'task-a',
      kind: 'patch',
      revision: 1,
      concept: 'send',
      unit: 'sends',
    });
    const one = { ...start, attempts: { here: 3, there: 2 } };
    const other = { ...start, attempts: { there: 5 } };
    expect(total(mergeTasks(one, other).attempts)).toBe(8);
  });

  test('records of two tasks are not merged', () => {
    const [one] = fc.sample(arbitraryTask, 1);
    if (!one) throw new Error('Expected a record, but got none.');
    expect(() => mergeTasks(one, { ...one, id: 'task-b' })).toThrow(
      'Expected two records of one task, but got task-a and task-b.',
    );
  });
});

test('mergeReviews() is idempotent and commutative, and the last change wins', () => {
  fc.assert(
    fc.property(arbitraryReview, arbitraryReview, (one, other) => {
      const both = mergeReviews(one, other);
      expect(mergeReviews(one, one)).toEqual(one);
      expect(both).toEqual(mergeReviews(other, one));
      expect(both.at).toBe(Math.max(one.at, other.at));
    }),
    RUNS,
  );
});

describe('keptDrafts()', () => {
  const draft = (text: string, at: number, isFinished = false): Draft => ({
    text,
    at,
    by: 'tab',
    revision: 1,
    isFinished,
  });
  const texts = (drafts: readonly Draft[]) => keptDrafts(drafts).map(({ text }) => text);

  test('the two newest that are unfinished, and of the finished only one that is newer', () => {
    const finished = draft('b', 4, true);
    const unfinished = [draft('a', 3), draft('c', 5), draft('d', 2)];
    expect(texts([...unfinished, finished])).toEqual(['c', 'a']);
    expect(texts([...unfinished, { ...finished, at: 6 }])).toEqual(['b', 'c', 'a']);
  });

  test('alike ones are one', () => {
    expect(texts([draft('a', 3), draft('a', 7)])).toEqual(['a']);
  });

  test('of none there is none', () => {
    expect(texts([])).toEqual([]);
  });
});
