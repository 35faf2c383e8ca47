import * as z from 'zod/mini';
import {
  checkDocument,
  DRILL_CONCEPTS,
  DRILL_LEVELS,
  InputError,
  readDocument,
  rigSchema,
  scenarioSchema,
} from '../../simulator/index.ts';
import { digestOf } from '../course/digest.ts';
import { canonicalText } from './canonical-text.ts';
import { line, revision, seed, slug } from './fields.ts';
import { type FileFormat, refuseOtherFormat } from './file-format.ts';

const ASSIGNMENT = {
  format: 'tap-and-sum/assignment',
  version: 1,
  name: 'an assignment',
} as const satisfies FileFormat;

/** Which drill each learner gets: all the same one, or one that follows from their code. */
const seedPolicySchema = z.discriminatedUnion('policy', [
  z.strictObject({ policy: z.literal('same'), seed }),
  z.strictObject({ policy: z.literal('each') }),
]);

/** Where a task comes from. A revision is the one that the instructor saw. */
const assignedTaskSchema = z.discriminatedUnion('kind', [
  /** A scenario of the course. */
  z.strictObject({ kind: z.literal('scenario'), id: slug, revision }),
  /** A question of a quiz of the course. */
  z.strictObject({ kind: z.literal('question'), quiz: slug, id: slug, revision }),
  z.strictObject({
    kind: z.literal('drill'),
    concept: z.enum(DRILL_CONCEPTS),
    level: z.literal(DRILL_LEVELS),
    seeds: seedPolicySchema,
  }),
  /** A scenario of the instructor, as its file has it; and its rig, where the course has none of that id. */
  z.strictObject({
    kind: z.literal('own'),
    scenario: scenarioSchema,
    rig: z.optional(rigSchema),
  }),
]);

/** The most items of an assignment. */
export const MOST_ITEMS = 60;

/** A task with its place in an assignment. */
export const assignedItemSchema = z.strictObject({
  id: slug,
  weight: z._default(z.int().check(z.gte(1), z.lte(100)), 1),
  task: assignedTaskSchema,
});

/** The format of an assignment. */
export const assignmentSchema = z.strictObject({
  format: z.literal(ASSIGNMENT.format),
  version: z.literal(ASSIGNMENT.version),
  /** Stays the same when the assignment is corrected. */
  id: slug,
  title: line(120),
  /** What the instructor has to say to the class. */
  note: z.optional(line(4000)),
  /** The day by which it is wanted, `2026-12-01`. It is said, and nothing else. */
  due: z.optional(z.string().check(z.regex(/^\d{4}-\d\d-\d\d$/))),
  /** From how much of all points on it is passed, in percent. */
  passPercent: z.int().check(z.gte(0), z.lte(100)),
  hints: z._default(z.boolean(), true),
  /** How often an answer to an item may be checked; without end when left out. */
  attempts: z.optional(z.int().check(z.gte(1), z.lte(99))),
  /** When a solution is shown to a learner. */
  solutions: z._default(z.enum(['never', 'after-pass', 'after-hand-in']), 'after-hand-in'),
  /** Whether learners meet the items as they are listed, or each in an order of their own. */
  order: z._default(z.enum(['listed', 'shuffled']), 'listed'),
  items: z.array(assignedItemSchema).check(z.minLength(1), z.maxLength(MOST_ITEMS)),
});

/** What an instructor asks of a class. */
export type Assignment = z.output<typeof assignmentSchema>;
export type AssignmentItem = Assignment['items'][number];
export type AssignedTask = AssignmentItem['task'];

/**
 * Reads an assignment, JSON or YAML. Whether its tasks exist is seen when they are given out (`given-task.ts`).
 *
 * @param file its name, for messages. @throws InputError with every problem.
 */
export function parseAssignment(file: string, text: string): Assignment {
  const document = readDocument(file, text);
  refuseOtherFormat(document, ASSIGNMENT);
  const assignment = checkDocument(document, assignmentSchema);
  const twice = assignment.items.findIndex(
    ({ id }, index) => assignment.items.findIndex((other) => other.id === id) < index,
  );
  if (twice < 0) return assignment;
  const found = `"${assignment.items[twice]?.id}" twice`;
  throw new InputError(file, [
    { place: `items[${twice}].id`, expected: 'an id of its own', found },
  ]);
}

/** An assignment as the text of a file; {@link parseAssignment} gives the same back. */
export const assignmentText = (assignment: Assignment): string =>
  `${JSON.stringify(assignment, null, 1)}\n`;

/** Names what an assignment says, whatever the order in which its file says it. */
export const assignmentDigest = (assignment: Assignment): string =>
  digestOf(canonicalText(assignment));
