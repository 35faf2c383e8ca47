import type { Dbu } from '../../simulator/index.ts';

/** An axis of levels in decibels, from its lowest to its highest, with marks between them. All in dBu. */
export interface LevelAxis {
  readonly lowest: number;
  readonly highest: number;
  readonly marks: readonly Dbu[];
}

/**
 * An axis that holds all these levels, from mark to mark. Silence has no place on it.
 *
 * @param zero the level in dBu that marks are counted from: that of 0 dBV where levels are read in dBV or volts.
 * @param step from mark to mark, in dB.
 */
export function levelAxis(levels: readonly number[], zero: number, step: number): LevelAxis {
  const finite = levels.filter(Number.isFinite);
  const [low, high] = finite.length > 0 ? [Math.min(...finite), Math.max(...finite)] : [zero, zero];
  const first = Math.floor((low - zero) / step);
  const last = Math.max(first + 1, Math.ceil((high - zero) / step));
  const marks = Array.from(
    { length: last - first + 1 },
    (_, index) => (zero + (first + index) * step) as Dbu,
  );
  return { lowest: zero + first * step, highest: zero + last * step, marks };
}

/** How far along an axis a level stands, 0 to 1. What is lower or higher stays at the end. */
export const shareAlong = ({ lowest, highest }: LevelAxis, level: number): number =>
  Math.min(1, Math.max(0, (level - lowest) / (highest - lowest)));
