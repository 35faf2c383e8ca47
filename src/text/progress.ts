import type { Standing } from '../progress/knowledge.ts';
import { counted } from './sentence.ts';

const DAY = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long' });
const MOMENT = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeStyle: 'short' });

/** A day: `26 November 2026`. @param at milliseconds since 1970 UTC, as the person's clock shows it. */
export const dayText = (at: number): string => DAY.format(at);

/** A day with its time: `26 November 2026 at 09:56`. */
export const momentText = (at: number): string => MOMENT.format(at);

/** A share of all points as a percentage, rounded down, so that only all of them are 100 %: `99 %`. */
export const shareText = (share: number): string => `${Math.floor(share * 100)} %`;

/** That nothing is kept, and what to do about it. */
export const NOTHING_KEPT =
  'This browser keeps nothing of what you do here: it is gone with the page. A window that is not private may keep it.';

/** What was done of a task: `3 attempts, 1 hint, best 75 %, passed on 26 November 2026.` */
export function effortSentence(effort: {
  readonly attempts: number;
  readonly hints: number;
  readonly best: number | undefined;
  readonly passedAt: number | undefined;
}): string {
  const { attempts, hints, best, passedAt } = effort;
  const parts = [
    counted(attempts, 'attempt'),
    ...(hints > 0 ? [counted(hints, 'hint')] : []),
    ...(best === undefined ? [] : [`best ${shareText(best)}`]),
    ...(passedAt === undefined ? [] : [`passed on ${dayText(passedAt)}`]),
  ];
  return `${parts.join(', ')}.`;
}

/** How it stands with a task or a concept, in a word or two. */
export const STANDING_WORDS: Readonly<Record<Standing, string>> = {
  new: 'Not tried',
  begun: 'Begun',
  shaky: 'Shaky',
  due: 'Due',
  known: 'Known',
};

/** What each of these words means, for a legend. */
export const STANDING_MEANINGS: Readonly<Record<Standing, string>> = {
  known: 'passed, and not yet time to be asked again',
  due: 'passed before, and time to be asked again',
  shaky: 'passed before and failed since, or passed only after a solution was shown',
  begun: 'tried, and not passed yet',
  new: 'nothing was tried yet',
};

/** When something comes back: `Due now`, `In 3 days`, `Tomorrow`. @param at nothing for what comes back no more. */
export function dueText(at: number | undefined, now: number): string {
  if (at === undefined) return 'No more';
  const days = Math.ceil((at - now) / (24 * 60 * 60 * 1000));
  if (days <= 0) return 'Now';
  return days === 1 ? 'Within a day' : `In ${days} days`;
}

/** How much of a lesson is done, and whether that shows that one knows it: `5 of 6 passed, known`. */
export const unitText = (passed: number, of: number, isKnown: boolean): string =>
  `${passed} of ${of} passed${isKnown ? ', known' : ''}`;
