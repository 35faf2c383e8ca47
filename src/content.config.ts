import { defineCollection, z } from 'astro:content';
import { file, glob } from 'astro/loaders';

/** Prose of the lessons. Their tasks are read by `src/course`. */
const lessons = defineCollection({
  loader: glob({ base: './lessons/lessons', pattern: '*.mdx' }),
  schema: z.strictObject({
    title: z.string().max(80),
    /** What one will be able to do: one verb. */
    aim: z.string().max(160),
    /** One sentence for the card. */
    summary: z.string().max(240),
    minutes: z.number().int().min(5).max(90),
    concepts: z.array(z.string()).min(1).max(8),
  }),
});

const glossary = defineCollection({
  loader: file('lessons/glossary.yaml'),
  schema: z.strictObject({
    id: z.string(),
    term: z.string(),
    meaning: z.string(),
    see: z.array(z.string()).default([]),
  }),
});

const sources = defineCollection({
  loader: file('lessons/sources.yaml'),
  schema: z.strictObject({
    id: z.string(),
    title: z.string(),
    about: z.string(),
    kind: z.enum(['standard', 'book', 'paper', 'practice']),
  }),
});

export const collections = { lessons, glossary, sources };
