import type { InputError } from '../../simulator/index.ts';
import type { Everything, OpenedBackup } from './backup.ts';
import type { BenchRecord } from './bench-record.ts';
import { readBooks, writeBooks } from './bookkeeping.ts';
import {
  type DraftName,
  type Outcome,
  underName,
  withAttempt,
  withDraft,
  withHint,
  withoutDraft,
  withSolution,
} from './change-record.ts';
import {
  ALL_STORES,
  type Database,
  openDatabase,
  readAll,
  readRecord,
  setAside,
  type Transaction,
  writeRecord,
} from './database.ts';
import { forget } from './forget.ts';
import { afterAttempt } from './review.ts';
import { recordName } from './stored-record.ts';
import { type NumberedAside, readAside, takeBack, takeIn } from './take-in.ts';
import {
  type Draft,
  type Moment,
  newRecord,
  RECORD_VERSION,
  type TaskName,
  type TaskRecord,
} from './task-record.ts';

/** What a memory cannot know by itself. */
export interface MemoryInput {
  readonly clock: () => Moment;
  /** A name that nobody had before: lower-case letters and digits. */
  readonly newName: () => string;
  /** The line to other tabs. */
  readonly channel: BroadcastChannel;
}

/** Hears of a change: of which task or room; of everything when it is not said. */
type Listener = (of: string | undefined) => void;

type Change<R> = (record: R, now: Moment, transaction: Transaction) => R | Promise<R>;

/** Everything that is kept, and what was set aside. */
export interface Contents {
  readonly records: Everything;
  readonly aside: readonly NumberedAside[];
  readonly savedAt: Moment | undefined;
}

/**
 * What the browser keeps of a learner. Each change reads, changes and writes in one transaction, so that
 * tabs change the same record one after the other; each tells the other tabs. Methods reject where the
 * browser refuses.
 */
export class Memory {
  /** Names this tab in the drafts that it writes. */
  readonly tab: string;
  readonly #database: Database;
  readonly #input: MemoryInput;
  readonly #listeners = new Set<Listener>();

  private constructor(database: Database, input: MemoryInput) {
    this.#database = database;
    this.#input = input;
    this.tab = input.newName();
    input.channel.addEventListener('message', ({ data }) => this.#hear(data));
  }

  /** Rejects where the browser keeps nothing. */
  static async open(input: MemoryInput): Promise<Memory> {
    return new Memory(await openDatabase(), input);
  }

  close(): void {
    this.#database.close();
    this.#input.channel.close();
  }

  /** Calls back after every change, in this tab or another. @returns what ends that. */
  onChange(listener: Listener): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** The record of a task; nothing when there is none, or when it had to be set aside. */
  task(id: string): Promise<TaskRecord | undefined> {
    return this.#within((transaction, now) => readRecord(transaction, 'tasks', id, now));
  }

  /** Everything. What was set aside and fits by now, since the page is newer, is taken back in. */
  contents(): Promise<Contents> {
    return this.#within(async (transaction, now) => {
      await takeBack(transaction, now);
      const records = {
        tasks: await readAll(transaction, 'tasks', now),
        reviews: await readAll(transaction, 'reviews', now),
        benches: await readAll(transaction, 'benches', now),
      };
      const { savedAt } = await readBooks(transaction, this.#input.newName);
      return { records, aside: await readAside(transaction), savedAt };
    });
  }

