import { assign, createMachine, type SnapshotFrom } from 'xstate';
import type { Answer, TaskDraft } from '../../simulator/index.ts';
import { type Interaction, type LogEvent, MOST_EVENTS, MOST_INTERACTIONS } from './interaction.ts';
import { type Work, type WorkItem, withWorkOn } from './work.ts';

export interface WorkContext {
  readonly work: Work;
}

export interface WorkInput {
  readonly work: Work;
}

export type WorkEvent =
  /** Goes on from work that was kept. */
  | { readonly type: 'work.take-up'; readonly work: Work }
  /** Empty: the learner gives none. */
  | { readonly type: 'name.set'; readonly name: string }
  /** Which task an item is, as it was given out. */
  | {
      readonly type: 'item.give';
      readonly item: string;
      readonly revision?: number | undefined;
      readonly seed?: string | undefined;
    }
  /** How far an item is. */
  | { readonly type: 'answer.change'; readonly item: string; readonly draft: TaskDraft }
  /** An answer that was checked, and what came of it. */
  | {
      readonly type: 'attempt.note';
      readonly item: string;
      readonly answer: Answer;
      readonly interaction: Interaction;
    }
  | { readonly type: 'hint.note'; readonly item: string }
  | { readonly type: 'time.note'; readonly item: string; readonly ms: number }
  | { readonly type: 'log.note'; readonly events: readonly LogEvent[] }
  /** The file was saved. */
  | { readonly type: 'hand-in'; readonly at: number }
  /** Ends the work, so that solutions may be seen. */
  | { readonly type: 'close'; readonly at: number };

type Done = Partial<WorkContext>;

const done = ({ work }: WorkContext, change: (work: Work) => Work): Done => ({
  work: { ...change(work), hasMoved: true },
});

const doneOn = (context: WorkContext, item: string, change: (item: WorkItem) => WorkItem): Done =>
  done(context, (work) => withWorkOn(work, item, change));

function given(context: WorkContext, { item, revision, seed }: EventOf<'item.give'>): Done {
  const what = {
    ...(revision === undefined ? {} : { revision }),
    ...(seed === undefined ? {} : { seed }),
  };
  // Being given something is nothing that a learner did.
  return { work: withWorkOn(context.work, item, (one) => ({ ...one, ...what })) };
}

function answered(context: WorkContext, { item, draft }: EventOf<'answer.change'>): Done {
  const { answer, hintsShown, isAided, hasPassed } = draft;
  return doneOn(context, item, ({ answer: _, ...one }) => ({
    ...one,
    ...(answer === undefined ? {} : { answer }),
    hintsShown,
    isAided,
    hasPassed: one.hasPassed || hasPassed,
  }));
}

function attempted(context: WorkContext, event: EventOf<'attempt.note'>): Done {
  const { item, answer, interaction } = event;
  const { score } = interaction;
  return doneOn(context, item, (one) => ({
    ...one,
    attempts: one.attempts + 1,
    hasPassed: one.hasPassed || score === 1,
    best: one.best && one.best.score > score ? one.best : { answer, score },
    interactions: [...one.interactions, interaction].slice(-MOST_INTERACTIONS),
  }));
}

type EventOf<Type extends WorkEvent['type']> = Extract<WorkEvent, { type: Type }>;

/**
 * The work of a learner on an assignment: `working`, then `handedIn` until something is done again, and perhaps `closed`,
 * after which nothing changes. What answers are worth is not computed here.
 */
export const workMachine = createMachine({
  types: {
    context: {} as WorkContext,
    events: {} as WorkEvent,
    input: {} as WorkInput,
  },
  id: 'work',
  context: ({ input }) => ({ work: input.work }),
  initial: 'open',
  states: {
    open: {
      initial: 'working',
      on: {
        'work.take-up': {
          target: '.working',
          actions: assign(({ event }) => ({ work: event.work })),
        },
        'name.set': {
          target: '.working',
          actions: assign(({ context, event: { name } }) =>
            done(context, (work) => ({ ...work, name })),
          ),
        },
        'item.give': { actions: assign(({ context, event }) => given(context, event)) },
        'answer.change': {
          target: '.working',
          actions: assign(({ context, event }) => answered(context, event)),
        },
        'attempt.note': {
          target: '.working',
          actions: assign(({ context, event }) => attempted(context, event)),
        },
        'hint.note': {
          target: '.working',
          actions: assign(({ context, event }) =>
            doneOn(context, event.item, (one) => ({ ...one, hints: one.hints + 1 })),
          ),
        },
        'time.note': {
          actions: assign(({ context, event: { item, ms } }) => ({
            work: withWorkOn(context.work, item, (one) => ({ ...one, spentMs: one.spentMs + ms })),
          })),
        },
        'log.note': {
          actions: assign(({ context: { work }, event }) => ({
            work: { ...work, events: [...work.events, ...event.events].slice(0, MOST_EVENTS) },
          })),
        },
        'hand-in': {
          target: '.handedIn',
          actions: assign(({ context: { work }, event }) => ({
            work: { ...work, handedInAt: event.at, hasMoved: false },
          })),
        },
      },
      states: {
        working: {
          always: [
            { guard: ({ context }) => context.work.closedAt !== undefined, target: '#work.closed' },
            { guard: ({ context }) => isHandedIn(context.work), target: 'handedIn' },
          ],
        },
        /** The file that was saved says what stands here. */
        handedIn: {
          on: {
            close: {
              target: '#work.closed',
              actions: assign(({ context: { work }, event }) => ({
                work: { ...work, closedAt: event.at },
              })),
            },
          },
        },
      },
    },
    closed: {},
  },
});

const isHandedIn = ({ handedInAt, hasMoved }: Work): boolean =>
  handedInAt !== undefined && !hasMoved;

export type WorkSnapshot = SnapshotFrom<typeof workMachine>;
