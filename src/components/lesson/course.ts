import { type Course, readCourse } from '../../course/index.ts';

let read: Course | undefined;

/** The course, read once for the whole build. @throws InputError for a file that cannot be used. */
export function course(): Course {
  read ??= readCourse();
  return read;
}

/** One of the course's things by its id. @throws RangeError when there is none, with the page and the ids there are. */
export function find<T>(kind: string, things: ReadonlyMap<string, T>, id: string): T {
  const thing = things.get(id);
  if (thing) return thing;
  throw new RangeError(
    `Expected the id of a ${kind} (${[...things.keys()].join(', ')}), but got ${id}.`,
  );
}

/** The rig that lessons speak of when they name none. */
export const LESSON_RIG = 'net-loft';

/** The rig that readings in articles are of when they name none. */
export const ARTICLE_RIG = 'four-strips';
