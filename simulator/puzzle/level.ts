/** How hard a drill is. */
export const LEVELS = [1, 2, 3] as const;
export type Level = (typeof LEVELS)[number];

/** How many players sit in the room, how many things are put wrong, and how many moves it may take, by level. */
export const SIZES: Readonly<
  Record<Level, { players: number; faults: number; fewest: number; most: number }>
> = {
  1: { players: 3, faults: 1, fewest: 1, most: 2 },
  2: { players: 4, faults: 2, fewest: 2, most: 3 },
  3: { players: 6, faults: 3, fewest: 3, most: 4 },
};
