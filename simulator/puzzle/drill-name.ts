/** How hard a drill is. */
export const DRILL_LEVELS = [1, 2, 3] as const;
export type DrillLevel = (typeof DRILL_LEVELS)[number];

/** How many players sit in the room, how many things are put wrong, and how many moves it may take, by level. */
export const SIZES: Readonly<
  Record<DrillLevel, { players: number; faults: number; fewest: number; most: number }>
> = {
  1: { players: 3, faults: 1, fewest: 1, most: 2 },
  2: { players: 4, faults: 2, fewest: 2, most: 3 },
  3: { players: 6, faults: 3, fewest: 3, most: 4 },
};

/** What drills can be about, in the order of the course. */
export const DRILL_CONCEPTS = [
  'insert-or-send',
  'pre-or-post',
  'one-output-each',
  'shared-outputs',
  'order-across',
  'returns-and-loops',
  'subgroups',
  'pan-and-pairs',
  'gain-staging',
  'bay-normals',
  'polarity-and-latency',
  'solo-and-mute',
] as const;
export type DrillConcept = (typeof DRILL_CONCEPTS)[number];
