import type { Question } from '../../simulator/index.ts';
import { claimSentence, DRILL_NAMES } from '../text/index.ts';
import type { GivenItem } from './given-task.ts';

/** How an item is called, and what was asked in it. */
export interface ItemWords {
  readonly id: string;
  readonly title: string;
  /** What each part asks, by its id; empty where learners have drills of their own. */
  readonly parts: Readonly<Record<string, string>>;
  /** What each option says, by its id, where options are statements. */
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
    return {
      id,
      title: `${title}: ${question.id.replaceAll('-', ' ')}`,
      parts: { [question.id]: question.ask },
      options: optionWords(question),
    };
  }
  const { rig, checks } = found.task;
  const parts = checks.map((check) => [check.id, claimSentence(rig, check.claim)] as const);
  return { id, title: title ?? id, parts: Object.fromEntries(parts), options: {} };
}

const optionWords = (question: Question): Record<string, string> =>
  question.kind === 'statements'
    ? Object.fromEntries(question.options.map(({ id, text }) => [id, text]))
    : {};
