import type { Db, Dbu } from './level.ts';

/** The static curve of a compressor: threshold in dBu, ratio ≥ 1 (`Infinity` limits), knee width in dB ≥ 0. */
export interface CompressionCurve {
  readonly threshold: Dbu;
  readonly ratio: number;
  readonly knee: Db;
}

/**
 * Level that leaves a compressor before make-up, for an RMS level that enters it, both in dBu.
 *
 * The knee is a parabola that meets both straight parts with equal value and slope. Silence stays silence.
 * Source: Giannoulis, Massberg, Reiss, *Digital Dynamic Range Compressor Design*, JAES 60(6), 2012, eq. 4.
 */
export function compressedLevel(curve: CompressionCurve, level: Dbu): Dbu {
  const { threshold, ratio, knee } = curve;
  const over = level - threshold;
  const slope = 1 / ratio - 1;
  if (2 * over <= -knee) return level;
  if (2 * over < knee) return (level + (slope * (over + knee / 2) ** 2) / (2 * knee)) as Dbu;
  return (threshold + over / ratio) as Dbu;
}

/** Gain of a compressor at an input level, before make-up: 0 dB or a loss. */
export const compressionGain = (curve: CompressionCurve, level: Dbu): Db =>
  (level === -Infinity ? 0 : compressedLevel(curve, level) - level) as Db;
