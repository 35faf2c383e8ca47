import { readFileSync } from 'node:fs';
import * as z from 'zod/mini';
import { checkDocument, readDocument } from '../../simulator/index.ts';
import {
  type Holding,
  type Kind,
  parseCourse,
  readCourseFiles,
  sourceSchema,
  wordSchema,
} from '../../src/course/index.ts';
import { readLessons } from './lesson.ts';

/** The course of this repository as it lies on disk, read once for each file of tests. */
export const { course, errors } = parseCourse(readCourseFiles('.'));
export const lessons = readLessons('lessons/lessons');
export const articles = readLessons('lessons/articles');

const readList = <Schema extends z.ZodMiniType>(file: string, schema: Schema) =>
  checkDocument(readDocument(file, readFileSync(file, 'utf8')), z.array(schema));

export const GLOSSARY = 'lessons/glossary.yaml';
export const SOURCES = 'lessons/sources.yaml';
export const glossary = readList(GLOSSARY, wordSchema);
export const sources = readList(SOURCES, sourceSchema);

/** The files of the course that hold tasks of a kind, each with the task. */
export function tasksIn<T>(
  kind: Kind,
  tasks: ReadonlyMap<string, T>,
): { readonly file: string; readonly task: T }[] {
  return course.holdings.flatMap((holding: Holding) => {
    const task = holding.kind === kind ? tasks.get(holding.id) : undefined;
    return task === undefined ? [] : [{ file: holding.file, task }];
  });
}

/** Whatever stands more than once in a list. */
export const repeated = (list: readonly string[]): string[] =>
  list.filter((one, index) => list.indexOf(one) !== index);
