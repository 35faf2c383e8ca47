import { assign, createMachine, type SnapshotFrom } from 'xstate';
import type { AssignedTask, AssignmentItem } from './assignment.ts';
import { MOST_ITEMS } from './assignment.ts';
import { type AssignmentDraft, freeId } from './assignment-draft.ts';
import type { OwnDraft } from './own-draft.ts';
import { type OwnEdit, ownEdited } from './own-edit.ts';

/** How many steps can be undone. */
export const MOST_UNDO = 100;

export interface AssignmentContext {
  readonly draft: AssignmentDraft;
  /** Drafts before each step, the latest last. Words that are typed into one field are one step. */
  readonly past: readonly AssignmentDraft[];
  /** What the last step changed, as long as the next one of the kind goes on with it. */
  readonly typing: string | undefined;
}

export interface AssignmentInput {
  readonly draft: AssignmentDraft;
}

/** All that is said of an assignment besides its items. */
export type AssignmentHead = Omit<AssignmentDraft, 'id' | 'items' | 'own'>;

export type AssignmentEvent =
  | { readonly type: 'head.set'; readonly head: Partial<AssignmentHead> }
  /** Lets attempts be without end. */
  | { readonly type: 'attempts.free' }
  /** Puts a task at the end, under the wanted id or one like it. */
  | { readonly type: 'item.add'; readonly wanted: string; readonly task: AssignedTask }
  | { readonly type: 'item.remove'; readonly id: string }
  /** Moves an item by so many places, as far as the list goes. */
  | { readonly type: 'item.move'; readonly id: string; readonly by: number }
  | { readonly type: 'item.weigh'; readonly id: string; readonly weight: number }
  | { readonly type: 'item.task'; readonly id: string; readonly task: AssignedTask }
  /** Makes a scenario, or goes on with one. */
  | { readonly type: 'own.begin'; readonly own: OwnDraft }
  | { readonly type: 'own.edit'; readonly edit: OwnEdit }
  /** Puts the scenario that is being made into the assignment. */
  | { readonly type: 'own.finish'; readonly task: AssignedTask }
  | { readonly type: 'own.drop' }
  /** Another draft instead; undo leads back. */
  | { readonly type: 'draft.open'; readonly draft: AssignmentDraft }
  /** A draft that was kept: nothing to undo. */
  | { readonly type: 'draft.take-up'; readonly draft: AssignmentDraft }
  | { readonly type: 'undo' };

type Changed = Partial<AssignmentContext>;

function changed(context: AssignmentContext, draft: AssignmentDraft, typing?: string): Changed {
  if (draft === context.draft) return {};
  const goesOn = typing !== undefined && typing === context.typing;
  const past = goesOn ? context.past : [...context.past, context.draft].slice(-MOST_UNDO);
  return { draft, past, typing };
}

const withItems = (
  context: AssignmentContext,
  change: (items: readonly AssignmentItem[]) => AssignmentItem[],
  typing?: string,
): Changed => changed(context, { ...context.draft, items: change(context.draft.items) }, typing);

const withItem = (
  context: AssignmentContext,
  id: string,
  change: Partial<AssignmentItem>,
  typing?: string,
): Changed =>
  withItems(
    context,
    (items) => items.map((item) => (item.id === id ? { ...item, ...change } : item)),
    typing,
  );

const added = (context: AssignmentContext, wanted: string, task: AssignedTask): Changed =>
  withItems(context, (items) => [...items, { id: freeId(items, wanted), weight: 1, task }]);

function moved(context: AssignmentContext, id: string, by: number): Changed {
  const from = context.draft.items.findIndex((item) => item.id === id);
  const item = context.draft.items[from];
  if (!item) return {};
  const to = Math.min(Math.max(from + by, 0), context.draft.items.length - 1);
  if (to === from) return {};
  return withItems(context, (items) => items.toSpliced(from, 1).toSpliced(to, 0, item));
}

function edited(context: AssignmentContext, edit: OwnEdit): Changed {
  const { own } = context.draft;
  if (!own) return {};
  return changed(context, { ...context.draft, own: ownEdited(own, edit) }, typingOf(edit));
}

