import type { CourseItem, CourseOutline } from './course-item.ts';
import type { Kept } from './knowledge.ts';
import { isDue, type Review } from './review.ts';
import { type Moment, total } from './task-record.ts';

/** The most tasks of one review. What is left is due the next time. */
export const MOST_IN_QUEUE = 12;
/** How many tasks ask for a concept that is due. */
const TASKS_EACH = 2;

/** A task of a review, and why it is in it. */
export interface QueuedItem {
  readonly item: CourseItem;
  readonly why:
    | { readonly code: 'due'; readonly dueAt: Moment }
    /** It is there to be told from this concept, which is due. */
    | { readonly code: 'beside'; readonly concept: string };
  /** Whether it asks on another rig than the concept was last passed on. */
  readonly isOnAnotherRig: boolean;
}

/**
 * What to be asked now, in order. Concepts that are due come by how long they have been, with those that
 * they are mistaken for right behind them: their tasks alternate, since telling confusable things apart is
 * learned by having them mixed (Brunmair, Richter 2019). One that is not due itself stands in when nothing
 * else of its group is due. Each concept is asked by another task than the last time, where there is one,
 * and on another rig, where there is one; one that has lapsed, or has few tasks, by a drill or a hunt as well.
 */
export function reviewQueue(outline: CourseOutline, kept: Kept, now: Moment): QueuedItem[] {
  const due = [...kept.reviews.values()]
    .filter((review) => isDue(review, now))
    .sort((a, b) => Number(a.dueAt) - Number(b.dueAt) || (a.concept < b.concept ? -1 : 1));
  const taken = new Set<string>();
  const groups = due.flatMap((first): Review[][] => {
    if (taken.has(first.concept)) return [];
    const others = rivalsOf(first.concept, outline);
    const group = [
      first,
      ...due.filter(({ concept }) => others.has(concept) && !taken.has(concept)),
    ];
    for (const { concept } of group) taken.add(concept);
    return [group];
  });
  return groups.flatMap((group) => mixed(group, outline, kept)).slice(0, MOST_IN_QUEUE);
}

/** The tasks of a group of confusable concepts, one of each in turn. */
function mixed(group: readonly Review[], outline: CourseOutline, kept: Kept): QueuedItem[] {
  const columns = group.map((review) => {
    const ranked = rankedFor(review.concept, outline, kept).slice(0, TASKS_EACH);
    const why = { code: 'due', dueAt: Number(review.dueAt) } as const;
    const fresh = practiceFor(review, outline, kept);
    // What was known and is shaky is asked by something that nobody has seen before.
    const isWanted = fresh && (review.hasLapsed || ranked.length < TASKS_EACH);
    const asked = isWanted
      ? [...ranked.slice(0, TASKS_EACH - 1), { item: fresh, isOnAnotherRig: false }]
      : ranked;
    return asked.map((one): QueuedItem => ({ ...one, why }));
  });
  const [only] = group;
  const beside = only && group.length === 1 ? rivalKnown(only.concept, outline, kept) : undefined;
  if (only && beside) {
    const why = { code: 'beside', concept: only.concept } as const;
    const [best] = rankedFor(beside, outline, kept);
    columns.push(best ? [{ ...best, why }] : []);
  }
  return Array.from({ length: TASKS_EACH }, (_, turn) =>
    columns.flatMap((column) => column[turn] ?? []),
  ).flat();
}

/** What to practise of a concept: the first level that was not passed yet, else the last one. */
function practiceFor(
  { concept }: Review,
  { practice }: CourseOutline,
  { tasks }: Kept,
): CourseItem | undefined {
  const of = practice.filter((item) => item.concept === concept);
  return of.find(({ id }) => tasks.get(id)?.passedAt === undefined) ?? of.at(-1);
}

/** The concepts that one is mistaken for. */
const rivalsOf = (concept: string, { confusable }: CourseOutline): Set<string> =>
  new Set(
    confusable
      .filter((group) => group.includes(concept))
      .flat()
      .filter((one) => one !== concept),
  );

/** A concept that this one is mistaken for, and that has been passed; the first by name. */
const rivalKnown = (
  concept: string,
  outline: CourseOutline,
  { reviews }: Kept,
): string | undefined => [...rivalsOf(concept, outline)].sort().find((rival) => reviews.has(rival));

/** The tasks of a concept, the one to be asked next first. */
function rankedFor(
  concept: string,
  { items }: CourseOutline,
  { tasks }: Kept,
): Pick<QueuedItem, 'item' | 'isOnAnotherRig'>[] {
  const of = items.filter((item) => item.concept === concept);
  const lastAt = ({ id }: CourseItem) => tasks.get(id)?.last?.at ?? 0;
  const [lately] = of.filter((item) => lastAt(item) > 0).sort((a, b) => lastAt(b) - lastAt(a));
  const isOnAnotherRig = ({ rig }: CourseItem) => lately !== undefined && rig !== lately.rig;
  const attempts = ({ id }: CourseItem) => total(tasks.get(id)?.attempts ?? {});
  const rank = (item: CourseItem) => [
    Number(item === lately),
    Number(!isOnAnotherRig(item)),
    lastAt(item),
    attempts(item),
    items.indexOf(item),
  ];
  return of
    .sort((a, b) => compare(rank(a), rank(b)))
    .map((item) => ({ item, isOnAnotherRig: isOnAnotherRig(item) }));
}

function compare(one: readonly number[], other: readonly number[]): number {
  const at = one.findIndex((value, index) => value !== other[index]);
  return at < 0 ? 0 : Number(one[at]) - Number(other[at]);
}
