/** What a hunt of each level is about. */
const LEVEL_WORDS: readonly string[] = [
  'dead stages on a plain way',
  'controls, cords and a subgroup',
  'sends, taps and bad contacts',
  'inserts and their normals',
  'anything, with a device in parallel',
];

/** A level as a list names it: `1: dead stages on a plain way`. @param level from 1. */
export const levelOfHuntText = (level: number): string => `${level}: ${LEVEL_WORDS[level - 1]}`;
