import type { Owner, Question, Scenario } from '../../../../simulator/index.ts';
import type { Assignment, AssignmentItem } from '../../../class/assignment.ts';
import { type GivenItem, givenItems, type TaskSource } from '../../../class/given-task.ts';
import { drillSeeds } from '../../../class/item-stream.ts';
import { askForDrill } from '../../drill/ask-worker.ts';

/** A task as a learner meets it on the page. */
export type MetTask =
  | {
      readonly kind: 'board';
      readonly scenario: Scenario;
      readonly seed?: string;
    }
  | {
      readonly kind: 'question';
      readonly question: Question;
      /** Owners that are drawn where the way is asked for; all of the desk when left out. */
      readonly show: readonly Owner[] | undefined;
    };

/** Finds the task of one item for one learner. Drills are made in a worker, so that the page goes on. */
export type TaskFinder = (item: AssignmentItem, learner: string) => Promise<MetTask>;

/**
 * What finds the tasks of an assignment.
 *
 * @throws InputError with every item whose task the course has not, or whose own scenario does not work.
 */
export function taskFinder(file: string, assignment: Assignment, course: TaskSource): TaskFinder {
  // Which drills there are is known by the format alone.
  const written = assignment.items.filter(({ task }) => task.kind !== 'drill');
  const given = new Map<string, GivenItem>(
    givenItems(file, { ...assignment, items: written }, course).map((one) => [one.item.id, one]),
  );
  const made = new Map<string, Promise<MetTask>>();
  const find: TaskFinder = async (item, learner) => {
    if (item.task.kind === 'drill') return makeDrill(assignment, item, item.task, learner);
    const found = given.get(item.id)?.taskOf(learner);
    if (!found || found.kind === 'drill') throw new RangeError(`Expected an item, got ${item.id}.`);
    if (found.kind === 'scenario') return { kind: 'board', scenario: found.task };
    const show =
      item.task.kind === 'question' ? course.quizzes.get(item.task.quiz)?.show : undefined;
    return { kind: 'question', question: found.task, show };
  };
  // What was found stays found: a drill is made once, and there is no network later perhaps.
  return (item, learner) => {
    const key = `${item.id}/${learner}`;
    const finding = made.get(key) ?? find(item, learner);
    made.set(key, finding);
    finding.catch(() => made.delete(key));
    return finding;
  };
}

async function makeDrill(
  assignment: Assignment,
  item: AssignmentItem,
  { concept, level, seeds }: Extract<AssignmentItem['task'], { kind: 'drill' }>,
  learner: string,
): Promise<MetTask> {
  const tried =
    seeds.policy === 'same' ? [seeds.seed] : drillSeeds(assignment.id, learner, item.id);
  for (const seed of tried) {
    const { made } = await askForDrill({ concept, level, seed });
    if (made) return { kind: 'board', scenario: made.scenario, seed };
  }
  throw new RangeError(`No drill of ${concept}, level ${level}, could be proven.`);
}
