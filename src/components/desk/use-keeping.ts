import type { Inputs } from 'preact/hooks';
import { useEffect, useRef, useState } from 'preact/hooks';
import { openMemory } from '../../progress/browser-memory.ts';
import { type Handwriting, Keeper, type KeepingState } from '../../progress/keeper.ts';
import type { Memory } from '../../progress/memory.ts';
import type { Shelf } from '../../progress/shelf.ts';
import type { Draft } from '../../progress/task-record.ts';

let opened: Promise<Memory | undefined> | undefined;

/** The memory of the browser, opened once for the page; nothing where it keeps nothing. */
export function theMemory(): Promise<Memory | undefined> {
  opened ??= openMemory();
  return opened;
}

/** How it stands with keeping something, for a component. */
export interface Keeping<R> {
  /** Nothing until the memory is open. */
  readonly state: KeepingState<R> | undefined;
  /** Whether the browser keeps nothing, or refused the last time. */
  readonly keepsNothing: boolean;
  readonly takeUp: (draft: Draft) => void;
}

interface Kept<R extends { readonly drafts: readonly Draft[] }> extends Handwriting {
  readonly shelf: (memory: Memory) => Shelf<R>;
  /** What {@link Handwriting.write} gives before anybody touched anything. */
  readonly pristine: string;
  /** Whether the newest draft is taken up at first. */
  readonly takesUp?: () => boolean;
}

/**
 * Keeps the state of a component while it changes, and takes up what was kept when the page was left.
 *
 * @param kept counts when the component starts, but for how it writes and reads. @param state what it writes.
 */
export function useKeeping<R extends { readonly drafts: readonly Draft[] }>(
  kept: Kept<R>,
  state: Inputs,
): Keeping<R> {
  const [keeping, setKeeping] = useState<KeepingState<R>>();
  const [hasNoMemory, setHasNoMemory] = useState(false);
  const latest = useRef(kept);
  latest.current = kept;
  const keeper = useRef<Keeper<R>>();
  useEffect(() => {
    let isOver = false;
    void theMemory().then((memory) => {
      if (isOver) return;
      if (!memory) return setHasNoMemory(true);
      const { shelf, pristine, takesUp = () => true } = latest.current;
      const hand: Handwriting = {
        write: () => latest.current.write(),
        read: (text) => latest.current.read(text),
      };
      keeper.current = new Keeper(memory, shelf(memory), hand, pristine, setKeeping);
      void keeper.current.begin(takesUp());
    });
    return () => {
      isOver = true;
      keeper.current?.end();
    };
  }, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is written is made of these.
  useEffect(() => keeper.current?.changed(), state);
  return {
    state: keeping,
    keepsNothing: hasNoMemory || keeping?.hasFailed === true,
    takeUp: (draft) => void keeper.current?.takeUp(draft),
  };
}