  /**
   * Keeps how far a task is.
   *
   * @param takenUp the draft that this tab began from. @returns what is kept now.
   */
  keepDraft(
    name: TaskName,
    { text, isFinished, seed }: Pick<Draft, 'text' | 'isFinished' | 'seed'>,
    takenUp: DraftName | undefined,
  ): Promise<TaskRecord> {
    const { revision } = name;
    const ofSeed = seed === undefined ? {} : { seed };
    return this.#changeTask(name, (record, at) =>
      withDraft(record, { text, isFinished, ...ofSeed, revision, at, by: this.tab }, takenUp),
    );
  }

  /** Puts a draft that does not fit its task where it is shown, and begins without it. */
  async refuseDraft(name: TaskName, draft: Draft, error: InputError): Promise<void> {
    await this.#changeTask(name, async (record, at, transaction) => {
      const aside = {
        store: 'tasks',
        name: name.id,
        data: { id: name.id, draft },
        at,
      } as const;
      await setAside(transaction, aside, error);
      return withoutDraft(record, draft);
    });
  }

  /**
   * Counts an attempt, and sees to when its concept comes back.
   *
   * @param at when it was made, if that was before now; one that is kept already is not counted again.
   * @returns whether it is the first pass of all.
   */
  attempted(
    name: TaskName,
    outcome: Outcome,
    at?: Moment,
  ): Promise<{ readonly isFirstPass: boolean }> {
    return this.#changed(async (transaction, clock) => {
      const now = at ?? clock;
      // In few steps, and nothing read but what it needs: the page may be left the moment after.
      const [{ writer }, before = newRecord(name), review] = await Promise.all([
        readBooks(transaction, this.#input.newName),
        readRecord(transaction, 'tasks', name.id, now),
        readRecord(transaction, 'reviews', name.concept, now),
      ]);
      if (at !== undefined && before.last?.at === at) return { isFirstPass: false };
      const after = withAttempt(underName(before, name), outcome, now, writer);
      const wasPassed = before.passedAt !== undefined;
      const attempt = { ...outcome, concept: name.concept, at: now, wasPassed };
      const next = afterAttempt(review, attempt);
      await Promise.all([
        writeRecord(transaction, 'tasks', after),
        next && next !== review && writeRecord(transaction, 'reviews', next),
      ]);
      if (wasPassed || after.passedAt === undefined) return { isFirstPass: false };
      const all = await readAll(transaction, 'tasks', now);
      const isFirstPass = all.every(({ id, passedAt }) => id === name.id || passedAt === undefined);
      return { isFirstPass };
    });
  }

  hinted(name: TaskName): Promise<TaskRecord> {
    return this.#changeTask(name, async (record, _, transaction) =>
      withHint(record, (await readBooks(transaction, this.#input.newName)).writer),
    );
  }

  solutionShown(name: TaskName): Promise<TaskRecord> {
    return this.#changeTask(name, withSolution);
  }

  /** How a room of the bench was left; nothing when it was not. */
  bench(room: string): Promise<BenchRecord | undefined> {
    return this.#within((transaction, now) => readRecord(transaction, 'benches', room, now));
  }

  /** Keeps how a room of the bench stands, like {@link keepDraft}. */
  keepBench(room: string, text: string, takenUp: DraftName | undefined): Promise<BenchRecord> {
    return this.#changeBench(room, (record, at) => {
      const draft = { text, isFinished: false, revision: 1, at, by: this.tab };
      return withDraft(record, draft, takenUp);
    });
  }

  /** Like {@link refuseDraft}. */
  async refuseBench(room: string, draft: Draft, error: InputError): Promise<void> {
    await this.#changeBench(room, async (record, at, transaction) => {
      const aside = { store: 'benches', name: room, data: { room, draft }, at } as const;
      await setAside(transaction, aside, error);
      return withoutDraft(record, draft);
    });
  }

  /** Forgets as {@link forget} does. @returns what was forgotten, for {@link take} to bring back. */
  reset(what: readonly string[] | 'everything'): Promise<Everything> {
    return this.#changed(async (transaction, now) => {
      const forgotten = await forget(transaction, what, now);
      const books = await readBooks(transaction, this.#input.newName);
      await writeBooks(transaction, { ...books, writer: this.#input.newName() });
      return forgotten;
    });
  }

  /** Merges records into what is kept. What cannot be used of a backup is set aside. */
  async take({ records, unusable }: Pick<OpenedBackup, 'records' | 'unusable'>): Promise<void> {
    await this.#changed(async (transaction, now) => {
      await takeIn(transaction, records, now);
      for (const { store, data, error } of unusable) {
        await setAside(transaction, { store, name: recordName(store, data), data, at: now }, error);
      }
    });
  }

  /** Notes that everything has just been exported. */
  async noteBackup(): Promise<void> {
    await this.#changed(async (transaction, savedAt) => {
      const books = await readBooks(transaction, this.#input.newName);
      await writeBooks(transaction, { ...books, savedAt });
    });
  }

  /** Removes something that was set aside, for good. */
  async removeAside(number: number): Promise<void> {
    await this.#changed((transaction) => transaction.objectStore('aside').delete(number));
  }

  #changeTask(name: TaskName, change: Change<TaskRecord>): Promise<TaskRecord> {
    return this.#changed(async (transaction, now) => {
      const record = (await readRecord(transaction, 'tasks', name.id, now)) ?? newRecord(name);
      const changed = await change(underName(record, name), now, transaction);
      await writeRecord(transaction, 'tasks', changed);
      return changed;
    }, name.id);
  }

  #changeBench(room: string, change: Change<BenchRecord>): Promise<BenchRecord> {
    return this.#changed(async (transaction, now) => {
      const kept = await readRecord(transaction, 'benches', room, now);
      const changed = await change(
        kept ?? { version: RECORD_VERSION, room, drafts: [] },
        now,
        transaction,
      );
      await writeRecord(transaction, 'benches', changed);
      return changed;
    }, room);
  }

  /** @param of the task or room that it is about; everything when left out. */
  async #changed<T>(
    work: (transaction: Transaction, now: Moment) => Promise<T>,
    of?: string,
  ): Promise<T> {
    const done = await this.#within(work);
    this.#input.channel.postMessage(of);
    this.#hear(of);
    return done;
  }

  async #within<T>(work: (transaction: Transaction, now: Moment) => Promise<T>): Promise<T> {
    const transaction = this.#database.transaction(ALL_STORES, 'readwrite');
    try {
      const done = await work(transaction, this.#input.clock());
      await transaction.done;
      return done;
    } catch (error) {
      // What was aborted already rejects a second time, and that was told by the first.
      transaction.done.catch(() => undefined);
      abort(transaction);
      throw error;
    }
  }

  #hear(of: unknown): void {
    for (const listener of this.#listeners) listener(typeof of === 'string' ? of : undefined);
  }
}

function abort(transaction: Transaction): void {
  try {
    transaction.abort();
  } catch {
    // The browser did so already.
  }
}
