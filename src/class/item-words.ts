import { claimSentence, DRILL_NAMES, optionsOf } from '../text/index.ts';
import type { GivenItem } from './given-task.ts';

/** How an item is called, and what was asked in it. */
export interface ItemWords {
  readonly id: string;
  readonly title: string;
  /** What each part asks, by its id; empty where learners have drills of their own. */
  readonly parts: Readonly<Record<string, string>>;
  /** What each option says, by its id; empty where a task has none. */
  readonly options: Readonly<Record<string, string>>;
}

export function itemWords(given: GivenItem): ItemWords {
  const { item, title } = given;
  const { task } = item;
  const { id } = item;
  if (task.kind === 'drill') {
    const name = `${DRILL_NAMES[task.concept]}, level ${task.level}`;
    return { id, title: name, parts: {}, options: {} };
  }
  const found = given.taskOf('');
  if (found.kind === 'question') {
    const { task: question } = found;
    const options = Object.fromEntries(optionsOf(question).map((one) => [one.id, one.text]));
    return {
      id,
      title: `${title}: ${question.id.replaceAll('-', ' ')}`,
      // A part is the question itself, or one of its options where each is asked by itself.
      parts: { ...options, [question.id]: question.ask },
      options,
    };
  }
  const { rig, checks } = found.task;
  const parts = checks.map((check) => [check.id, claimSentence(rig, check.claim)] as const);
  return { id, title: title ?? id, parts: Object.fromEntries(parts), options: {} };
}
