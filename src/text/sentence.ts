import { capitalised } from './capitalised.ts';

/** Words as a sentence: a capital in front, a full stop behind. */
export const sentence = (words: string): string => `${capitalised(words)}.`;

/** Several things in a row: `a, b and c`. Nothing gives an empty text. */
export function listed(things: readonly string[], joint: 'and' | 'or' = 'and'): string {
  const last = things.at(-1) ?? '';
  if (things.length < 2) return last;
  return `${things.slice(0, -1).join(', ')} ${joint} ${last}`;
}

/** As {@link listed}, but of a long row only the first ones and how many more there are. */
export function listedFirst(things: readonly string[], most: number): string {
  if (things.length <= most) return listed(things);
  return listed([...things.slice(0, most), `${things.length - most} more`]);
}

/** A number with its noun: `1 way`, `2 ways`. */
export const counted = (count: number, noun: string): string =>
  `${count} ${noun}${count === 1 ? '' : 's'}`;
