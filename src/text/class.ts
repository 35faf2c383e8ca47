import type { HandInNote, ItemNote, NoMark, Pointer } from '../class/notes.ts';
import { counted, listed, listedFirst, sentence } from './sentence.ts';

/** Why an item has no mark. */
export const noMarkSentence = (noMark: NoMark): string =>
  noMark.code === 'no-answer' ? 'There is no answer.' : noMark.reason;

/** The same in a word, for a table. */
export const noMarkText = ({ code }: NoMark): string =>
  code === 'no-answer' ? 'no answer' : 'unreadable';

/** What an instructor should know of an item of a hand-in. */
export function itemNoteSentence(note: ItemNote): string {
  switch (note.code) {
    case 'assigned-revision':
      return `The assignment means revision ${note.assigned} of this task; revision ${note.marked} marked it.`;
    case 'worked-revision':
      return `It was worked on in revision ${note.worked}; revision ${note.marked} marked it.`;
    case 'other-seed':
      return `Another drill was worked on than this learner was given: seed ${note.worked} instead of ${note.given}.`;
    case 'attempts':
      return `${counted(note.made, 'attempt')}, where ${note.most} ${note.most === 1 ? 'was' : 'were'} allowed.`;
    case 'hints':
      return `${counted(note.shown, 'hint')} shown, where none was to be had.`;
    case 'moved-lock':
      return 'A locked control was moved, which fails the task.';
  }
}

/** What an instructor should know of a hand-in. */
export function handInNoteSentence(note: HandInNote): string {
  switch (note.code) {
    case 'other-wording':
      return 'It was made for another wording of the assignment.';
    case 'other-course':
      return 'It was made with another version of the course than marked it.';
    case 'other-simulator':
      return `It was made with version ${note.made} of the simulator; version ${note.marked} marked it.`;
    case 'unknown-items':
      return sentence(`The assignment has not all of its items; passed over: ${listed(note.ids)}`);
    case 'times':
      return 'It says that it was handed in before it was begun.';
  }
}

/** What is alike, without a judgement. @param titleOf what an item is called. */
export function pointerSentence(pointer: Pointer, titleOf: (item: string) => string): string {
  switch (pointer.code) {
    case 'same-answer':
      return `${listed(pointer.learners)} gave the same answer to “${titleOf(pointer.item)}”, though their drills were not the same.`;
    case 'same-log':
      return `${listed(pointer.learners)} did the same things at the same moments, by their logs.`;
    case 'names':
      return `Hand-ins under the code ${pointer.learner} bear different names: ${listed(pointer.names)}.`;
  }
}

const MOST_NAMED = 8;

/** Learners in a row; of many only the first ones. */
export const learnersText = (learners: readonly string[]): string =>
  listedFirst(learners, MOST_NAMED);

/** How long something was open: `12 min 5 s`, `40 s`. @param ms milliseconds. */
export function spentText(ms: number): string {
  const seconds = Math.round(ms / 1000);
  const [minutes, rest] = [Math.floor(seconds / 60), seconds % 60];
  if (minutes === 0) return `${rest} s`;
  return rest === 0 ? `${minutes} min` : `${minutes} min ${rest} s`;
}

/** Bounds of a useful difficulty, and of a good discrimination, as handbooks of test theory give them. */
const USEFUL = { least: 0.4, most: 0.8 };
const GOOD = 0.3;

/** What a difficulty means, in a word. */
export function difficultyWord(difficulty: number): string {
  if (difficulty < USEFUL.least) return 'hard';
  return difficulty > USEFUL.most ? 'easy' : 'useful';
}

/** What a discrimination means, in a word. */
export function discriminationWord(discrimination: number | undefined): string {
  if (discrimination === undefined) return 'all scored alike';
  if (discrimination < 0) return 'look at this item';
  return discrimination < GOOD ? 'weak' : 'good';
}
