/** What a hunt of each level is about. */
const LEVEL_WORDS: readonly string[] = [
  'something is dead on a plain way',
  'or a control or cord is not as it should be',
  'or a send or contact is wrong',
  'or an insert is',
  'anything at all',
];

/** A level as a list names it: `1: something is dead on a plain way`. @param level from 1. */
export const levelOfHuntText = (level: number): string => `${level}: ${LEVEL_WORDS[level - 1]}`;
