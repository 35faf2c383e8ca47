import { useCallback, useLayoutEffect, useState } from 'preact/hooks';
import { createActor } from 'xstate';
import {
  type Hunt,
  type HuntEvent,
  type HuntSnapshot,
  huntMachine,
} from '../../../simulator/index.ts';

/** A hunt that goes on: how it stands, and the way to do something. */
export interface RunningHunt {
  readonly snapshot: HuntSnapshot;
  readonly send: (event: HuntEvent) => void;
  /** Goes on from how it once stood. */
  readonly takeUp: (snapshot: HuntSnapshot) => void;
}

/** Runs the machine of a hunt for a component. The hunt counts when the component starts, not later. */
export function useHunt(hunt: Hunt): RunningHunt {
  const [actor, setActor] = useState(() => createActor(huntMachine, { input: { hunt } }).start());
  const [snapshot, setSnapshot] = useState(() => actor.getSnapshot());
  useLayoutEffect(() => {
    setSnapshot(actor.getSnapshot());
    const subscription = actor.subscribe(setSnapshot);
    return () => subscription.unsubscribe();
  }, [actor]);
  const takeUp = useCallback(
    (from: HuntSnapshot) =>
      setActor(createActor(huntMachine, { input: { hunt }, snapshot: from }).start()),
    [hunt],
  );
  return { snapshot, send: actor.send, takeUp };
}
