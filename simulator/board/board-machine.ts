import { assign, createMachine } from 'xstate';
import type { Address } from '../rig/address.ts';
import { type Setup, standAlike } from './board.ts';
import { type Edit, edit, type Refusal } from './edit.ts';

/** How many edits can be undone. */
export const MOST_UNDO = 200;

export interface BoardContext {
  readonly setup: Setup;
  /** Setups before each edit, the latest last. */
  readonly past: readonly Setup[];
  /** Setups that were undone, the next to be redone last. */
  readonly future: readonly Setup[];
  readonly locked: ReadonlySet<Address>;
  /** The setup that the machine began with: where a reset of the board leads. */
  readonly start: Setup;
  /** Why the last edit was refused; nothing when it was carried out. */
  readonly refusal: Refusal | undefined;
  /** The setup when the drag began. */
  readonly dragFrom: Setup | undefined;
}

export interface BoardInput {
  readonly setup: Setup;
  readonly locked?: ReadonlySet<Address>;
}

export type BoardEvent =
  | Edit
  /** From here to `drag.end` all edits count as one. `drag.cancel` takes them back. */
  | { readonly type: 'drag.begin' }
  | { readonly type: 'drag.end' }
  | { readonly type: 'drag.cancel' }
  | { readonly type: 'undo' }
  | { readonly type: 'redo' };

/** The context after a setup was reached by an edit that can be undone. An edit that changes nothing counts for nothing. */
function remember(context: BoardContext, before: Setup, after: Setup): Partial<BoardContext> {
  if (standAlike(before, after)) return { setup: after, refusal: undefined };
  const past = [...context.past, before].slice(-MOST_UNDO);
  return { setup: after, past, future: [], refusal: undefined };
}

/** The context after an edit; after one that was refused, only the refusal is new. */
function edited(context: BoardContext, change: Edit): Partial<BoardContext> {
  const result = edit(context.setup, change, context);
  if (result.refusal) return { refusal: result.refusal };
  return remember(context, context.setup, result.setup);
}

/** The context after an edit in a drag, which is remembered when the drag ends. */
function dragged(context: BoardContext, change: Edit): Partial<BoardContext> {
  const result = edit(context.setup, change, context);
  if (result.refusal) return { refusal: result.refusal };
  return { setup: result.setup, refusal: undefined };
}

const undone = ({ past, future, setup }: BoardContext): Partial<BoardContext> => {
  const before = past.at(-1);
  if (!before) return {};
  return { setup: before, past: past.slice(0, -1), future: [...future, setup], refusal: undefined };
};

const redone = ({ past, future, setup }: BoardContext): Partial<BoardContext> => {
  const after = future.at(-1);
  if (!after) return {};
  return { setup: after, past: [...past, setup], future: future.slice(0, -1), refusal: undefined };
};

/**
 * The machine that edits a board: sets, steps and resets controls, plugs and pulls cords, loads setups,
 * undoes and redoes. It computes no level. A refused edit leaves everything as it was but the refusal.
 */
export const boardMachine = createMachine({
  types: {
    context: {} as BoardContext,
    events: {} as BoardEvent,
    input: {} as BoardInput,
  },
  id: 'board',
  context: ({ input }) => ({
    setup: input.setup,
    locked: input.locked ?? new Set(),
    start: input.setup,
    past: [],
    future: [],
    refusal: undefined,
    dragFrom: undefined,
  }),
  initial: 'still',
  states: {
    still: {
      on: {
        'control.set': { actions: assign(({ context, event }) => edited(context, event)) },
        'control.step': { actions: assign(({ context, event }) => edited(context, event)) },
        'control.reset': { actions: assign(({ context, event }) => edited(context, event)) },
        'board.reset': { actions: assign(({ context, event }) => edited(context, event)) },
        'cord.connect': { actions: assign(({ context, event }) => edited(context, event)) },
        'cord.remove': { actions: assign(({ context, event }) => edited(context, event)) },
        'setup.load': { actions: assign(({ context, event }) => edited(context, event)) },
        undo: { actions: assign(({ context }) => undone(context)) },
        redo: { actions: assign(({ context }) => redone(context)) },
        'drag.begin': {
          target: 'dragging',
          actions: assign(({ context }) => ({ dragFrom: context.setup })),
        },
      },
    },
    dragging: {
      on: {
        'control.set': { actions: assign(({ context, event }) => dragged(context, event)) },
        'control.step': { actions: assign(({ context, event }) => dragged(context, event)) },
        'cord.connect': { actions: assign(({ context, event }) => dragged(context, event)) },
        'cord.remove': { actions: assign(({ context, event }) => dragged(context, event)) },
        'drag.end': {
          target: 'still',
          actions: assign(({ context }) => ({
            ...remember(context, context.dragFrom ?? context.setup, context.setup),
            dragFrom: undefined,
          })),
        },
        'drag.cancel': {
          target: 'still',
          actions: assign(({ context }) => ({
            setup: context.dragFrom ?? context.setup,
            dragFrom: undefined,
            refusal: undefined,
          })),
        },
      },
    },
  },
});
