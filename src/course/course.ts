import * as z from 'zod/mini';
import {
  checkDocument,
  InputError,
  parseQuiz,
  parseRig,
  parseScenario,
  parseWalkThrough,
  type Quiz,
  type Rig,
  readDocument,
  type Scenario,
  type WalkThrough,
} from '../../simulator/index.ts';
import { digestOf } from './digest.ts';

/** The folders of the course, and what lies in them. */
export const FOLDERS = {
  rig: 'lessons/rigs',
  scenario: 'lessons/scenarios',
  quiz: 'lessons/quizzes',
  'walk-through': 'lessons/walk-throughs',
} as const;
export type Kind = keyof typeof FOLDERS;

/** The file that gives the course its title and the order of its lessons. */
export const COURSE_FILE = 'lessons/course.yaml';

/** A file of the course: its path from the root of the repository, with `/`, and its text. */
export interface CourseFile {
  readonly path: string;
  readonly text: string;
}

/** Which file holds what. */
export interface Holding {
  readonly file: string;
  readonly kind: Kind;
  readonly id: string;
}

/** All that the course consists of, but for the prose of its lessons. */
export interface Course {
  readonly title: string;
  /** The parts of the course, in order, each with the slugs of its lessons. */
  readonly parts: readonly z.output<typeof partSchema>[];
  /** Slugs of the lessons of all parts, in order. */
  readonly lessons: readonly string[];
  /** Rigs that one can play on, by id, in order, each with what is special about it. */
  readonly bench: readonly z.output<typeof benchRoomSchema>[];
  /** Groups of concepts that people mistake for one another. */
  readonly confusable: readonly (readonly string[])[];
  readonly rigs: ReadonlyMap<string, Rig>;
  readonly scenarios: ReadonlyMap<string, Scenario>;
  readonly quizzes: ReadonlyMap<string, Quiz>;
  readonly walkThroughs: ReadonlyMap<string, WalkThrough>;
  readonly holdings: readonly Holding[];
  /** Names what its tasks say: a digest of the files of rigs, scenarios and quizzes. */
  readonly version: string;
}

const slug = z.string().check(z.regex(/^[a-z][a-z0-9-]*$/), z.maxLength(60));
const benchRoomSchema = z.strictObject({
  rig: slug,
  about: z.string().check(z.minLength(1), z.maxLength(500)),
});
const partSchema = z.strictObject({
  title: z.string().check(z.minLength(1), z.maxLength(80)),
  /** One sentence for the course map. */
  about: z.string().check(z.minLength(1), z.maxLength(240)),
  lessons: z.array(slug).check(z.maxLength(40)),
});
const courseSchema = z.strictObject({
  title: z.string().check(z.minLength(1), z.maxLength(120)),
  parts: z.array(partSchema).check(z.minLength(1), z.maxLength(20)),
  bench: z._default(z.array(benchRoomSchema).check(z.maxLength(20)), []),
  /** Groups of words of the glossary that people mistake for one another. */
  confusable: z._default(
    z.array(z.array(slug).check(z.minLength(2), z.maxLength(6))).check(z.maxLength(40)),
    [],
  ),
});

/** A course as far as its files can be read, and what is wrong with the others. */
export interface CourseReading {
  readonly course: Course;
  readonly errors: readonly InputError[];
}

/** Makes a course of its files. A file that cannot be read is left out and reported. */
export function parseCourse(files: readonly CourseFile[]): CourseReading {
  const errors: InputError[] = [];
  const holdings: Holding[] = [];

  const attempt = <T>(read: () => T): T | undefined => {
    try {
      return read();
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      errors.push(error);
      return undefined;
    }
  };
  const readAll = <T extends { readonly id: string }>(
    kind: Kind,
    parse: (file: string, text: string) => T,
  ): Map<string, T> => {
    const read = new Map<string, T>();
    for (const { path, text } of files) {
      if (!path.startsWith(`${FOLDERS[kind]}/`)) continue;
      const one = attempt(() => parse(path, text));
      if (!one) continue;
      holdings.push({ file: path, kind, id: one.id });
      if (!read.has(one.id)) read.set(one.id, one);
    }
    return read;
  };

  const rigs = readAll('rig', parseRig);
  const findRig = (id: string) => rigs.get(id);
  const outline = attempt(() => readOutline(files));
  const course: Course = {
    title: outline?.title ?? '',
    parts: outline?.parts ?? [],
    lessons: outline?.parts.flatMap(({ lessons }) => lessons) ?? [],
    bench: outline?.bench ?? [],
    confusable: outline?.confusable ?? [],
    rigs,
    scenarios: readAll('scenario', (file, text) => parseScenario(file, text, findRig)),
    quizzes: readAll('quiz', (file, text) => parseQuiz(file, text, findRig)),
    walkThroughs: readAll('walk-through', (file, text) => parseWalkThrough(file, text, findRig)),
    holdings,
    version: digestOf(
      taskFiles(files)
        .flatMap(({ path, text }) => [path, text])
        .join('\n'),
    ),
  };
  return { course, errors };
}

/** The files that say what is asked and how it is marked: rigs, scenarios and quizzes. */
export const taskFiles = (files: readonly CourseFile[]): CourseFile[] =>
  files.filter(({ path }) =>
    [FOLDERS.rig, FOLDERS.scenario, FOLDERS.quiz].some((folder) => path.startsWith(`${folder}/`)),
  );

function readOutline(files: readonly CourseFile[]): z.output<typeof courseSchema> {
  const file = files.find(({ path }) => path === COURSE_FILE);
  if (!file) {
    throw new InputError(COURSE_FILE, [
      {
        place: '',
        expected: 'the title of the course and the order of its lessons',
        found: 'no such file',
      },
    ]);
  }
  return checkDocument(readDocument(file.path, file.text), courseSchema);
}
