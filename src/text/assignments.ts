import type { Assignment } from '../class/assignment.ts';
import type { HandIn } from '../class/hand-in.ts';
import type { WorkItem } from '../class/work.ts';
import { dayText, shareText } from './progress.ts';
import { counted } from './sentence.ts';

const SOLUTIONS = {
  never: 'Solutions are not shown.',
  'after-pass': 'The solution of a task is shown once you have passed it.',
  'after-hand-in': 'Solutions are shown when you have handed in and closed your work.',
} as const satisfies Readonly<Record<Assignment['solutions'], string>>;

/** By what rules an assignment is done, a sentence each. */
export function rulesSentences(assignment: Assignment): string[] {
  const { due, passPercent, attempts, hints, solutions } = assignment;
  return [
    ...(due === undefined ? [] : [`Wanted by ${dayText(Date.parse(`${due}T12:00:00Z`))}.`]),
    `It is passed from ${passPercent} % of all points on.`,
    attempts === undefined
      ? 'You may check as often as you like: the best attempt counts.'
      : `You may check ${attempts === 1 ? 'once' : counted(attempts, 'time')} for each task${attempts === 1 ? '' : ': the best attempt counts'}.`,
    hints ? 'Hints cost nothing; how many you took is in the file.' : 'There are no hints.',
    SOLUTIONS[solutions],
  ];
}

/** How it stands with an item, in a few words. */
export function itemStanding(item: WorkItem): string {
  if (item.best?.score === 1) return 'Passed';
  if (item.best) return `Not yet: ${shareText(item.best.score)}`;
  return item.answer === undefined && item.spentMs === 0 ? 'Not begun' : 'Begun, not checked';
}

/** How many attempts there were, and how many there may be: `2 of 3 attempts`. */
export const attemptsText = (made: number, most: number | undefined): string =>
  most === undefined ? counted(made, 'attempt') : `${made} of ${counted(most, 'attempt')}`;

/** What a hand-in has in it, a sentence each. */
export function handInSentences({ learner, name, items, events }: HandIn): string[] {
  const answers = items.filter(({ answer }) => answer !== undefined).length;
  return [
    name === undefined
      ? `Your code, ${learner}, and no name.`
      : `Your code, ${learner}, and the name that you typed: ${name}.`,
    `${counted(answers, 'answer')}: of each task the best that you checked, or else what stands there.`,
    'How often you checked, how many hints you took, and how long each task was open.',
    `What each check came to, and a log of ${counted(events.length, 'step')} with their times.`,
    'Which assignment it is, when you began, and when you saved the file.',
  ];
}

/** What closing does. */
export const closesSentence =
  'This closes your work: you see the solutions, and nothing can be changed any more. The file can still be saved.';
