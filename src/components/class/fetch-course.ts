import { type Course, type CourseFile, parseCourse } from '../../course/course.ts';

/** Where the site has the files that `course-tasks.json.ts` writes. */
const ADDRESS = '/course-tasks.json';

let coming: Promise<Course> | undefined;

/** The course with all of its tasks, fetched once. Rejects when it cannot be fetched; the next who asks tries again. */
export function fetchCourse(): Promise<Course> {
  coming ??= readCourse().catch((error: unknown) => {
    coming = undefined;
    throw error;
  });
  return coming;
}

async function readCourse(): Promise<Course> {
  const response = await fetch(ADDRESS);
  if (!response.ok) throw new Error(`The tasks of the course: ${response.status}.`);
  const { course, errors } = parseCourse((await response.json()) as CourseFile[]);
  const [error] = errors;
  if (error) throw error;
  return course;
}
