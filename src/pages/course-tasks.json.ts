import type { APIRoute } from 'astro';
import { FOLDERS, readCourseFiles } from '../course/index.ts';

/** The files that tasks are given out and marked by, as they are in the repository: `CourseFile[]`. */
export const GET: APIRoute = () => {
  const files = readCourseFiles(process.cwd()).filter(
    ({ path }) => !path.startsWith(`${FOLDERS['walk-through']}/`),
  );
  return new Response(JSON.stringify(files), { headers: { 'content-type': 'application/json' } });
};
