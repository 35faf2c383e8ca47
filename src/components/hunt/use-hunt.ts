import { useEffect, useState } from 'preact/hooks';
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
}

/**
 * Runs the machine of a hunt for a component. Both count when the component starts, not later.
 *
 * @param from where it goes on, as `fromDraft` makes it of a hunt that was kept; at its beginning when left out.
 */
export function useHunt(hunt: Hunt, from?: HuntSnapshot): RunningHunt {
  const [actor] = useState(() =>
    createActor(huntMachine, { input: { hunt }, ...(from && { snapshot: from }) }).start(),
  );
  const [snapshot, setSnapshot] = useState(() => actor.getSnapshot());
  useEffect(() => {
    const subscription = actor.subscribe(setSnapshot);
    return () => subscription.unsubscribe();
  }, [actor]);
  return { snapshot, send: actor.send };
}
