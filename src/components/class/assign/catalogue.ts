import type { AssignedTask } from '../../../class/assignment.ts';
import { canonicalText } from '../../../class/canonical-text.ts';
import { DRILL_NAMES } from '../../../text/drill-names.ts';

/** A task of the course that can be assigned. */
export interface CatalogueTask {
  readonly task: AssignedTask;
  readonly title: string;
  /** What it asks, or the first of it. */
  readonly asks: string;
  /** Id of a word of the glossary. */
  readonly concept: string;
  /** `patch`, `complete`, or a kind of question. */
  readonly kind: string;
}

/** What an instructor can choose from. */
export interface Catalogue {
  readonly lessons: readonly {
    readonly id: string;
    readonly title: string;
    readonly tasks: readonly CatalogueTask[];
  }[];
  readonly concepts: readonly { readonly id: string; readonly term: string }[];
}

/** What kinds of tasks are called for an instructor. */
export const KIND_WORDS: Readonly<Record<string, string>> = {
  patch: 'routing task',
  complete: 'routing task, half done',
  statements: 'choose a statement',
  number: 'choose a number',
  predict: 'say a number',
  outputs: 'name the outputs',
  order: 'put in order',
  explain: 'explain the fault',
};

/** Whether two tasks are the same one of the course, of whatever revision. */
export function isSameTask(one: AssignedTask, other: AssignedTask): boolean {
  const named = ({ ...task }: AssignedTask) =>
    canonicalText('revision' in task ? { ...task, revision: 0 } : task);
  return one.kind === other.kind && named(one) === named(other);
}

/** The task of the course that an item is; nothing for a drill, a scenario of one's own, or what the course has not. */
export const courseTask = ({ lessons }: Catalogue, task: AssignedTask): CatalogueTask | undefined =>
  lessons.flatMap(({ tasks }) => tasks).find((one) => isSameTask(one.task, task));

/** What an item is called in the list of an instructor. */
export function titleIn(catalogue: Catalogue, task: AssignedTask): string {
  if (task.kind === 'drill') return `Drill: ${DRILL_NAMES[task.concept]}, level ${task.level}`;
  if (task.kind === 'own') return task.scenario.title;
  return courseTask(catalogue, task)?.title ?? `${task.id} (not in this course)`;
}

/** What the id of an item begins as. */
export const wantedId = (task: AssignedTask): string =>
  task.kind === 'drill'
    ? `drill-${task.concept}`
    : task.kind === 'own'
      ? task.scenario.id
      : task.id;
