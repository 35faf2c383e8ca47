import * as z from 'zod/mini';
import { SEED } from '../../simulator/index.ts';

/** Version of the records that are written. Older ones are migrated when they are read (`stored-record.ts`). */
export const RECORD_VERSION = 2;

/** The most characters of a draft: what a setup file may have, since one may be in it. */
export const LONGEST_DRAFT = 256 * 1024;
/** What `keptDrafts` leaves. */
export const MOST_DRAFTS = 3;
/** Where counting ends. */
export const HIGHEST_COUNT = 1_000_000;

/** A moment, in milliseconds since 1970 UTC. It always comes from outside. */
export type Moment = number;

const count = z.int().check(z.gte(0), z.lte(HIGHEST_COUNT));
export const moment = z.int().check(z.gte(0), z.lte(8_640_000_000_000_000));
export const slug = z.string().check(z.regex(/^[a-z0-9][a-z0-9-]*$/), z.maxLength(140));
const share = z.number().check(z.gte(0), z.lte(1));

/** What each writer counted. A writer is a browser, from its first visit or its last reset on. */
const counts = z.record(slug, count);
export type Counts = z.output<typeof counts>;

/** Something that is not finished yet, as it stood. */
export const draftSchema = z.strictObject({
  /** What a task or the bench made of its state: JSON that only it reads. */
  text: z.string().check(z.maxLength(LONGEST_DRAFT)),
  at: moment,
  /** The tab that wrote it. */
  by: slug,
  /** Of a task that is another one with each seed: the seed. */
  seed: z.optional(z.string().check(z.regex(SEED))),
  /** Revision of the task that it belongs to; 1 on the bench. */
  revision: z.int().check(z.gte(1)),
  /** Whether the task was passed in it: nothing in it is waiting for anybody. */
  isFinished: z.boolean(),
});
export type Draft = z.output<typeof draftSchema>;

/** What came of an attempt, and when it was made. */
export const lastSchema = z.strictObject({
  at: moment,
  /** From 0 to 1. */
  score: share,
  passed: z.boolean(),
  /** Whether a solution had been shown before. */
  isAided: z.boolean(),
});

/** What is kept of a task. */
export const taskRecordSchema = z.strictObject({
  version: z.literal(RECORD_VERSION),
  id: slug,
  kind: slug,
  revision: z.int().check(z.gte(1)),
  concept: slug,
  /** The lesson, or another page, that it stands on. */
  unit: slug,
  attempts: counts,
  hints: counts,
  /** Best score of an attempt without a solution shown, from 0 to 1. */
  best: z.optional(share),
  last: z.optional(lastSchema),
  /** When it was first passed without a solution shown. */
  passedAt: z.optional(moment),
  solutionShown: z.boolean(),
  /** Newest first: two that are unfinished, and one finished before them where it is newer (`merge.ts`). */
  drafts: z.array(draftSchema).check(z.maxLength(MOST_DRAFTS)),
});
export type TaskRecord = z.output<typeof taskRecordSchema>;

/** What the course says of a task: all that a record needs to begin with. */
export const taskNameSchema = z.pick(taskRecordSchema, {
  id: true,
  kind: true,
  revision: true,
  concept: true,
  unit: true,
});
export type TaskName = z.output<typeof taskNameSchema>;

/** The record of a task of which nothing is kept yet. */
export const newRecord = ({ id, kind, revision, concept, unit }: TaskName): TaskRecord => ({
  version: RECORD_VERSION,
  id,
  kind,
  revision,
  concept,
  unit,
  attempts: {},
  hints: {},
  solutionShown: false,
  drafts: [],
});

/** How many all writers counted together. */
export const total = (all: Counts): number => Object.values(all).reduce((sum, one) => sum + one, 0);
