/** Source: ISO 266 and IEC 61260-1, third-octave centres 1000·10^(n/10). */
import { expect, test } from 'vitest';
import { GRID, THIRD_OCTAVES, thirdOctaveCentre } from '../../simulator/index.ts';

test.each([
  [-17, 19.953],
  [-10, 100],
  [1, 1258.9],
  [13, 19_953],
])('FRQ-1 thirdOctaveCentre(%i) is %f Hz', (band, printed) => {
  expect(thirdOctaveCentre(band)).toBeCloseTo(
    printed,
    printed > 10_000 ? 0 : printed > 1000 ? 1 : 3,
  );
});

test('the bands run from 20 Hz to 20 kHz, and the grid lies within their edges', () => {
  expect(THIRD_OCTAVES).toHaveLength(31);
  const edge = 10 ** 0.05;
  expect(Math.min(...GRID)).toBeGreaterThan(19.953 / edge);
  expect(Math.max(...GRID)).toBeLessThan(19_953 * edge);
});
