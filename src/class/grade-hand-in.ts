import { SIMULATOR_VERSION } from '../../simulator/index.ts';
import { type Assignment, assignmentDigest } from './assignment.ts';
import { type GivenItem, givenItems, type TaskSource } from './given-task.ts';
import { type GradedItem, ItemMarker } from './grade-item.ts';
import type { HandIn } from './hand-in.ts';
import { logDigestOf } from './log-digest.ts';
import type { HandInNote } from './notes.ts';

/** A hand-in, marked anew. Nothing but plain data, so that it can leave a worker. */
export interface GradedHandIn {
  /** Name of the file that it came in. */
  readonly file: string;
  readonly learner: string;
  readonly name?: string;
  readonly startedAt: number;
  readonly handedInAt: number;
  /** One for each item of the assignment, as it lists them. */
  readonly items: readonly GradedItem[];
  /** Of all points, from 0 to 1. */
  readonly share: number;
  /** What the shares that were claimed come to; nothing when one is missing. */
  readonly claimed?: number;
  readonly passed: boolean;
  readonly notes: readonly HandInNote[];
  /** Names what was done, and when; nothing when too little was noted to say anything by. */
  readonly logDigest?: string;
}

/** Rounding must not fail somebody who stands on the pass mark. */
const ROUNDING = 1e-9;

/** Marks the hand-ins of one assignment. It remembers the tasks, and how answers that come again were marked. */
export class Grader {
  readonly assignment: Assignment;
  readonly course: TaskSource;
  readonly given: readonly GivenItem[];
  readonly #digest: string;
  readonly #markers: readonly ItemMarker[];

  /**
   * @param file name of the assignment, for messages.
   * @throws InputError when the course has not all of its tasks, or an own scenario in it does not work.
   */
  constructor(file: string, assignment: Assignment, course: TaskSource) {
    this.assignment = assignment;
    this.course = course;
    this.given = givenItems(file, assignment, course);
    this.#digest = assignmentDigest(assignment);
    this.#markers = this.given.map((given) => new ItemMarker(given, assignment));
  }

  /** Marks a hand-in of this assignment. @param file what it came in, for messages. */
  grade(file: string, handIn: HandIn): GradedHandIn {
    const { learner, name, startedAt, handedInAt } = handIn;
    const handed = new Map(handIn.items.map((item) => [item.id, item]));
    const items = this.#markers.map((marker) => marker.mark(learner, handed.get(marker.id)));
    const share = weighted(items, (item) => item.share);
    const isClaimed = items.every(
      ({ claimed, noMark }) => claimed !== undefined || noMark?.code === 'no-answer',
    );
    const logDigest = logDigestOf(handIn);
    return {
      file,
      learner,
      ...(name === undefined ? {} : { name }),
      startedAt,
      handedInAt,
      items,
      share,
      ...(isClaimed ? { claimed: weighted(items, ({ claimed = 0 }) => claimed) } : {}),
      passed: share >= this.assignment.passPercent / 100 - ROUNDING,
      notes: this.#notes(handIn),
      ...(logDigest === undefined ? {} : { logDigest }),
    };
  }

  #notes({ assignment, course, simulator, items, startedAt, handedInAt }: HandIn): HandInNote[] {
    const known = new Set(this.#markers.map(({ id }) => id));
    const ids = items.map(({ id }) => id).filter((id) => !known.has(id));
    const marked = SIMULATOR_VERSION;
    return [
      ...(assignment.digest === this.#digest ? [] : [{ code: 'other-wording' as const }]),
      ...(course === this.course.version ? [] : [{ code: 'other-course' as const }]),
      ...(simulator === marked
        ? []
        : [{ code: 'other-simulator' as const, made: simulator, marked }]),
      ...(ids.length === 0 ? [] : [{ code: 'unknown-items' as const, ids }]),
      ...(startedAt <= handedInAt ? [] : [{ code: 'times' as const }]),
    ];
  }
}

/**
 * Marks one hand-in: every answer is simulated anew, and no number in the hand-in can raise a mark.
 *
 * @throws InputError when the course has not the tasks of the assignment.
 */
export const gradeHandIn = (
  assignment: Assignment,
  course: TaskSource,
  handIn: HandIn,
): GradedHandIn => new Grader('The assignment', assignment, course).grade('The hand-in', handIn);

/** The mean of a share of the items, by their weights. */
function weighted(items: readonly GradedItem[], shareOf: (item: GradedItem) => number): number {
  const all = items.reduce((sum, { weight }) => sum + weight, 0);
  return items.reduce((sum, item) => sum + item.weight * shareOf(item), 0) / all;
}
