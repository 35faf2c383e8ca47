import * as z from 'zod/mini';

/** What the site reads with Astro's collections: the head of a lesson, the glossary, the sources. */

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
});
export type LessonHead = z.output<typeof lessonSchema>;

/** A word of the glossary. */
export const wordSchema = z.strictObject({
  id,
  term: line(60),
  meaning: line(400),
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
