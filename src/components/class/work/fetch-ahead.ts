import type { Assignment } from '../../../class/assignment.ts';
import { ALL_LATER } from '../../desk/later.ts';
import type { TaskFinder } from './assigned-task.ts';

/**
 * Fetches all that the tasks of an assignment need, so that they can be done without a network. What fails is fetched
 * again by whoever needs it.
 *
 * @returns whether all of it is there.
 */
export async function fetchAhead(
  assignment: Assignment,
  learner: string,
  find: TaskFinder,
): Promise<boolean> {
  const tasks = Promise.allSettled(assignment.items.map((item) => find(item, learner)));
  const seen = new Set<unknown>();
  const came: PromiseSettledResult<unknown>[] = [];
  // Code that came may know of more that comes later.
  for (let more = [...ALL_LATER]; more.length > 0; ) {
    for (const later of more) seen.add(later);
    came.push(...(await Promise.allSettled(more.map((later) => later.fetch()))));
    more = [...ALL_LATER].filter((later) => !seen.has(later));
  }
  came.push(...(await tasks));
  return came.every(({ status }) => status === 'fulfilled');
}
