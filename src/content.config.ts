import { defineCollection } from 'astro:content';
import { file, glob } from 'astro/loaders';
import { lessonSchema, sourceSchema, wordSchema } from './course/index.ts';

/** Prose of the lessons. Their tasks are read by `src/course`. */
const lessons = defineCollection({
  loader: glob({ base: './lessons/lessons', pattern: '*.mdx' }),
  schema: lessonSchema,
});

const glossary = defineCollection({
  loader: file('lessons/glossary.yaml'),
  schema: wordSchema,
});

const sources = defineCollection({
  loader: file('lessons/sources.yaml'),
  schema: sourceSchema,
});

export const collections = { lessons, glossary, sources };
