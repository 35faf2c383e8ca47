import { RandomStream } from '../../simulator/index.ts';
import type { Assignment, AssignmentItem } from './assignment.ts';

/**
 * The chance of one item for one learner: a stream of its own, from assignment, learner and item, so that
 * nothing drawn elsewhere moves it. What may differ from attempt to attempt is drawn from
 * `.part(String(attempt))`.
 */
export const itemStream = (assignment: string, learner: string, item: string): RandomStream =>
  new RandomStream(`assignment/${assignment}/learner/${learner}/item/${item}`);

/** How many different drills a class gets of an item whose seeds differ: each is generated and proven once. */
export const DRILL_VARIANTS = 24;
/** A seed hardly ever leads to no drill; then the next is taken. */
const SEEDS_TRIED = 8;

/** The seeds of a learner's drill, to be tried in order. */
export function drillSeeds(assignment: string, learner: string, item: string): string[] {
  const variant = itemStream(assignment, learner, item).part('drill').int(1, DRILL_VARIANTS);
  const stream = new RandomStream(`assignment/${assignment}/item/${item}/variant/${variant}`);
  return Array.from({ length: SEEDS_TRIED }, () => stream.int(0, 0x7fff_ffff).toString(36));
}

/** The items of an assignment in the order in which a learner meets them. */
export function itemsInOrder(assignment: Assignment, learner: string): readonly AssignmentItem[] {
  if (assignment.order === 'listed') return assignment.items;
  return new RandomStream(`assignment/${assignment.id}/learner/${learner}/order`).shuffled(
    assignment.items,
  );
}
