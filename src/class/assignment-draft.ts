import * as z from 'zod/mini';
import {
  type Assignment,
  type AssignmentItem,
  assignedItemSchema,
  MOST_ITEMS,
  parseAssignment,
} from './assignment.ts';
import { slug } from './fields.ts';
import { ownDraftSchema } from './own-draft.ts';

const text = (longest: number) => z.string().check(z.maxLength(longest));

/** An assignment while it is being made: what an assignment says, with fields that are still empty. */
export const assignmentDraftSchema = z.strictObject({
  id: slug,
  title: text(120),
  note: text(4000),
  /** As an assignment has it, or empty. */
  due: text(10),
  passPercent: z.int().check(z.gte(0), z.lte(100)),
  hints: z.boolean(),
  /** Without end when left out. */
  attempts: z.optional(z.int().check(z.gte(1), z.lte(99))),
  solutions: z.enum(['never', 'after-pass', 'after-hand-in']),
  order: z.enum(['listed', 'shuffled']),
  items: z.array(assignedItemSchema).check(z.maxLength(MOST_ITEMS)),
  /** A scenario of the instructor that is not in the assignment yet, or is being changed. */
  own: z.optional(ownDraftSchema),
});
export type AssignmentDraft = z.output<typeof assignmentDraftSchema>;

/** An assignment that nobody has said anything about yet. @param id one that nobody else has. */
export const newDraft = (id: string): AssignmentDraft => ({
  id,
  title: '',
  note: '',
  due: '',
  passPercent: 60,
  hints: true,
  solutions: 'after-hand-in',
  order: 'listed',
  items: [],
});

/** The draft of an assignment that was opened; {@link assignmentOf} gives the same back. */
export function draftOf(assignment: Assignment): AssignmentDraft {
  const { format: _, version: __, note = '', due = '', ...said } = assignment;
  return { ...said, note, due };
}

/** The assignment that a draft comes to. @throws InputError with what it still lacks. */
export function assignmentOf(draft: AssignmentDraft): Assignment {
  const { own: _, note, due, title, ...said } = draft;
  const data = {
    format: 'tap-and-sum/assignment',
    version: 1,
    ...said,
    title: title.trim(),
    ...(note.trim() === '' ? {} : { note: note.trim() }),
    ...(due === '' ? {} : { due }),
  };
  return parseAssignment('The assignment', JSON.stringify(data));
}

/** An id for an item that no other item has: the wanted one, or the next of that name. */
export function freeId(items: readonly AssignmentItem[], wanted: string): string {
  const base = wanted.slice(0, 56);
  const taken = new Set(items.map(({ id }) => id));
  if (!taken.has(base)) return base;
  for (let number = 2; ; number++) {
    const id = `${base}-${number}`;
    if (!taken.has(id)) return id;
  }
}
