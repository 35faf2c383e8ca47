import { assign, setup as machineSetup } from 'xstate';
import type { Address } from '../rig/address.ts';
import type { Setup } from './board.ts';
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
  if (isAlike(before, after)) return { setup: after, refusal: undefined };
  const past = [...context.past, before].slice(-MOST_UNDO);
  return { setup: after, past, future: [], refusal: undefined };
}

function isAlike(one: Setup, other: Setup): boolean {
  const [a, b] = [Object.entries(one.board), Object.entries(other.board)];
  return (
    one.rig === other.rig &&
    a.length === b.length &&
    a.every(([address, value]) => other.board[address] === value)
  );
}

/**
 * The machine that edits a board: sets, steps and resets controls, plugs and pulls cords, loads setups,
 * undoes and redoes. It computes no level. A refused edit leaves everything as it was but the refusal.
 */
export const boardMachine = machineSetup({
  types: {
    context: {} as BoardContext,
    events: {} as BoardEvent,
    input: {} as BoardInput,
  },
  actions: {
    edit: assign(({ context }, change: Edit) => {
      const result = edit(context.setup, change, context);
      if (result.refusal) return { refusal: result.refusal };
      return remember(context, context.setup, result.setup);
    }),
    editWithinDrag: assign(({ context }, change: Edit) => {
      const result = edit(context.setup, change, context);
      if (result.refusal) return { refusal: result.refusal };
      return { setup: result.setup, refusal: undefined };
    }),
    beginDrag: assign(({ context }) => ({ dragFrom: context.setup })),
    endDrag: assign(({ context }) => ({
      ...remember(context, context.dragFrom ?? context.setup, context.setup),
      dragFrom: undefined,
    })),
    cancelDrag: assign(({ context }) => ({
      setup: context.dragFrom ?? context.setup,
      dragFrom: undefined,
      refusal: undefined,
    })),
    undo: assign(({ context }) => {
      const before = context.past.at(-1);
      if (!before) return {};
      const future = [...context.future, context.setup];
      return { setup: before, past: context.past.slice(0, -1), future, refusal: undefined };
    }),
    redo: assign(({ context }) => {
      const after = context.future.at(-1);
      if (!after) return {};
      const past = [...context.past, context.setup];
      return { setup: after, past, future: context.future.slice(0, -1), refusal: undefined };
    }),
  },
}).createMachine({
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
        'control.set': { actions: { type: 'edit', params: ({ event }) => event } },
        'control.step': { actions: { type: 'edit', params: ({ event }) => event } },
        'control.reset': { actions: { type: 'edit', params: ({ event }) => event } },
        'board.reset': { actions: { type: 'edit', params: ({ event }) => event } },
        'cord.connect': { actions: { type: 'edit', params: ({ event }) => event } },
        'cord.remove': { actions: { type: 'edit', params: ({ event }) => event } },
        'setup.load': { actions: { type: 'edit', params: ({ event }) => event } },
        undo: { actions: 'undo' },
        redo: { actions: 'redo' },
        'drag.begin': { target: 'dragging', actions: 'beginDrag' },
      },
    },
    dragging: {
      on: {
        'control.set': { actions: { type: 'editWithinDrag', params: ({ event }) => event } },
        'control.step': { actions: { type: 'editWithinDrag', params: ({ event }) => event } },
        'cord.connect': { actions: { type: 'editWithinDrag', params: ({ event }) => event } },
        'cord.remove': { actions: { type: 'editWithinDrag', params: ({ event }) => event } },
        'drag.end': { target: 'still', actions: 'endDrag' },
        'drag.cancel': { target: 'still', actions: 'cancelDrag' },
      },
    },
  },
});
