/** Source: IEC 60268-18, peak programme level meters, digital; its scale read in a secondary copy. */
import { expect, test } from 'vitest';
import { dbfs, METER_MARKS, meterShare } from '../../simulator/index.ts';

test.each([
  [-60, 2.5],
  [-50, 7.5],
  [-40, 15],
  [-30, 30],
  [-20, 50],
  [-10, 75],
  [0, 100],
])('MTR-2 meterShare(%f dBFS) is %f %% of the scale', (level, percent) => {
  expect(100 * meterShare(dbfs(level))).toBeCloseTo(percent, 9);
  expect(METER_MARKS).toContain(level);
});

test('MTR-2 meterShare() is linear between the marks: -18 dBFS is 50 + 25 · 2/10 = 55 %', () => {
  expect(100 * meterShare(dbfs(-18))).toBeCloseTo(55, 9);
});
