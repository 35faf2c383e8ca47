import * as z from 'zod/mini';
import { fileBoardSchema } from '../../simulator/index.ts';

/** What the site reads with Astro's collections: heads of lessons and articles, glossary, sources, agreement. */

const id = z.string().check(z.regex(/^[a-z][a-z0-9-]*$/), z.maxLength(60));
const line = (longest: number) => z.string().check(z.minLength(1), z.maxLength(longest));

/** The head of a lesson, between its two lines of hyphens. */
export const lessonSchema = z.strictObject({
  title: line(80),
  /** What one will be able to do: one verb. */
  aim: line(160),
  /** One sentence for the card. */
  summary: line(240),
  minutes: z.int().check(z.gte(5), z.lte(90)),
  /** Words of the glossary that it teaches. */
  concepts: z.array(id).check(z.minLength(1), z.maxLength(8)),
  /** Slugs of lessons that should come first; each stands earlier in the course. */
  needs: z._default(z.array(id).check(z.maxLength(6)), []),
});
export type LessonHead = z.output<typeof lessonSchema>;

/** A still drawing of a part of a desk, as some controls stand. */
const pictureSchema = z.strictObject({
  /** Id of the rig; the one of the lessons when left out. */
  rig: z.optional(id),
  caption: line(240),
  /** The track whose way is lit. */
  follow: line(160),
  /** Owners that are drawn. */
  show: z.array(line(160)).check(z.minLength(1), z.maxLength(60)),
  board: z._default(fileBoardSchema, {}),
});

/** A word of the glossary. */
export const wordSchema = z.strictObject({
  id,
  term: line(60),
  meaning: line(400),
  /** What it looks like on a desk, where looking says more. */
  picture: z.optional(pictureSchema),
  /** Ids of words to read next. */
  see: z._default(z.array(id).check(z.maxLength(8)), []),
});

/** Where a fact of the course comes from. */
export const sourceSchema = z.strictObject({
  id,
  title: line(240),
  about: line(400),
  kind: z.enum(['standard', 'book', 'paper', 'practice']),
});

/** The head of an article: prose with desks that is no lesson. */
export const articleSchema = z.strictObject({
  title: line(80),
  /** One sentence for search results. */
  summary: line(240),
});

const count = z.int().check(z.gte(0));

/** What a comparison of random rigs with another engine came to. Written by the runs in `tests/parity`. */
export const agreementSchema = z.strictObject({
  engine: line(120),
  /** What was compared, and on which rigs. */
  compares: line(160),
  rigs: count,
  /** How many of the rigs have loops. */
  looped: count,
  /** Rigs left out, since the other engine could not tell whether a loop in them is stable. */
  undecided: count,
  comparisons: count,
  /** No comparison was further off, in dB. */
  worstDb: z.number().check(z.gte(0)),
  /** By how much both may differ, in dB. */
  allowedDb: z.number().check(z.gt(0)),
});
export type Agreement = z.output<typeof agreementSchema>;
