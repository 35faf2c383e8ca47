import { type Level, levelAt, levelOf, type Solution } from '../../simulator/index.ts';

/** Below this level, in dBu, a wire counts as carrying next to nothing; above the upper one it is as bright as it gets. */
export const DIMMEST_DBU = -40;
export const BRIGHTEST_DBU = 10;

/** How a wire looks: 0 is unlit, 1 as bright and thick as it gets; `unknown` where an unstable loop reaches. */
export type Brightness = number | 'unknown';

/**
 * Brightness of a level: by the square of where its dB lie between the dimmest and the brightest, so that
 * usual levels are told apart. Silence is 0.
 */
export function brightnessOf(level: Level): Brightness {
  if (level === undefined) return 'unknown';
  if (level === -Infinity) return 0;
  const share = (level - DIMMEST_DBU) / (BRIGHTEST_DBU - DIMMEST_DBU);
  return Math.min(1, Math.max(0.04, share)) ** 2;
}

/** Level of the followed source at a place, or of all sources together when none is followed. */
export const levelToLight = (
  solution: Solution,
  place: string,
  follow: string | undefined,
): Level => (follow === undefined ? levelAt(solution, place) : levelOf(solution, follow, place));
