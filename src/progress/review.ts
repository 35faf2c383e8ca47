import * as z from 'zod/mini';
import { type Moment, moment, RECORD_VERSION, slug } from './task-record.ts';

/**
 * After how many days a concept comes back, by its stage. Spaced beats massed retrieval, and intervals that
 * expand are no better than uniform ones (Latimier et al. 2021): so a plain queue, and no more.
 */
export const REVIEW_DAYS = [1, 3, 7, 21] as const;
/** The stage of a concept that came back for the last time. */
export const LAST_STAGE = REVIEW_DAYS.length;
const DAY = 24 * 60 * 60 * 1000;

/** What is kept of a concept: when it comes back. One idea comes back once, whichever task asks for it. */
export const reviewSchema = z.strictObject({
  version: z.literal(RECORD_VERSION),
  concept: slug,
  /** How often it came back and was passed. */
  stage: z.int().check(z.gte(0), z.lte(LAST_STAGE)),
  /** When it is due; absent when it came back for the last time. */
  dueAt: z.optional(moment),
  /** Whether it failed when it came back, and has not been passed when due since. */
  hasLapsed: z.boolean(),
  /** When this was last changed. */
  at: moment,
});
export type Review = z.output<typeof reviewSchema>;

/** An attempt, as far as it matters to when its concept comes back. */
export interface ReviewedAttempt {
  readonly concept: string;
  readonly at: Moment;
  readonly passed: boolean;
  /** Whether a solution had been shown. */
  readonly isAided: boolean;
  /** Whether this very task had been passed before: nobody forgets what he never could. */
  readonly wasPassed: boolean;
}

export const isDue = (review: Review | undefined, now: Moment): boolean =>
  review?.dueAt !== undefined && review.dueAt <= now;

/**
 * When a concept comes back after an attempt at one of its tasks.
 *
 * The first pass, aided or not, brings it back in a day. From there on only an attempt while it is due
 * counts: a pass without aid moves it from 1 to 3, 7 and 21 days and then to rest; one that needed the
 * solution, or a failure at a task that had been passed, sends it back to a day. All else is practice.
 *
 * @returns the same review when nothing changes; nothing when the concept is not in review yet.
 */
export function afterAttempt(
  review: Review | undefined,
  { concept, at, passed, isAided, wasPassed }: ReviewedAttempt,
): Review | undefined {
  const head = { version: RECORD_VERSION, concept, at } as const;
  if (!review)
    return passed ? { ...head, stage: 0, dueAt: at + dayOf(0), hasLapsed: isAided } : review;
  if (!isDue(review, at)) return review;
  if (passed && !isAided) {
    const stage = review.stage + 1;
    if (stage === LAST_STAGE) return { ...head, stage, hasLapsed: false };
    return { ...head, stage, dueAt: at + dayOf(stage), hasLapsed: false };
  }
  if (!passed && !wasPassed) return review;
  return { ...head, stage: 0, dueAt: at + dayOf(0), hasLapsed: true };
}

const dayOf = (stage: number): number => (REVIEW_DAYS[stage] ?? 0) * DAY;
