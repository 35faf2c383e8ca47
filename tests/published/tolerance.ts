import { expect } from 'vitest';

/** How far a level or gain may be off where nothing but gains and sums is on the way, in dB. */
export const LINEAR_DB = 0.0001;
/** How far a figure printed with two decimals may be off by its rounding. */
export const TWO_DECIMALS = 0.005;
/** How far a figure printed with three decimals may be off by its rounding. */
export const THREE_DECIMALS = 0.0005;
/** How far a voltage or ratio may be off, as it is given with six decimals. */
export const SIX_DECIMALS = 0.000001;

/** Holds a number against a known one. A missing level (`undefined`) and NaN are never near. */
export function expectNear(
  actual: number | undefined,
  expected: number,
  tolerance: number = LINEAR_DB,
): void {
  const distance = Math.abs((actual ?? Number.NaN) - expected);
  expect(distance, `${actual} against ${expected}`).toBeLessThanOrEqual(tolerance);
}
