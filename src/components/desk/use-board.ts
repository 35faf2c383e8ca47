import { useEffect, useMemo, useState } from 'preact/hooks';
import { createActor, type SnapshotFrom } from 'xstate';
import {
  type BoardEvent,
  type BoardInput,
  boardMachine,
  type Solution,
  simulate,
} from '../../../simulator/index.ts';

/** A running board: where it stands, what is heard, and the way to edit it. */
export interface RunningBoard {
  readonly snapshot: SnapshotFrom<typeof boardMachine>;
  readonly solution: Solution;
  readonly send: (event: BoardEvent) => void;
}

/** Runs the board machine for a component. The input counts when the component starts, not later. */
export function useBoard(input: BoardInput): RunningBoard {
  const [actor] = useState(() => createActor(boardMachine, { input }).start());
  const [snapshot, setSnapshot] = useState(() => actor.getSnapshot());
  useEffect(() => {
    const subscription = actor.subscribe(setSnapshot);
    return () => subscription.unsubscribe();
  }, [actor]);
  const { setup } = snapshot.context;
  const solution = useMemo(() => simulate(setup), [setup]);
  return { snapshot, solution, send: actor.send };
}
