import { defineCollection } from 'astro:content';
import { file, glob } from 'astro/loaders';
import {
  agreementSchema,
  articleSchema,
  lessonSchema,
  sourceSchema,
  wordSchema,
} from './course/index.ts';

/** Prose of the lessons. Their tasks are read by `src/course`. */
const lessons = defineCollection({
  loader: glob({ base: './lessons/lessons', pattern: '*.mdx' }),
  schema: lessonSchema,
});

/** Prose with desks that is no lesson. */
const articles = defineCollection({
  loader: glob({ base: './lessons/articles', pattern: '*.mdx' }),
  schema: articleSchema,
});

const glossary = defineCollection({
  loader: file('lessons/glossary.yaml'),
  schema: wordSchema,
});

const sources = defineCollection({
  loader: file('lessons/sources.yaml'),
  schema: sourceSchema,
});

/** What the comparisons with other engines came to; the runs write it. */
const agreement = defineCollection({
  loader: glob({ base: './lessons/agreement', pattern: '*.yaml' }),
  schema: agreementSchema,
});

export const collections = { lessons, articles, glossary, sources, agreement };