/** Names the field that is typed into. */
function typingOf(edit: OwnEdit): string | undefined {
  if (edit.type === 'words.set') return `own ${Object.keys(edit.words).join()}`;
  if (edit.type === 'board.set') return `own ${edit.of}`;
  if (edit.type === 'mistake.name') return `own mistake ${edit.mistake}`;
  return edit.type === 'check.weigh' ? `own weight of ${edit.check}` : undefined;
}

function finished(context: AssignmentContext, task: AssignedTask): Changed {
  const { own, ...draft } = context.draft;
  if (!own) return {};
  const { items } = draft;
  const after = items.some(({ id }) => id === own.item)
    ? items.map((item) => (item.id === own.item ? { ...item, task } : item))
    : [...items, { id: freeId(items, own.id), weight: 1, task }];
  return changed(context, { ...draft, items: after });
}

function undone({ past }: AssignmentContext): Changed {
  const before = past.at(-1);
  return before ? { draft: before, past: past.slice(0, -1), typing: undefined } : {};
}

const hasOwn = ({ context }: { context: AssignmentContext }): boolean =>
  context.draft.own !== undefined;
const hasRoom = ({ context }: { context: AssignmentContext }): boolean =>
  context.draft.items.length < MOST_ITEMS;

/**
 * The machine by which an instructor makes an assignment: `choosing` its items, or `making` a scenario for it. Each
 * step can be undone, so that nothing is lost by removing an item or opening another file.
 */
export const assignmentMachine = createMachine({
  types: {
    context: {} as AssignmentContext,
    events: {} as AssignmentEvent,
    input: {} as AssignmentInput,
  },
  id: 'assignment',
  context: ({ input }) => ({ draft: input.draft, past: [], typing: undefined }),
  initial: 'choosing',
  on: {
    'head.set': {
      actions: assign(({ context, event: { head } }) =>
        changed(context, { ...context.draft, ...head }, Object.keys(head).join()),
      ),
    },
    'attempts.free': {
      actions: assign(({ context }) => {
        const { attempts, ...draft } = context.draft;
        return attempts === undefined ? {} : changed(context, draft);
      }),
    },
    'item.add': {
      guard: hasRoom,
      actions: assign(({ context, event }) => added(context, event.wanted, event.task)),
    },
    'item.remove': {
      actions: assign(({ context, event }) =>
        withItems(context, (items) => items.filter(({ id }) => id !== event.id)),
      ),
    },
    'item.move': { actions: assign(({ context, event }) => moved(context, event.id, event.by)) },
    'item.weigh': {
      actions: assign(({ context, event: { id, weight } }) =>
        withItem(context, id, { weight }, `weight of ${id}`),
      ),
    },
    'item.task': {
      actions: assign(({ context, event: { id, task } }) =>
        withItem(context, id, { task }, `task of ${id}`),
      ),
    },
    'draft.open': { actions: assign(({ context, event }) => changed(context, event.draft)) },
    'draft.take-up': {
      actions: assign(({ event }) => ({ draft: event.draft, past: [], typing: undefined })),
    },
    undo: { actions: assign(({ context }) => undone(context)) },
  },
  states: {
    choosing: {
      always: { guard: hasOwn, target: 'making' },
      on: {
        'own.begin': {
          actions: assign(({ context, event }) =>
            changed(context, { ...context.draft, own: event.own }),
          ),
        },
      },
    },
    making: {
      always: { guard: (now) => !hasOwn(now), target: 'choosing' },
      on: {
        'own.edit': { actions: assign(({ context, event }) => edited(context, event.edit)) },
        'own.finish': {
          guard: hasRoom,
          actions: assign(({ context, event }) => finished(context, event.task)),
        },
        'own.drop': {
          actions: assign(({ context }) => {
            const { own: _, ...draft } = context.draft;
            return changed(context, draft);
          }),
        },
      },
    },
  },
});

export type AssignmentSnapshot = SnapshotFrom<typeof assignmentMachine>;
