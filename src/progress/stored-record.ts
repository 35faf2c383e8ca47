import type * as z from 'zod/mini';
import { checkDocument, InputError } from '../../simulator/index.ts';
import { type BenchRecord, benchRecordSchema } from './bench-record.ts';
import { type Review, reviewSchema } from './review.ts';
import { type TaskRecord, taskRecordSchema } from './task-record.ts';

/** Records by the store that they lie in. */
export interface Records {
  readonly tasks: TaskRecord;
  readonly reviews: Review;
  readonly benches: BenchRecord;
}
export type StoreName = keyof Records;

/** What is stored: by store the schema of its records, and what tells one from another. */
const STORED: {
  readonly [S in StoreName]: {
    readonly schema: z.ZodMiniType<Records[S]>;
    readonly key: keyof Records[S] & string;
    readonly what: string;
  };
} = {
  tasks: { schema: taskRecordSchema, key: 'id', what: 'task' },
  reviews: { schema: reviewSchema, key: 'concept', what: 'concept' },
  benches: { schema: benchRecordSchema, key: 'room', what: 'room of the bench' },
};

export const STORE_NAMES: readonly StoreName[] = ['tasks', 'reviews', 'benches'];

/** The field that tells one record of a store from another. */
export const keyOf = (store: StoreName): string => STORED[store].key;

type Plain = Readonly<Record<string, unknown>>;
/** What takes a record of one version to the next. It may take for granted what that version held. */
export type Migration = (record: Plain) => Plain;

/**
 * By store: what takes a record of version 1 to 2, of 2 to 3, and so on. A change of a schema raises
 * `RECORD_VERSION`, adds an entry to every list, and leaves a file of the version before it in
 * `tests/progress/stored`.
 */
export const MIGRATIONS: Readonly<Record<StoreName, readonly Migration[]>> = {
  tasks: [seedBesideText],
  reviews: [unchanged],
  benches: [unchanged],
};

/**
 * A record as it is today, from one that was stored or imported, of whatever version.
 *
 * @param data anything. @throws InputError with what does not fit; a version to come is one such thing.
 */
export function storedRecord<S extends StoreName>(
  store: S,
  data: unknown,
  migrations: readonly Migration[] = MIGRATIONS[store],
): Records[S] {
  const file = recordName(store, data);
  const document = { file, data: migrated(file, data, migrations), lineOf: () => undefined };
  return checkDocument(document, STORED[store].schema);
}

/** What a record is called when it cannot be used. */
export function recordName(store: StoreName, data: unknown): string {
  const { key, what } = STORED[store];
  const name = isPlain(data) ? data[key] : undefined;
  return typeof name === 'string' ? `${what} ${name.slice(0, 140)}` : `a ${what}`;
}

function migrated(file: string, data: unknown, migrations: readonly Migration[]): unknown {
  if (!isPlain(data)) return data;
  const { version } = data;
  const today = migrations.length + 1;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1 || version > today) {
    throw new InputError(file, [
      {
        place: 'version',
        expected: today === 1 ? '1' : `1 to ${today}`,
        found: typeof version === 'number' ? String(version) : 'no version',
        ...(Number(version) > today
          ? { hint: 'It was written by a newer page. Load the page anew, and it is read again.' }
          : {}),
      },
    ]);
  }
  try {
    return migrations
      .slice(version - 1)
      .reduce<Plain>(
        (record, migrate, step) => ({ ...migrate(record), version: version + step + 1 }),
        data,
      );
  } catch {
    throw new InputError(file, [
      {
        place: '',
        expected: `a record of version ${version}`,
        found: 'one that cannot be migrated',
      },
    ]);
  }
}

/** Version 2 keeps the seed of a draft beside its text. Before that fault hunts alone had seeds, in their text. */
function seedBesideText(record: Plain): Plain {
  if (record['kind'] !== 'fault-hunt' || !Array.isArray(record['drafts'])) return record;
  const drafts = record['drafts'].map((draft: unknown) => {
    if (!isPlain(draft) || typeof draft['text'] !== 'string') return draft;
    const hunt: unknown = JSON.parse(draft['text']);
    return isPlain(hunt) ? { ...draft, seed: hunt['seed'] } : draft;
  });
  return { ...record, drafts };
}

function unchanged(record: Plain): Plain {
  return record;
}

const isPlain = (data: unknown): data is Plain =>
  typeof data === 'object' && data !== null && !Array.isArray(data);
