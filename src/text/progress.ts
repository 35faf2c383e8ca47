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
