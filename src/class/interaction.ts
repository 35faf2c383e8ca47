import * as z from 'zod/mini';
import { count, moment, share, slug, span } from './fields.ts';

/** An id as SCORM and xAPI take it. */
const interactionId = z.string().check(z.regex(/^[A-Za-z0-9_-]+$/), z.maxLength(60));
const words = (longest: number) => z.string().check(z.maxLength(longest));

/** One answer that was checked. It maps onto the interactions of SCORM 1.2, SCORM 2004 and xAPI. */
export const interactionSchema = z.strictObject({
  id: interactionId,
  /** Kind of the task. */
  kind: slug,
  started: moment,
  answered: moment,
  latencyMs: span,
  /** Which attempt it was, from 1. */
  attempt: count,
  /** Hints shown until then. */
  hints: count,
  weight: z.number().check(z.gte(0), z.lte(1000)),
  /** What was answered, as text. */
  response: words(4000),
  checks: z
    .array(
      z.strictObject({
        id: interactionId,
        pass: z.boolean(),
        expected: words(400),
        observed: words(400),
      }),
    )
    .check(z.maxLength(40)),
  score: share,
});
export type Interaction = z.output<typeof interactionSchema>;

/** One thing that was done, as the log has it. */
export const logEventSchema = z.strictObject({
  /** Milliseconds since the work began. */
  at: span,
  item: slug,
  /** What was done: `control.set`. */
  what: z.string().check(z.regex(/^[a-z]+(\.[a-z]+)*$/), z.maxLength(40)),
  /** To what: the address of a control. */
  of: z.optional(words(160)),
  to: z.optional(z.union([z.number(), z.boolean(), words(160)])),
});
export type LogEvent = z.output<typeof logEventSchema>;

/** The most events of a log; what is done after that is not noted. */
export const MOST_EVENTS = 1500;
export const MOST_INTERACTIONS = 40;
