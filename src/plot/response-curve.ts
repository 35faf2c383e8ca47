import {
  type Address,
  type Hz,
  response,
  type Solution,
  THIRD_OCTAVES,
  thirdOctaveCentre,
} from '../../simulator/index.ts';
import type { ResponsePoint } from '../text/index.ts';

/** A response to draw: its line, the points that gain and lose most, and a figure for each third of an octave. */
export interface ResponseCurve {
  /** Over the whole range, in the order of frequencies. */
  readonly line: readonly ResponsePoint[];
  readonly most: ResponsePoint;
  readonly least: ResponsePoint;
  /** At the centres of the bands of ISO 266. */
  readonly thirds: readonly ResponsePoint[];
}

export const [LOWEST_HZ, HIGHEST_HZ] = [20, 20_000];
const STEPS = 1200;
const LINE: readonly Hz[] = Array.from(
  { length: STEPS + 1 },
  (_, step) => (LOWEST_HZ * (HIGHEST_HZ / LOWEST_HZ) ** (step / STEPS)) as Hz,
);
const THIRDS: readonly Hz[] = THIRD_OCTAVES.map(thirdOctaveCentre);
/** A response that moves by less, in dB, is flat: nothing to draw. */
const FLAT_DB = 0.05;

/**
 * The response of a source at a place. Nothing where an unstable loop leaves no level, nothing arrives, or all
 * frequencies are alike.
 */
export function responseCurve(
  solution: Solution,
  source: string,
  place: Address,
): ResponseCurve | undefined {
  const gains = response(solution, source, place, [...LINE, ...THIRDS]);
  if (!gains) return undefined;
  const points = gains.map((gain, index) => ({
    frequency: LINE[index] ?? THIRDS[index - LINE.length] ?? LOWEST_HZ,
    gain,
  }));
  const line = points.slice(0, LINE.length);
  const most = line.reduce((best, point) => (point.gain > best.gain ? point : best));
  const least = line.reduce((worst, point) => (point.gain < worst.gain ? point : worst));
  if (most.gain === -Infinity || most.gain - least.gain < FLAT_DB) return undefined;
  return { line, most, least, thirds: points.slice(LINE.length) };
}

/** How far along the axis of frequencies one stands, 0 to 1: by its logarithm. */
export const shareOfFrequency = (frequency: number): number =>
  Math.log(frequency / LOWEST_HZ) / Math.log(HIGHEST_HZ / LOWEST_HZ);
