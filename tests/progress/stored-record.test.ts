import { readdirSync, readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { InputError } from '../../simulator/index.ts';
import { type Migration, type StoreName, storedRecord } from '../../src/progress/stored-record.ts';
import { RECORD_VERSION } from '../../src/progress/task-record.ts';

const FOLDER = new URL('stored/', import.meta.url);
const stored = (file: string): unknown => JSON.parse(readFileSync(new URL(file, FOLDER), 'utf8'));
const STORE_OF: Readonly<Record<string, StoreName>> = {
  task: 'tasks',
  review: 'reviews',
  bench: 'benches',
};

/** The lines of the error that reading something ends with; none when it can be read. */
function problemsOf(read: () => unknown): string[] {
  try {
    read();
    return [];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.message.split('\n');
  }
}

describe('storedRecord()', () => {
  test.each(readdirSync(FOLDER))('a stored state opens: %s', (file) => {
    const store = STORE_OF[file.split('-')[0] ?? ''];
    if (!store) throw new Error(`Expected task, review or bench, but found ${file}.`);
    const opened = storedRecord(store, stored(file));
    expect(opened.version).toBe(RECORD_VERSION);
    // The file of today's version is what is written today.
    if (file.endsWith(`-${RECORD_VERSION}.json`)) expect(opened).toEqual(stored(file));
  });

  test('a fault hunt of version 1 opens with the seed of its text beside it', () => {
    const { drafts, ...rest } = storedRecord('tasks', stored('task-hunt-1.json'));
    expect(rest).toMatchObject({ id: 'fault-hunt-2', concept: 'fault-hunt' });
    expect(drafts).toMatchObject([{ seed: 'loft', isFinished: false }]);
  });

  test('migrations run one after the other, from the version that was stored', () => {
    // As if what is version 2 today were the third: the first called attempts `tries`, the second had no drafts.
    const steps: string[] = [];
    const migrations: Migration[] = [
      ({ tries, ...rest }) => {
        steps.push('1 to 2');
        return { ...rest, attempts: tries };
      },
      (record) => {
        steps.push('2 to 3');
        return { ...record, drafts: [] };
      },
    ];
    const { attempts, drafts: _, ...rest } = stored('task-1.json') as Record<string, unknown>;
    const asThird = (data: Record<string, unknown>) => {
      // The schema of today reads version 2 alone: what the migrations made is looked at through its eyes.
      const problems = problemsOf(() => storedRecord('tasks', data, migrations));
      return problems.filter((line) => !line.includes('at version'));
    };
    expect(asThird({ ...rest, version: 1, tries: attempts })).toEqual([]);
    expect(steps).toEqual(['1 to 2', '2 to 3']);
    expect(asThird({ ...rest, version: 2, attempts })).toEqual([]);
    expect(steps).toEqual(['1 to 2', '2 to 3', '2 to 3']);
  });

  test('a migration that fails is the fault of the record', () => {
    const broken: Migration = () => {
      throw new TypeError('nothing there');
    };
    expect(problemsOf(() => storedRecord('tasks', { id: 'task-a', version: 1 }, [broken]))).toEqual(
      ['task task-a: expected a record of version 1, but found one that cannot be migrated.'],
    );
  });

  test.each<[string, unknown, string]>([
    [
      'a version to come',
      { id: 'task-a', version: 3 },
      'task task-a at version: expected 1 to 2, but found 3. It was written by a newer page. Load the page anew, and it is read again.',
    ],
    [
      'no version',
      { id: 'task-a' },
      'task task-a at version: expected 1 to 2, but found no version.',
    ],
    ['no record', 'ten', 'a task: expected a map of keys, but found "ten".'],
  ])('%s is told', (_, data, expected) => {
    expect(problemsOf(() => storedRecord('tasks', data))).toEqual([expected]);
  });

  test.each<[string, Record<string, unknown>]>([
    ['a key that there is not', { extra: 1 }],
    ['a count that is no number', { attempts: { w: Number.NaN } }],
    ['a count without end', { attempts: { w: Infinity } }],
    ['a score above 1', { best: 1.5 }],
    [
      'a draft that is too long',
      {
        drafts: [
          { text: 'x'.repeat(256 * 1024 + 1), at: 1, by: 't', revision: 1, isFinished: false },
        ],
      },
    ],
    [
      'a fourth draft',
      {
        drafts: Array.from({ length: 4 }, (_, at) => ({
          text: '',
          at,
          by: 't',
          revision: 1,
          isFinished: false,
        })),
      },
    ],
    ['a name in capitals', { id: 'Task' }],
  ])('%s does not fit', (_, change) => {
    const record = { ...(stored('task-1.json') as object), ...change };
    expect(problemsOf(() => storedRecord('tasks', record)).length).toBeGreaterThan(0);
  });

  test('whatever the data, it is a record or an error of ours', () => {
    const whole = stored('task-1.json') as Record<string, unknown>;
    const field = fc.constantFrom(...Object.keys(whole));
    fc.assert(
      fc.property(field, fc.anything(), (name, value) => {
        problemsOf(() => storedRecord('tasks', { ...whole, [name]: value }));
      }),
      { numRuns: 500 },
    );
  });
});
