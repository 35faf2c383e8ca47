import type { Everything } from './backup.ts';
import { readAll, type Transaction } from './database.ts';
import type { Moment, TaskRecord } from './task-record.ts';

/**
 * Forgets tasks, and concepts of which no task is left that was passed; or everything but what is set aside.
 *
 * @param what the ids of the tasks. @returns what was forgotten.
 */
export async function forget(
  transaction: Transaction,
  what: readonly string[] | 'everything',
  now: Moment,
): Promise<Everything> {
  const all = await readAll(transaction, 'tasks', now);
  const isForgotten = ({ id }: TaskRecord) => what === 'everything' || what.includes(id);
  const tasks = all.filter(isForgotten);
  const left = all.filter((one) => !isForgotten(one) && one.passedAt !== undefined);
  const held = new Set(left.map(({ concept }) => concept));
  const touched = new Set(tasks.map(({ concept }) => concept));
  const reviews = (await readAll(transaction, 'reviews', now)).filter(
    ({ concept }) => what === 'everything' || (touched.has(concept) && !held.has(concept)),
  );
  const benches = what === 'everything' ? await readAll(transaction, 'benches', now) : [];
  for (const { id } of tasks) await transaction.objectStore('tasks').delete(id);
  for (const { concept } of reviews) await transaction.objectStore('reviews').delete(concept);
  for (const { room } of benches) await transaction.objectStore('benches').delete(room);
  return { tasks, reviews, benches };
}
