import type { Hz } from './frequency.ts';
import { NOISE_BANDWIDTH } from './noise.ts';

/**
 * How white noise of {@link NOISE_BANDWIDTH} lies over frequencies that are evenly spaced on a logarithmic
 * axis: power in proportion to frequency, with a mean of 1.
 */
export function whiteOver(grid: readonly Hz[]): Float64Array {
  const shape = Float64Array.from(grid, (hz) => (hz <= NOISE_BANDWIDTH ? hz : 0));
  const mean = shape.reduce((sum, one) => sum + one, 0) / shape.length;
  return shape.map((one) => one / mean);
}
