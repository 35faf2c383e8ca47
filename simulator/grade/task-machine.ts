import { assign, createMachine, type SnapshotFrom } from 'xstate';
import type { Answer } from './answer.ts';
import type { TaskDraft } from './task-draft.ts';

/** An answer that was checked: the same object as the answer that is given, as long as that did not change since. */
export interface Checked {
  readonly answer: Answer;
  /** From 1. */
  readonly attempt: number;
}

export interface TaskContext extends TaskDraft {
  /** How many hints the task has. */
  readonly hints: number;
  /** The last attempt since the page was opened; another object with each. */
  readonly checked: Checked | undefined;
}

export interface TaskInput {
  readonly hints: number;
  /** What stands there at the start. */
  readonly answer: Answer | undefined;
}

export type TaskEvent =
  /** Nothing: what is given is no answer any more. */
  | { readonly type: 'answer.change'; readonly answer: Answer | undefined }
  /** The answer became a solution that was shown. */
  | { readonly type: 'solution.show'; readonly answer: Answer }
  /** The answer became what stood there at the start. Hints that were shown stay. */
  | { readonly type: 'start.again'; readonly answer: Answer | undefined }
  | { readonly type: 'hint.show' }
  /** Has the answer judged. Passed over where there is none. */
  | { readonly type: 'check' }
  /** What came of the answer that was checked. Passed over where another one stands there by now. */
  | { readonly type: 'verdict.give'; readonly passed: boolean }
  /** Goes on from how the task once stood. */
  | { readonly type: 'draft.take-up'; readonly draft: TaskDraft };

const isOfNow = ({ answer, checked }: TaskContext): boolean =>
  checked !== undefined && checked.answer === answer;

/**
 * A task from its brief to its review and on: every kind of task is one, and there is no end to the attempts. Which
 * verdict an answer gets, and what is said to it, is not computed here, but derived from what was checked.
 */
export const taskMachine = createMachine({
  types: {
    context: {} as TaskContext,
    events: {} as TaskEvent,
    input: {} as TaskInput,
  },
  id: 'task',
  context: ({ input }) => ({
    ...input,
    hintsShown: 0,
    checked: undefined,
    isAided: false,
    hasPassed: false,
  }),
  initial: 'brief',
  states: {
    /** Stands as at the start. */
    brief: {},
    working: {},
    /** Waits for the verdict. */
    checked: {},
    passed: {},
    notYet: {},
  },
  on: {
    'answer.change': {
      target: '.working',
      actions: assign(({ event: { answer } }) => ({ answer })),
    },
    'solution.show': {
      target: '.working',
      actions: assign(({ event: { answer } }) => ({ answer, isAided: true })),
    },
    'start.again': {
      target: '.brief',
      actions: assign(({ event: { answer } }) => ({ answer, isAided: false, hasPassed: false })),
    },
    'hint.show': {
      guard: ({ context }) => context.hintsShown < context.hints,
      actions: assign(({ context }) => ({ hintsShown: context.hintsShown + 1 })),
    },
    check: {
      guard: ({ context }) => context.answer !== undefined,
      target: '.checked',
      actions: assign(({ context: { answer, checked } }) => ({
        checked: answer && { answer, attempt: (checked?.attempt ?? 0) + 1 },
      })),
    },
    'verdict.give': [
      {
        guard: ({ context, event }) => isOfNow(context) && event.passed,
        target: '.passed',
        actions: assign({ hasPassed: true }),
      },
      { guard: ({ context }) => isOfNow(context), target: '.notYet' },
    ],
    'draft.take-up': {
      target: '.working',
      actions: assign(({ event }) => event.draft),
    },
  },
});

export type TaskSnapshot = SnapshotFrom<typeof taskMachine>;
