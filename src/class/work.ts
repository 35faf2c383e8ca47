import * as z from 'zod/mini';
import { answerSchema } from '../../simulator/index.ts';
import { MOST_ITEMS } from './assignment.ts';
import { count, moment, revision, seed, share, slug, span } from './fields.ts';
import {
  interactionSchema,
  logEventSchema,
  MOST_EVENTS,
  MOST_INTERACTIONS,
} from './interaction.ts';
import { learnerCodeSchema } from './learner-code.ts';

const workItemSchema = z.strictObject({
  id: slug,
  revision: z.optional(revision),
  /** Of the drill that was given. */
  seed: z.optional(seed),
  /** The answer as it stands, checked or not. */
  answer: z.optional(answerSchema),
  hintsShown: z._default(z.int().check(z.gte(0), z.lte(20)), 0),
  isAided: z._default(z.boolean(), false),
  hasPassed: z._default(z.boolean(), false),
  /** The best answer of all that were checked, the newest of those alike, and what it came to. */
  best: z.optional(z.strictObject({ answer: answerSchema, score: share })),
  attempts: z._default(count, 0),
  hints: z._default(count, 0),
  spentMs: z._default(span, 0),
  interactions: z._default(z.array(interactionSchema).check(z.maxLength(MOST_INTERACTIONS)), []),
});

/** What a learner has done of an assignment, as their browser keeps it. */
export const workSchema = z.strictObject({
  /** Id of the assignment. */
  assignment: slug,
  learner: learnerCodeSchema,
  /** Empty where the learner gives none. */
  name: z.string().check(z.maxLength(120)),
  startedAt: moment,
  items: z.array(workItemSchema).check(z.maxLength(MOST_ITEMS)),
  events: z._default(z.array(logEventSchema).check(z.maxLength(MOST_EVENTS)), []),
  /** When it was last handed in; whether something was done since. */
  handedInAt: z.optional(moment),
  hasMoved: z._default(z.boolean(), false),
  /** When it was closed, to see the solutions: from then on nothing in it changes. */
  closedAt: z.optional(moment),
});
export type Work = z.output<typeof workSchema>;
export type WorkItem = Work['items'][number];

/** Work that has just been begun. */
export const newWork = (assignment: string, learner: string, startedAt: number): Work => ({
  assignment,
  learner,
  name: '',
  startedAt,
  items: [],
  events: [],
  hasMoved: false,
});

const NOTHING_DONE = {
  hintsShown: 0,
  isAided: false,
  hasPassed: false,
  attempts: 0,
  hints: 0,
  spentMs: 0,
  interactions: [],
} as const;

/** What was done of an item; as before anybody touched it where there is nothing. */
export const workOn = (work: Work, id: string): WorkItem =>
  work.items.find((item) => item.id === id) ?? { id, ...NOTHING_DONE, interactions: [] };

/** The work with an item changed. */
export function withWorkOn(work: Work, id: string, change: (item: WorkItem) => WorkItem): Work {
  const item = change(workOn(work, id));
  const isThere = work.items.some((one) => one.id === id);
  return {
    ...work,
    items: isThere ? work.items.map((one) => (one.id === id ? item : one)) : [...work.items, item],
  };
}

/** Whether another answer to an item may be checked. @param most attempts that are allowed; without end when left out. */
export const hasAttemptsLeft = ({ attempts }: WorkItem, most: number | undefined): boolean =>
  most === undefined || attempts < most;
