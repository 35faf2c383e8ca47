/** Reads and marks what a class handed in, away from the page. */
import { InputError } from '../../../simulator/index.ts';
import type { Assignment } from '../../class/assignment.ts';
import { assignmentOfLink } from '../../class/assignment-link.ts';
import type { SetAside } from '../../class/gradebook.ts';
import { type DroppedFile, type Gradebook, gradeClass } from '../../class/gradebook.ts';
import { MOST_IN_ARCHIVE, spokenName } from '../../class/open-files.ts';
import { fetchCourse } from './fetch-course.ts';
import { readAssignmentFile } from './read-assignment-file.ts';

/** Where an assignment comes from. */
export type AssignmentSource = { readonly file: File } | { readonly link: string };

/** What a worker is asked for: to mark files by an assignment. There may be none yet. */
export interface GradingAsk {
  readonly source: AssignmentSource;
  readonly files: readonly File[];
}

/** What it answers: how far it is, then one of the two others. */
export type GradingAnswer =
  | { readonly code: 'progress'; readonly done: number; readonly of: number }
  | { readonly code: 'graded'; readonly book: Gradebook }
  /** The assignment cannot be used, or the course cannot be fetched. */
  | { readonly code: 'refused'; readonly problems: readonly string[] };

const say = (answer: GradingAnswer): void => postMessage(answer);

addEventListener('message', ({ data }: MessageEvent<GradingAsk>) => {
  grade(data).then(say, (error: unknown) => {
    if (error instanceof InputError) say({ code: 'refused', problems: error.message.split('\n') });
    else say({ code: 'refused', problems: [String(error)] });
  });
});

async function grade({ source, files }: GradingAsk): Promise<GradingAnswer> {
  const assignment = await readAssignment(source);
  const course = await fetchCourse();
  const name = 'file' in source ? spokenName(source.file.name) : 'The link';
  const { dropped, aside } = await readFiles(files);
  const run = gradeClass(name, assignment, course, dropped);
  for (let step = run.next(); ; step = run.next()) {
    if (!step.done) {
      say({ code: 'progress', ...step.value });
      continue;
    }
    const book = { ...step.value, aside: [...aside, ...step.value.aside] };
    return { code: 'graded', book };
  }
}

/** @throws InputError */
const readAssignment = (source: AssignmentSource): Promise<Assignment> =>
  'link' in source ? assignmentOfLink(source.link) : readAssignmentFile(source.file);

/** The bytes of files. One that is too large, or a folder, is set aside. */
async function readFiles(
  files: readonly File[],
): Promise<{ readonly dropped: DroppedFile[]; readonly aside: SetAside[] }> {
  const dropped: DroppedFile[] = [];
  const aside: SetAside[] = [];
  for (const file of files) {
    const name = spokenName(file.name);
    const setAside = (expected: string, found: string) =>
      aside.push({ name, reason: `${name}: expected ${expected}, but found ${found}.` });
    if (file.size > MOST_IN_ARCHIVE) {
      setAside(`at most ${MOST_IN_ARCHIVE} bytes`, `${file.size}`);
      continue;
    }
    try {
      dropped.push({ name, bytes: new Uint8Array(await file.arrayBuffer()) });
    } catch {
      setAside('a file that can be read', 'a folder, or one that is gone');
    }
  }
  return { dropped, aside };
}
