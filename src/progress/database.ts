import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB } from 'idb';
import { InputError } from '../../simulator/index.ts';
import { keyOf, type Records, type StoreName, storedRecord } from './stored-record.ts';
import type { Moment } from './task-record.ts';

export const DATABASE = 'tap-and-sum';
/** Rises when a store is added. The records have versions of their own. */
const DATABASE_VERSION = 1;

/** A record that did not fit when it was read, as it was found. Only a person removes it. */
export interface AsideRecord {
  readonly store: StoreName;
  readonly name: string;
  readonly data: unknown;
  /** What was wrong, a line each. */
  readonly problems: readonly string[];
  readonly at: Moment;
}

/** Records lie as they are, under keys of their own: what was broken once is not trusted to hold its key. */
interface Stores extends DBSchema {
  tasks: { key: string; value: unknown };
  reviews: { key: string; value: unknown };
  benches: { key: string; value: unknown };
  aside: { key: number; value: AsideRecord };
  bookkeeping: { key: string; value: unknown };
}
export const ALL_STORES = ['tasks', 'reviews', 'benches', 'aside', 'bookkeeping'] as const;
export type Database = IDBPDatabase<Stores>;
/** Reading may set a record aside, so that every transaction may write. */
export type Transaction = IDBPTransaction<Stores, typeof ALL_STORES, 'readwrite'>;

/** Opens the database. Rejects where the browser keeps nothing. */
export function openDatabase(): Promise<Database> {
  return openDB<Stores>(DATABASE, DATABASE_VERSION, {
    upgrade(database) {
      for (const store of ['tasks', 'reviews', 'benches', 'bookkeeping'] as const) {
        database.createObjectStore(store);
      }
      database.createObjectStore('aside', { autoIncrement: true });
    },
    // A newer page waits for this one: it gets its way, and what this one writes fails and is told.
    blocking: (_, __, event) => (event.target as IDBDatabase | null)?.close(),
  });
}

/** A record of a store. One that does not fit is set aside in the same transaction, and is not there. */
export async function readRecord<S extends StoreName>(
  transaction: Transaction,
  store: S,
  key: string,
  now: Moment,
): Promise<Records[S] | undefined> {
  const data = await transaction.objectStore(store).get(key);
  return data === undefined ? undefined : fitting(transaction, store, key, data, now);
}

/** All records of a store that fit; the others are set aside. */
export async function readAll<S extends StoreName>(
  transaction: Transaction,
  store: S,
  now: Moment,
): Promise<Records[S][]> {
  const from = transaction.objectStore(store);
  const [keys, all] = await Promise.all([from.getAllKeys(), from.getAll()]);
  const read: Records[S][] = [];
  for (const [index, data] of all.entries()) {
    const record = await fitting(transaction, store, String(keys[index]), data, now);
    if (record) read.push(record);
  }
  return read;
}

/** Writes a record over what lies there. @throws InputError for one that could not be read again, such as a draft that is too long. */
export async function writeRecord<S extends StoreName>(
  transaction: Transaction,
  store: S,
  record: Records[S],
): Promise<void> {
  await transaction.objectStore(store).put(storedRecord(store, record), keyIn(store, record));
}

/** The key of a record in its store. */
export const keyIn = <S extends StoreName>(store: S, record: Records[S]): string =>
  String(Reflect.get(record, keyOf(store)));

/** Puts something that does not fit where it is shown and can be exported. */
export async function setAside(
  transaction: Transaction,
  record: Omit<AsideRecord, 'problems'>,
  error: InputError,
): Promise<void> {
  await transaction.objectStore('aside').add({ ...record, problems: error.message.split('\n') });
}

async function fitting<S extends StoreName>(
  transaction: Transaction,
  store: S,
  key: string,
  data: unknown,
  now: Moment,
): Promise<Records[S] | undefined> {
  try {
    const record = storedRecord(store, data);
    const found = keyIn(store, record);
    if (found === key) return record;
    throw new InputError(key, [{ place: keyOf(store), expected: key, found }]);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    await setAside(transaction, { store, name: key, data, at: now }, error);
    await transaction.objectStore(store).delete(key);
    return undefined;
  }
}
