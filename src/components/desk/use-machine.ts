import { useLayoutEffect, useState } from 'preact/hooks';
import {
  type Actor,
  type AnyStateMachine,
  createActor,
  type InputFrom,
  type SnapshotFrom,
} from 'xstate';

/** A running machine: how it stands, and the way to have something happen. */
export interface Running<Machine extends AnyStateMachine> {
  readonly actor: Actor<Machine>;
  readonly snapshot: SnapshotFrom<Machine>;
}

/** Runs a machine for a component. The input counts when the component starts, not later. */
export function useMachine<Machine extends AnyStateMachine>(
  machine: Machine,
  input: InputFrom<Machine>,
): Running<Machine> {
  const [actor] = useState(() => createActor(machine, { input }).start());
  const [snapshot, setSnapshot] = useState(() => actor.getSnapshot());
  // Other effects wait for the page to be painted, and a click can be quicker than that.
  useLayoutEffect(() => {
    const subscription = actor.subscribe(setSnapshot);
    return () => subscription.unsubscribe();
  }, [actor]);
  return { actor, snapshot };
}
