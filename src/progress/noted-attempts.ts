import * as z from 'zod/mini';
import { lastSchema, taskNameSchema } from './task-record.ts';

const KEY = 'tap-and-sum.attempts';

const attemptSchema = z.strictObject({ name: taskNameSchema, made: lastSchema });
/** An attempt at a task: what came of it, and when. */
export type Attempt = z.output<typeof attemptSchema>;

/**
 * Attempts on their way into the memory. The memory takes a moment to write one, and drops what it was at
 * when the page is left; a note stands at once, and outlives the page in its tab.
 */
export class NotedAttempts {
  readonly #storage: Pick<Storage, 'getItem' | 'setItem'> | undefined;

  /** @param storage of the tab; nothing where the browser has none: then nothing is noted. */
  constructor(storage: Pick<Storage, 'getItem' | 'setItem'> | undefined) {
    this.#storage = storage;
  }

  /** All of them, oldest first. Notes that cannot be read are none. */
  all(): readonly Attempt[] {
    try {
      return z.parse(z.array(attemptSchema), JSON.parse(this.#storage?.getItem(KEY) ?? '[]'));
    } catch {
      return [];
    }
  }

  add(attempt: Attempt): void {
    this.#write([...this.all(), attempt]);
  }

  remove(attempt: Attempt): void {
    const isOther = ({ name, made }: Attempt) =>
      name.id !== attempt.name.id || made.at !== attempt.made.at;
    this.#write(this.all().filter(isOther));
  }

  #write(attempts: readonly Attempt[]): void {
    try {
      this.#storage?.setItem(KEY, JSON.stringify(attempts));
    } catch {
      // The tab has no room: the memory alone has to be quick enough.
    }
  }
}
