import type { Symptom } from './complaint.ts';
import type { FaultKind } from './fault.ts';

/**
 * What a working setup makes use of: sends from some strips, a subgroup for a few of them, a device in the insert of a
 * strip, and one in the insert of the subgroup with a strip that goes to the main bus as well.
 */
export type Use = 'sends' | 'subgroup' | 'insert' | 'parallel';

/** How hard a hunt is: what can be wrong, how the desk is used, and how many suspects there are. */
export interface HuntLevel {
  readonly kinds: readonly FaultKind[];
  /** What the client may complain of; anything when left out. */
  readonly symptoms?: readonly Symptom[];
  /** What is in use besides strips and the main bus. */
  readonly uses: readonly Use[];
  /** How many suspects a hunt has, at least and at most. */
  readonly suspects: readonly [fewest: number, most: number];
}

const CONTROLS: readonly FaultKind[] = ['muted', 'closed', 'unassigned', 'unplugged'];

/** The levels of hunts, from 1 on. */
export const HUNT_LEVELS: readonly HuntLevel[] = [
  // One strip after the other, and something is dead.
  {
    kinds: ['dead'],
    symptoms: ['silent'],
    uses: [],
    suspects: [4, 12],
  },
  // The same with a subgroup and controls that may stand wrong.
  {
    kinds: ['dead', ...CONTROLS],
    uses: ['subgroup'],
    suspects: [6, 16],
  },
  // Sends and their taps, and what is weak rather than dead.
  {
    kinds: ['dead', 'weak', 'tap', ...CONTROLS],
    uses: ['sends', 'subgroup'],
    suspects: [5, 20],
  },
  // An insert on top: normals that are broken, returns that are not there.
  {
    kinds: ['dead', 'weak', 'tap', 'open-plug', ...CONTROLS],
    uses: ['sends', 'subgroup', 'insert'],
    suspects: [8, 24],
  },
  // All that can go wrong: stray feeds, crossed cords, inverted ones.
  {
    kinds: [
      'dead',
      'weak',
      'inverted',
      'tap',
      'open-plug',
      'stray',
      'polarity',
      'crossed',
      ...CONTROLS,
    ],
    uses: ['sends', 'subgroup', 'insert', 'parallel'],
    suspects: [3, 30],
  },
];

/** The level of a number. @throws RangeError when there is none. */
export function huntLevel(level: number): HuntLevel {
  const found = HUNT_LEVELS[level - 1];
  if (found) return found;
  throw new RangeError(`Expected a level from 1 to ${HUNT_LEVELS.length}, but got ${level}.`);
}
