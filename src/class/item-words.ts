import { DRILL_NAMES } from '../text/index.ts';
import type { GivenItem } from './given-task.ts';
import { optionWords, partWords } from './part-words.ts';

/** How an item is called, and what was asked in it. */
export interface ItemWords {
  readonly id: string;
  readonly title: string;
  /** What each part asks, by its id; empty where learners have drills of their own. */
  readonly parts: Readonly<Record<string, string>>;
  /** What each option says, by its id; empty where a task has none. */
  readonly options: Readonly<Record<string, string>>;
}

export function itemWords({ item, title, taskOf }: GivenItem): ItemWords {
  const { id, task } = item;
  if (task.kind === 'drill' && task.seeds.policy === 'each') {
    return { id, title: drillTitle(task), parts: {}, options: {} };
  }
  // All learners have the same one.
  const given = taskOf('');
  const parts = partWords(given);
  const options = optionWords(given);
  if (task.kind === 'drill') return { id, title: drillTitle(task), parts, options };
  if (given.kind === 'question') {
    const name = given.task.id.replaceAll('-', ' ');
    return { id, title: `${title}: ${name}`, parts, options };
  }
  return { id, title: title ?? id, parts, options };
}

const drillTitle = ({
  concept,
  level,
}: {
  readonly concept: keyof typeof DRILL_NAMES;
  readonly level: number;
}): string => `${DRILL_NAMES[concept]}, level ${level}`;

/** What a part asks; its id in plain letters where each learner was asked something else. */
export const partTextIn = (words: ItemWords | undefined, id: string): string =>
  words?.parts[id] ?? id.replaceAll('-', ' ');
