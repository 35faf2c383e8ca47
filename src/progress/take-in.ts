import { InputError } from '../../simulator/index.ts';
import type { Everything } from './backup.ts';
import { type AsideRecord, readRecord, type Transaction, writeRecord } from './database.ts';
import { mergeBenches, mergeReviews, mergeTasks } from './merge.ts';
import { STORE_NAMES, storedRecord } from './stored-record.ts';
import type { Moment } from './task-record.ts';

/** A record that was set aside, with the number that it lies under. */
export type NumberedAside = AsideRecord & { readonly number: number };

/** Merges records into what is stored. */
export async function takeIn(
  transaction: Transaction,
  { tasks = [], reviews = [], benches = [] }: Partial<Everything>,
  now: Moment,
): Promise<void> {
  for (const record of tasks) {
    const kept = await readRecord(transaction, 'tasks', record.id, now);
    await writeRecord(transaction, 'tasks', kept ? mergeTasks(kept, record) : record);
  }
  for (const record of reviews) {
    const kept = await readRecord(transaction, 'reviews', record.concept, now);
    await writeRecord(transaction, 'reviews', kept ? mergeReviews(kept, record) : record);
  }
  for (const record of benches) {
    const kept = await readRecord(transaction, 'benches', record.room, now);
    await writeRecord(transaction, 'benches', kept ? mergeBenches(kept, record) : record);
  }
}

/** Takes back in what was set aside and fits by now, since the page is newer than the one that read it first. */
export async function takeBack(transaction: Transaction, now: Moment): Promise<void> {
  for (const { number, store, data } of await readAside(transaction)) {
    if (!STORE_NAMES.includes(store)) continue;
    try {
      await takeIn(transaction, { [store]: [storedRecord(store, data)] }, now);
      await transaction.objectStore('aside').delete(number);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
    }
  }
}

/** What was set aside, in the order in which it was. */
export async function readAside(transaction: Transaction): Promise<NumberedAside[]> {
  const store = transaction.objectStore('aside');
  const [numbers, all] = await Promise.all([store.getAllKeys(), store.getAll()]);
  return all.flatMap((one, index) => {
    const number = numbers[index];
    return number === undefined ? [] : [{ ...one, number }];
  });
}
