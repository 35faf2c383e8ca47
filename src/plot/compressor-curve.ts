import { type CompressionCurve, compressedLevel, type Dbu } from '../../simulator/index.ts';

/** A level that comes to a compressor, and the one that leaves it before make-up; in dBu. */
export interface CurvePoint {
  readonly into: Dbu;
  readonly out: Dbu;
}

/** Points of a knee between its ends. */
const KNEE_STEPS = 24;

/** The static curve between two levels in dBu: straight parts by their ends, the knee by points close together. */
export function curvePoints(curve: CompressionCurve, from: number, to: number): CurvePoint[] {
  const { threshold, knee } = curve;
  const kneeStart = threshold - knee / 2;
  const bends = Array.from(
    { length: KNEE_STEPS + 1 },
    (_, step) => kneeStart + (knee * step) / KNEE_STEPS,
  ).filter((level) => level > from && level < to);
  return [from, ...new Set(bends), to].map((level) => pointAt(curve, level));
}

/** Where a level stands on the curve. */
export const pointAt = (curve: CompressionCurve, level: number): CurvePoint => ({
  into: level as Dbu,
  out: compressedLevel(curve, level as Dbu),
});
