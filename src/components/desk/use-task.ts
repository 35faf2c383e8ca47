import { useEffect, useMemo } from 'preact/hooks';
import {
  type Answer,
  type TaskEvent,
  type TaskInput,
  type TaskSnapshot,
  taskMachine,
} from '../../../simulator/index.ts';
import { useMachine } from './use-machine.ts';

/** What comes of an answer. */
export interface Judged {
  readonly passed: boolean;
  /** From 0 to 1. */
  readonly score: number;
}

/** A task that goes on: how it stands, the way to do something, and what came of its last attempt. */
export interface RunningTask<J extends Judged = Judged> {
  readonly snapshot: TaskSnapshot;
  readonly send: (event: TaskEvent) => void;
  /** Another object with each attempt; nothing as long as the judge is not there. */
  readonly judged: J | undefined;
}

/**
 * Runs the machine of a task for a component. What is checked before the judge is there is judged as soon as it is.
 *
 * @param input counts when the component starts, not later. @param judge nothing as long as it is not there.
 */
export function useTask<J extends Judged>(
  input: TaskInput,
  judge: ((answer: Answer) => J) | undefined,
): RunningTask<J> {
  const { actor, snapshot } = useMachine(taskMachine, input);
  const { checked } = snapshot.context;
  const judged = useMemo(() => checked && judge?.(checked.answer), [checked, judge]);
  const { send } = actor;
  useEffect(() => {
    if (judged) send({ type: 'verdict.give', passed: judged.passed });
  }, [send, judged]);
  return { snapshot, send, judged };
}
