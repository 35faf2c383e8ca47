import type { InputError } from '../../simulator/index.ts';
import type { BenchRecord } from './bench-record.ts';
import type { DraftName } from './change-record.ts';
import type { Memory } from './memory.ts';
import type { Draft, TaskName, TaskRecord } from './task-record.ts';

/** Where the drafts of one task or one room lie. */
export interface Shelf<R extends { readonly drafts: readonly Draft[] }> {
  /** What a change of it is told by ({@link Memory.onChange}). */
  readonly id: string;
  /** Drafts of another revision stay where they are, and are not offered. */
  readonly revision: number;
  /** Of a task that is another one with each seed: the seed. Drafts of others are not offered either. */
  readonly seed?: string | undefined;
  readonly read: () => Promise<R | undefined>;
  readonly keep: (
    draft: Pick<Draft, 'text' | 'isFinished'>,
    takenUp: DraftName | undefined,
  ) => Promise<R>;
  readonly refuse: (draft: Draft, error: InputError) => Promise<void>;
}

export const taskShelf = (memory: Memory, name: TaskName, seed?: string): Shelf<TaskRecord> => ({
  id: name.id,
  revision: name.revision,
  seed,
  read: () => memory.task(name.id),
  keep: (draft, takenUp) => memory.keepDraft(name, { ...draft, seed }, takenUp),
  refuse: (draft, error) => memory.refuseDraft(name, draft, error),
});

export const benchShelf = (memory: Memory, room: string): Shelf<BenchRecord> => ({
  id: room,
  revision: 1,
  read: () => memory.bench(room),
  keep: ({ text }, takenUp) => memory.keepBench(room, text, takenUp),
  refuse: (draft, error) => memory.refuseBench(room, draft, error),
});
