import { InputError, SIMULATOR_VERSION } from '../../simulator/index.ts';
import type { Assignment } from './assignment.ts';
import type { TaskSource } from './given-task.ts';
import { type GradedHandIn, Grader } from './grade-hand-in.ts';
import { type HandIn, parseHandIn } from './hand-in.ts';
import { type ItemWords, itemWords } from './item-words.ts';
import { openFiles } from './open-files.ts';
import { reasonOf } from './reason.ts';

/** A file that is in no row, and why. */
export interface SetAside {
  readonly name: string;
  readonly reason: string;
}

/** All that came back of an assignment. Nothing but plain data, so that it can leave a worker. */
export interface Gradebook {
  readonly assignment: Assignment;
  /** Versions of course and simulator that marked it. */
  readonly course: string;
  readonly simulator: number;
  /** How each item of the assignment is called, as it lists them. */
  readonly words: readonly ItemWords[];
  /** The newest hand-in of each learner, by learner code. */
  readonly rows: readonly GradedHandIn[];
  /** Hand-ins of learners who have a newer one, the newest first. */
  readonly superseded: readonly GradedHandIn[];
  readonly aside: readonly SetAside[];
}

/** How far grading is. */
export interface GradingProgress {
  readonly done: number;
  readonly of: number;
}

/** A file as it was dropped. */
export interface DroppedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/**
 * Opens, reads and marks what a class handed in: one step after each hand-in, so that whoever runs it can
 * tell how far it is. Each file ends in a row, among the superseded, or aside with a reason.
 *
 * @param file name of the assignment, for messages.
 * @throws InputError when the course has not the tasks of the assignment.
 */
export function* gradeClass(
  file: string,
  assignment: Assignment,
  course: TaskSource,
  dropped: readonly DroppedFile[],
): Generator<GradingProgress, Gradebook> {
  const grader = new Grader(file, assignment, course);
  const opened = openFiles(dropped);
  const aside: SetAside[] = opened.aside.map(({ name, error }) => ({
    name,
    reason: reasonOf(error),
  }));
  const graded: GradedHandIn[] = [];
  const { files } = opened;
  for (const [index, { name, text }] of files.entries()) {
    const outcome = markFile(grader, name, text);
    if ('reason' in outcome) aside.push(outcome);
    else graded.push(outcome);
    yield { done: index + 1, of: files.length };
  }
  return { ...bookOf(grader, graded), aside };
}

/** One file, marked or set aside. Whatever stands in it, it does not keep the others from being marked. */
function markFile(grader: Grader, name: string, text: string): GradedHandIn | SetAside {
  try {
    const handIn = parseHandIn(name, text);
    refuseOther(name, grader.assignment, handIn);
    return grader.grade(name, handIn);
  } catch (error) {
    if (error instanceof InputError) return { name, reason: reasonOf(error) };
    return { name, reason: `${name}: this program failed at it. ${String(error).slice(0, 200)}` };
  }
}

/** @throws InputError when a hand-in belongs to another assignment. */
function refuseOther(name: string, { id }: Assignment, { assignment }: HandIn): void {
  if (assignment.id === id) return;
  throw new InputError(name, [
    {
      place: 'assignment.id',
      expected: `a hand-in of ${id}`,
      found: `one of ${assignment.id}`,
      hint: 'Grade it with its own assignment.',
    },
  ]);
}

/** `loft-2` comes before `loft-10`. */
const BY_CODE = new Intl.Collator('en', { numeric: true });

function bookOf(
  { assignment, course, given }: Grader,
  graded: readonly GradedHandIn[],
): Omit<Gradebook, 'aside'> {
  const newestFirst = graded.toSorted(
    (one, other) => other.handedInAt - one.handedInAt || (one.file < other.file ? -1 : 1),
  );
  const rows = new Map<string, GradedHandIn>();
  const superseded: GradedHandIn[] = [];
  for (const handIn of newestFirst) {
    if (rows.has(handIn.learner)) superseded.push(handIn);
    else rows.set(handIn.learner, handIn);
  }
  return {
    assignment,
    course: course.version,
    simulator: SIMULATOR_VERSION,
    words: given.map(itemWords),
    rows: [...rows.values()].sort((one, other) => BY_CODE.compare(one.learner, other.learner)),
    superseded,
  };
}
