import { InputError } from '../../simulator/index.ts';
import type { DraftName } from './change-record.ts';
import type { Memory } from './memory.ts';
import type { Shelf } from './shelf.ts';
import type { Draft } from './task-record.ts';

/** How long something has to stand still before it is kept, in milliseconds. */
const PAUSE = 250;

/** How a state is written as a draft, and taken up from one. */
export interface Handwriting {
  readonly write: () => Pick<Draft, 'text' | 'isFinished'>;
  /** @throws InputError for a text that does not fit. */
  readonly read: (text: string) => void;
}

/** How it stands with the keeping of one task or room. */
export interface KeepingState<R> {
  readonly record: R | undefined;
  /** When the draft was written that this tab took up. */
  readonly takenUpAt: number | undefined;
  /** A draft that this tab neither wrote nor took up. */
  readonly other: Draft | undefined;
  /** Whether what stands on the page is kept: false while there is something to be written. */
  readonly isKept: boolean;
  /** Whether the browser refused to keep it. */
  readonly hasFailed: boolean;
}

/**
 * Keeps the state of one task or room while it changes. It takes up the newest draft at first, unless that
 * is finished or the state has moved already; each later draft is offered.
 */
export class Keeper<R extends { readonly drafts: readonly Draft[] }> {
  readonly #memory: Memory;
  readonly #shelf: Shelf<R>;
  readonly #hand: Handwriting;
  readonly #tell: (state: KeepingState<R>) => void;
  readonly #end: () => void;
  #state: KeepingState<R> = {
    record: undefined,
    takenUpAt: undefined,
    other: undefined,
    isKept: true,
    hasFailed: false,
  };
  /** The text that lies in the browser, or that there is no need to keep. */
  #written: string;
  #takenUp: DraftName | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;

  /** @param pristine what the state was like before anybody touched it. */
  constructor(
    memory: Memory,
    shelf: Shelf<R>,
    hand: Handwriting,
    pristine: string,
    tell: (state: KeepingState<R>) => void,
  ) {
    this.#memory = memory;
    this.#shelf = shelf;
    this.#hand = hand;
    this.#written = pristine;
    this.#tell = tell;
    const stopHearing = memory.onChange((of) => {
      if (of === undefined || of === shelf.id) void this.#look();
    });
    const flush = () => void this.flush();
    document.addEventListener('visibilitychange', flush);
    window.addEventListener('pagehide', flush);
    this.#end = () => {
      stopHearing();
      document.removeEventListener('visibilitychange', flush);
      window.removeEventListener('pagehide', flush);
      flush();
    };
  }

  /** Takes up what was kept, where that is wanted. */
  async begin(takesUp: boolean): Promise<void> {
    await this.#look();
    const { other } = this.#state;
    const hasMoved = this.#hand.write().text !== this.#written;
    if (takesUp && other && !other.isFinished && !hasMoved) await this.takeUp(other);
    else await this.flush();
  }

  /** To be called after every change of the state. */
  changed(): void {
    if (this.#state.isKept) this.#change({ isKept: false });
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.flush(), PAUSE);
  }

  /** Keeps now what is to be kept. */
  async flush(): Promise<void> {
    clearTimeout(this.#timer);
    const draft = this.#hand.write();
    if (draft.text === this.#written) return this.#change({ isKept: true });
    const before = this.#written;
    this.#written = draft.text;
    try {
      const record = await this.#shelf.keep(draft, this.#takenUp);
      this.#change({ isKept: true, hasFailed: false, record, other: this.#otherOf(record) });
    } catch {
      this.#written = before;
      this.#change({ hasFailed: true });
    }
  }

  /** Goes on from a draft. One that does not fit is set aside. */
  async takeUp(draft: Draft): Promise<void> {
    this.#takenUp = { by: draft.by, at: draft.at };
    try {
      this.#hand.read(draft.text);
      this.#written = draft.text;
      this.#change({ takenUpAt: draft.at, other: this.#otherOf(this.#state.record) });
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      await this.#shelf.refuse(draft, error).catch(() => this.#change({ hasFailed: true }));
    }
  }

  end(): void {
    this.#end();
  }

  async #look(): Promise<void> {
    try {
      const record = await this.#shelf.read();
      this.#change({ record, other: this.#otherOf(record) });
    } catch {
      this.#change({ hasFailed: true });
    }
  }

  #otherOf(record: R | undefined): Draft | undefined {
    const { tab } = this.#memory;
    return record?.drafts.find(
      ({ by, at, text, revision, seed }) =>
        revision === this.#shelf.revision &&
        seed === this.#shelf.seed &&
        by !== tab &&
        text !== this.#written &&
        !(by === this.#takenUp?.by && at <= this.#takenUp.at),
    );
  }

  #change(news: Partial<KeepingState<R>>): void {
    this.#state = { ...this.#state, ...news };
    this.#tell(this.#state);
  }
}
