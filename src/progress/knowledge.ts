import type { CourseItem, CourseOutline } from './course-item.ts';
import { isDue, type Review } from './review.ts';
import { type Moment, type TaskRecord, total } from './task-record.ts';

/** How it stands with a task or a concept. */
export type Standing =
  /** Nothing was tried. */
  | 'new'
  /** Something was tried or begun, and nothing passed without aid yet. */
  | 'begun'
  /** Passed before, and failed the last time it was asked; or passed only with a solution shown. */
  | 'shaky'
  /** Passed, and it is time to be asked again. */
  | 'due'
  | 'known';

/** What is kept, by the id of its task and by its concept. */
export interface Kept {
  readonly tasks: ReadonlyMap<string, TaskRecord>;
  readonly reviews: ReadonlyMap<string, Review>;
}

/** How it stands with a task by its own record: whether it is due, only its concept knows. */
export function standingOfTask(record: TaskRecord | undefined): Exclude<Standing, 'due'> {
  if (!record) return 'new';
  const { last, passedAt, drafts } = record;
  if (!last) return drafts.length > 0 || total(record.hints) > 0 ? 'begun' : 'new';
  if (passedAt === undefined) return last.passed ? 'shaky' : 'begun';
  return last.passed ? 'known' : 'shaky';
}

/** A concept with how it stands and what that goes by. */
export interface ConceptStanding {
  readonly concept: string;
  readonly term: string;
  readonly standing: Standing;
  /** When it comes back; nothing when it is not in review, or came back for the last time. */
  readonly dueAt: Moment | undefined;
  readonly passed: number;
  readonly of: number;
}

/** How it stands with each concept that the course has a task for, or that is kept, in the order of the course. */
export function conceptStandings(
  { items, concepts }: CourseOutline,
  kept: Kept,
  now: Moment,
): ConceptStanding[] {
  const asked = new Set([...items.map(({ concept }) => concept), ...kept.reviews.keys()]);
  return [...asked].map((concept) => {
    const of = items.filter((item) => item.concept === concept);
    const review = kept.reviews.get(concept);
    return {
      concept,
      term: concepts.find(({ id }) => id === concept)?.term ?? concept,
      standing: standingOfConcept(of, review, kept, now),
      dueAt: review?.dueAt,
      passed: of.filter((item) => kept.tasks.get(item.id)?.passedAt !== undefined).length,
      of: of.length,
    };
  });
}

function standingOfConcept(
  items: readonly CourseItem[],
  review: Review | undefined,
  kept: Kept,
  now: Moment,
): Standing {
  if (isDue(review, now)) return 'due';
  if (review?.hasLapsed) return 'shaky';
  const standings = items.map(({ id }) => standingOfTask(kept.tasks.get(id)));
  if (standings.includes('shaky')) return 'shaky';
  if (review || standings.includes('known')) return 'known';
  return standings.includes('begun') ? 'begun' : 'new';
}

/** A unit with what was done of it. */
export interface UnitStanding {
  readonly unit: string;
  readonly title: string;
  readonly href: string;
  readonly passed: number;
  /** Whether all was passed that shows that one knows it, read or not. */
  readonly isKnown: boolean;
  readonly items: readonly CourseItem[];
}

/** What was done of each unit that has tasks, in the order of the course. */
export const unitStandings = ({ items, units }: CourseOutline, kept: Kept): UnitStanding[] =>
  units
    .map(({ id, title, href, proof }) => {
      const hasPassed = (item: string) => kept.tasks.get(item)?.passedAt !== undefined;
      const of = items.filter(({ unit }) => unit === id);
      const passed = of.filter((item) => hasPassed(item.id)).length;
      return { unit: id, title, href, passed, isKnown: proof.every(hasPassed), items: of };
    })
    .filter(({ items: of }) => of.length > 0);

/** What was tried of all that can be practised, in its order. */
export const practised = ({ practice }: CourseOutline, kept: Kept): readonly CourseItem[] =>
  practice.filter(({ id }) => kept.tasks.has(id));

/** Records of tasks that the course no longer has. They stay, and go along in every export. */
export const strayRecords = ({ items, practice }: CourseOutline, kept: Kept): TaskRecord[] =>
  [...kept.tasks.values()].filter(({ id }) =>
    [...items, ...practice].every((item) => item.id !== id),
  );
