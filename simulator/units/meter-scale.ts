import { type Dbfs, dbfs } from './level.ts';

/**
 * The scale of a digital peak meter: at which share of its length which level stands.
 * Source: IEC 60268-18, read in a secondary copy.
 */
const MARKS: readonly (readonly [level: number, share: number])[] = [
  [-60, 0.025],
  [-50, 0.075],
  [-40, 0.15],
  [-30, 0.3],
  [-20, 0.5],
  [-10, 0.75],
  [0, 1],
];

/** The levels that are marked on the scale, in dBFS, lowest first. */
export const METER_MARKS: readonly Dbfs[] = MARKS.map(([level]) => dbfs(level));

/**
 * How far up a digital meter a level stands, as a share of its length: straight lines between the marks of
 * IEC 60268-18. Over full scale it stays at 1. Below the lowest mark it falls on by the slope above it, to
 * nothing; silence is 0.
 */
export function meterShare(level: Dbfs): number {
  const upper = Math.max(
    1,
    MARKS.findIndex(([mark]) => level <= mark),
  );
  if (level >= 0) return 1;
  const [a, b] = [MARKS[upper - 1] ?? [0, 0], MARKS[upper] ?? [0, 1]];
  const share = a[1] + ((level - a[0]) / (b[0] - a[0])) * (b[1] - a[1]);
  return Math.max(0, share);
}
