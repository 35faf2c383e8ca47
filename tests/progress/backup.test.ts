import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { InputError } from '../../simulator/index.ts';
import {
  backupText,
  countAll,
  type Everything,
  LONGEST_BACKUP,
  openBackup,
} from '../../src/progress/backup.ts';
import { keptDrafts } from '../../src/progress/merge.ts';
import { storedRecord } from '../../src/progress/stored-record.ts';
import { RECORD_VERSION } from '../../src/progress/task-record.ts';
import { arbitraryDraft, arbitraryReview, arbitraryTask } from './arbitrary-record.ts';

const everything: fc.Arbitrary<Everything> = fc
  .tuple(
    fc.array(arbitraryTask, { maxLength: 3 }),
    fc.array(arbitraryDraft, { maxLength: 3 }),
    fc.array(arbitraryReview, { maxLength: 2 }),
  )
  .map(([tasks, drafts, reviews]) => ({
    tasks: tasks.map((one) => ({ ...one, drafts: keptDrafts(drafts) })),
    reviews,
    benches: [{ version: RECORD_VERSION, room: 'net-loft', drafts: keptDrafts(drafts) }],
  }));

/** What opening a text comes to: a backup, or an error of ours. Anything else is thrown. */
function opened(text: string) {
  try {
    return openBackup('backup.json', text);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error;
  }
}

describe('openBackup()', () => {
  test('gives back what was saved', () => {
    fc.assert(
      fc.property(everything, (all) => {
        expect(openBackup('b.json', backupText(all, 7))).toEqual({
          savedAt: 7,
          records: all,
          unusable: [],
        });
      }),
      { numRuns: 60 },
    );
  });

  test('whatever the text, it is an error of ours or records that can be stored, and no record is lost', () => {
    const [all] = fc.sample(everything, { numRuns: 1, seed: 11 });
    if (!all) throw new Error('Expected records, but got none.');
    const whole = backupText(all, 7);
    const cut = fc.tuple(fc.nat(whole.length), fc.string({ maxLength: 8 }), fc.nat(12));
    const spoiled = cut.map(([at, put, gone]) => whole.slice(0, at) + put + whole.slice(at + gone));
    const value = fc.json({ maxDepth: 2 });
    const foreign = fc
      .tuple(fc.constantFrom('tasks', 'reviews', 'benches'), fc.array(value))
      .map(([store, list]) =>
        whole.replace(`"${store}": [`, `"${store}": [${list.map((one) => `${one},`).join('')}`),
      );
    const text = fc.oneof(spoiled, foreign, value, fc.string());
    fc.assert(
      fc.property(text, (given) => {
        const result = opened(given);
        if (result instanceof InputError) {
          expect(result.problems.length).toBeGreaterThan(0);
          return;
        }
        const { tasks, reviews, benches } = parse(given) as Record<string, unknown[]>;
        const there = [tasks, reviews, benches].reduce((sum, list) => sum + (list?.length ?? 0), 0);
        expect(countAll(result.records) + result.unusable.length).toBe(there);
        for (const record of result.records.tasks) {
          expect(storedRecord('tasks', structuredClone(record))).toEqual(record);
        }
      }),
      { numRuns: 300 },
    );
  });

  test('a record that does not fit comes back with its reason, and the rest is opened', () => {
    const text = JSON.stringify({
      format: 'tap-and-sum/progress',
      version: 1,
      savedAt: 3,
      tasks: [{ id: 'task-a', version: 9 }],
      reviews: [{ version: 1, concept: 'send', stage: 4, hasLapsed: false, at: 2 }],
      benches: [],
    });
    const { records, unusable } = openBackup('b.json', text);
    expect(records.reviews.map(({ concept }) => concept)).toEqual(['send']);
    expect(unusable.map(({ store, error }) => [store, error.problems[0]?.found])).toEqual([
      ['tasks', '9'],
    ]);
  });

  test.each([
    ['{"format": "tap-and-sum/setup"}', 'format'],
    ['{"__proto__": {"a": 1}}', ''],
    [
      '{"format": "tap-and-sum/progress", "version": 1, "savedAt": 1e999, "tasks": [], "reviews": [], "benches": []}',
      'savedAt',
    ],
    [
      '{"format": "tap-and-sum/progress", "version": 1, "savedAt": 1, "tasks": [], "reviews": [], "benches": [], "more": 1}',
      'more',
    ],
  ])('%s is no backup, and it is said where', (text, place) => {
    const result = opened(text);
    expect(result instanceof InputError && result.problems.map((one) => one.place)).toContain(
      place,
    );
  });

  test('a text over the cap is refused before it is read', () => {
    const result = opened(' '.repeat(LONGEST_BACKUP + 1));
    expect(result instanceof InputError && result.problems[0]?.expected).toBe(
      'at most 4194304 characters',
    );
  });
});
