import * as z from 'zod/mini';
import type { Transaction } from './database.ts';
import { moment, slug } from './task-record.ts';

/** What is kept about the keeping. */
const bookkeepingSchema = z.object({
  /** Who counts: another one after each reset, so that a backup from before adds up with what came later. */
  writer: slug,
  /** When everything was last exported. */
  savedAt: z.optional(moment),
});
export type Bookkeeping = z.output<typeof bookkeepingSchema>;

const KEY = 'books';

/** The books. They are begun when there are none, or when they cannot be read: nothing but a date is lost then. */
export async function readBooks(
  transaction: Transaction,
  newName: () => string,
): Promise<Bookkeeping> {
  const stored = await transaction.objectStore('bookkeeping').get(KEY);
  const kept = z.safeParse(bookkeepingSchema, stored);
  if (kept.success) return kept.data;
  const begun = { writer: newName() };
  await writeBooks(transaction, begun);
  return begun;
}

export async function writeBooks(transaction: Transaction, books: Bookkeeping): Promise<void> {
  await transaction.objectStore('bookkeeping').put(books, KEY);
}
