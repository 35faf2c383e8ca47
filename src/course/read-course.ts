import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { COURSE_FILE, type Course, type CourseFile, FOLDERS, parseCourse } from './course.ts';

/** The files of the course in a repository, in the order of their names. A folder may be missing. */
export function readCourseFiles(root: string): CourseFile[] {
  const inFolders = Object.values(FOLDERS).flatMap((folder) => {
    const path = join(root, folder);
    if (!existsSync(path)) return [];
    const names = readdirSync(path).filter((name) => name.endsWith('.yaml'));
    return names.sort().map((name) => `${folder}/${name}`);
  });
  return [COURSE_FILE, ...inFolders]
    .filter((path) => existsSync(join(root, path)))
    .map((path) => ({ path, text: readFileSync(join(root, path), 'utf8') }));
}

/**
 * Reads the course from disk. For the build, the command line and tests; never in a page.
 *
 * @param root the repository's folder. @throws InputError for the first file that cannot be used.
 */
export function readCourse(root: string = process.cwd()): Course {
  const { course, errors } = parseCourse(readCourseFiles(root));
  const [error] = errors;
  if (error) throw error;
  return course;
}
