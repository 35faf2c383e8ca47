import {
  handInNoteSentence,
  itemNoteSentence,
  noMarkSentence,
  pointerSentence,
} from '../text/index.ts';
import type { Gradebook } from './gradebook.ts';
import { pointersIn } from './pointers.ts';

/** Something to know of a class, and of whom it holds. */
export interface Remark {
  readonly words: string;
  /** Learner codes; empty where the words name them. */
  readonly learners: readonly string[];
}

/** What is to be known of hand-ins and their items: each thing once, with all of whom it holds. */
export function remarksOn({ rows, words }: Gradebook): Remark[] {
  const learners = new Map<string, string[]>();
  const note = (remark: string, learner: string) =>
    learners.set(remark, [...(learners.get(remark) ?? []), learner]);
  for (const { learner, notes } of rows) {
    for (const one of notes) note(handInNoteSentence(one), learner);
  }
  for (const { id, title } of words) {
    for (const { learner, items } of rows) {
      const item = items.find((one) => one.id === id);
      if (item?.noMark) note(`“${title}”: ${noMarkSentence(item.noMark)}`, learner);
      for (const one of item?.notes ?? []) note(`“${title}”: ${itemNoteSentence(one)}`, learner);
    }
  }
  return [...learners].map(([remark, all]) => ({ words: remark, learners: all }));
}

/** What is alike that chance would hardly make so, in words. */
export const pointerRemarks = (book: Gradebook): Remark[] =>
  pointersIn(book).map((pointer) => ({
    words: pointerSentence(pointer, (id) => titleIn(book, id)),
    learners: [],
  }));

/** What an item is called. */
export const titleIn = ({ words }: Gradebook, id: string): string =>
  words.find((one) => one.id === id)?.title ?? id;
