import { useMemo } from 'preact/hooks';
import type { ActorRefFrom, SnapshotFrom } from 'xstate';
import {
  type BoardEvent,
  type BoardInput,
  boardMachine,
  type Solution,
  simulate,
} from '../../../simulator/index.ts';
import { useMachine } from './use-machine.ts';

/** A running board: where it stands, what is heard, and the way to edit it. */
export interface RunningBoard {
  readonly snapshot: SnapshotFrom<typeof boardMachine>;
  readonly solution: Solution;
  readonly send: (event: BoardEvent) => void;
  /** Tells of every change as it happens. */
  readonly actor: ActorRefFrom<typeof boardMachine>;
}

/** Runs the board machine for a component. The input counts when the component starts, not later. */
export function useBoard(input: BoardInput): RunningBoard {
  const { actor, snapshot } = useMachine(boardMachine, input);
  const { setup } = snapshot.context;
  const solution = useMemo(() => simulate(setup), [setup]);
  return { snapshot, solution, send: actor.send, actor };
}
