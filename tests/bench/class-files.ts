import {
  type Board,
  boardData,
  controls,
  RandomStream,
  type Rig,
  withValues,
} from '../../simulator/index.ts';
import { type Assignment, assignmentDigest, parseAssignment } from '../../src/class/assignment.ts';
import { type GivenTask, givenItems, type TaskSource } from '../../src/class/given-task.ts';
import type { DroppedFile } from '../../src/class/gradebook.ts';
import type { HandIn } from '../../src/class/hand-in.ts';

const EVENTS = 200;
const SCENARIOS = 7;

/** An assignment of 10 items: scenarios, a question, and two drills that differ from learner to learner. */
export function classAssignment({ scenarios }: TaskSource): Assignment {
  const drill = (id: string, concept: string) => ({
    id,
    task: { kind: 'drill', concept, level: 2, seeds: { policy: 'each' } },
  });
  const items = [
    ...[...scenarios.values()].slice(0, SCENARIOS).map(({ id, revision }) => ({
      id,
      task: { kind: 'scenario', id, revision },
    })),
    {
      id: 'question',
      task: { kind: 'question', quiz: 'insert-or-send', id: 'sent-not-returned', revision: 1 },
    },
    drill('taps', 'pre-or-post'),
    drill('inserts', 'insert-or-send'),
  ];
  const data = { format: 'tap-and-sum/assignment', version: 1, id: 'bench', title: 'Bench' };
  return parseAssignment('bench', JSON.stringify({ ...data, passPercent: 60, items }));
}

/** Hand-ins of learners of whom no two moved the same faders: half a dozen boards a task, each with three more moves. */
export function classFiles(
  assignment: Assignment,
  course: TaskSource,
  learners: number,
): DroppedFile[] {
  const given = givenItems('bench', assignment, course);
  return Array.from({ length: learners }, (_, index) => {
    const learner = `learner-${index}`;
    const stream = new RandomStream(`bench/${learner}`);
    const handIn: HandIn = {
      format: 'tap-and-sum/hand-in',
      version: 1,
      assignment: { id: assignment.id, digest: assignmentDigest(assignment) },
      course: course.version,
      simulator: 1,
      learner,
      startedAt: 1,
      handedInAt: 2 + index,
      items: given.map(({ item: { id }, taskOf }) => ({
        id,
        answer: answerTo(taskOf(learner), stream),
        attempts: 1,
        hints: 0,
        spentMs: 60_000,
        interactions: [],
      })),
      events: Array.from({ length: EVENTS }, (_event, at) => ({
        at: at * 800 + index,
        item: 'question',
        what: 'control.set',
        of: 'desk.ch3.fader',
        to: -at / 10,
      })),
    };
    return { name: `${learner}.json`, bytes: new TextEncoder().encode(JSON.stringify(handIn)) };
  });
}

function answerTo({ kind, task }: GivenTask, stream: RandomStream): HandIn['items'][0]['answer'] {
  if (kind === 'question')
    return { kind: 'option', option: stream.pick(task.options.map(({ id }) => id)) };
  const others = kind === 'scenario' ? task.proofs.map(({ board }) => board) : [];
  const board = stream.pick<Board>([task.start, task.solution, ...others]);
  return { kind: 'board', board: boardData(withMovedFaders(task.rig, board, stream)) };
}

function withMovedFaders(rig: Rig, board: Board, stream: RandomStream): Board {
  const faders = [...controls(rig).keys()].filter((address) => /^desk.*fader$/.test(address));
  const moved = [1, 2, 3].map(() => [stream.pick(faders), stream.int(-300, 0) / 10] as const);
  return withValues(rig, board, Object.fromEntries(moved));
}
