import { type Board, boardData, optionResults } from '../../simulator/index.ts';
import { type Assignment, assignmentDigest, parseAssignment } from '../../src/class/assignment.ts';
import { type GivenTask, givenItems } from '../../src/class/given-task.ts';
import { HAND_IN, type HandIn } from '../../src/class/hand-in.ts';
import { readCourse } from '../../src/course/index.ts';

/** A class that does an assignment with an item of every kind. */

export const COURSE = readCourse();

export const ASSIGNMENT: Assignment = parseAssignment(
  'assignment.json',
  JSON.stringify({
    format: 'tap-and-sum/assignment',
    version: 1,
    id: 'week-three',
    title: 'Week three',
    passPercent: 60,
    attempts: 3,
    hints: false,
    items: [
      { id: 'out', weight: 4, task: { kind: 'scenario', id: 'one-each', revision: 1 } },
      {
        id: 'insert',
        weight: 2,
        task: { kind: 'question', quiz: 'insert-or-send', id: 'sent-not-returned', revision: 1 },
      },
      {
        id: 'alike',
        task: {
          kind: 'drill',
          concept: 'pre-or-post',
          level: 1,
          seeds: { policy: 'same', seed: 'loft' },
        },
      },
      {
        id: 'own-one',
        weight: 3,
        task: {
          kind: 'drill',
          concept: 'one-output-each',
          level: 1,
          seeds: { policy: 'each' },
        },
      },
    ],
  }),
);

const boardAnswer = (board: Board) => ({ kind: 'board', board: boardData(board) });

/** An answer that is right; or one that is none the better for being given. */
export function answerTo({ kind, task }: GivenTask, isRight: boolean): unknown {
  if (kind !== 'question') return boardAnswer(isRight ? task.solution : task.start);
  const option = optionResults(task).find(({ holds }) => holds === isRight);
  return { kind: 'option', option: option?.id };
}

/** A hand-in of a learner. @param rightItems ids of the items that are answered right; the others are wrong. */
export function handInOf(
  learner: string,
  rightItems: readonly string[],
  assignment: Assignment = ASSIGNMENT,
): HandIn {
  return {
    format: HAND_IN.format,
    version: HAND_IN.version,
    assignment: { id: assignment.id, digest: assignmentDigest(assignment) },
    course: COURSE.version,
    simulator: 1,
    learner,
    startedAt: 1_796_000_000_000,
    handedInAt: 1_796_000_900_000,
    items: givenItems('assignment.json', assignment, COURSE).map(({ item: { id }, taskOf }) => ({
      id,
      answer: answerTo(taskOf(learner), rightItems.includes(id)),
      attempts: 1,
      hints: 0,
      spentMs: 60_000,
      interactions: [],
    })),
    events: [],
  };
}

/** All that it takes to run a generator to its end. */
export function finished<Y, R>(run: Generator<Y, R>): R {
  for (;;) {
    const step = run.next();
    if (step.done) return step.value;
  }
}

/** Hand-ins as dropped files. */
export const filesOf = (handIns: readonly HandIn[]) =>
  handIns.map((handIn) => ({
    name: `${handIn.learner}.json`,
    bytes: new TextEncoder().encode(JSON.stringify(handIn)),
  }));
