import { CLOSED, type Db } from './level.ts';

/**
 * The travel of a fader: at which share of it which gain stands.
 *
 * Unity lies at three quarters. The upper three quarters of the travel span 50 dB, the rest falls ever
 * faster and closes at the bottom. Common practice, no source.
 */
const MARKS: readonly (readonly [position: number, gain: number])[] = [
  [0.02, -90],
  [0.1, -60],
  [0.25, -40],
  [0.5, -15],
  [0.75, 0],
  [1, 10],
];

/** The lowest gain that a fader can stand at without being closed, in dB. */
export const FADER_FLOOR = -90 as Db;
/** The highest gain of a fader, in dB. */
export const FADER_TOP = 10 as Db;

/** Gain at a position of the travel (0 is the bottom, 1 the top), in dB. Below 1 % it is closed. */
export function faderGain(position: number): Db {
  const [lowest] = MARKS;
  if (!lowest || position < lowest[0] / 2) return CLOSED;
  if (position <= lowest[0]) return FADER_FLOOR;
  const upper = MARKS.findIndex(([mark]) => position <= mark);
  return upper < 0 ? FADER_TOP : (between(upper, position, 0) as Db);
}

/** Position of a gain on the travel, 0 to 1. Closed is 0; gains beyond the ends stop at the ends. */
export function faderPosition(gain: Db): number {
  if (gain === CLOSED) return 0;
  if (gain <= FADER_FLOOR) return MARKS[0]?.[0] ?? 0;
  const upper = MARKS.findIndex(([, mark]) => gain <= mark);
  return upper < 0 ? 1 : between(upper, gain, 1);
}

/** Reads the straight line between two neighbouring marks: axis 0 is the position, 1 the gain. */
function between(upper: number, value: number, axis: 0 | 1): number {
  const [a, b] = [MARKS[upper - 1] ?? [0, 0], MARKS[upper] ?? [1, 0]];
  const other = axis === 0 ? 1 : 0;
  const share = (value - a[axis]) / (b[axis] - a[axis]);
  return a[other] + share * (b[other] - a[other]);
}
