import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dbu } from '../../simulator/index.ts';
import { marksOnMeter, meterAxis, shareOnMeter } from '../../src/plot/meter-axis.ts';

/** Source: IEC 60268-18, its scale read in a secondary copy. */
test.each([
  [-40, 0.15],
  [-18, 0.55],
  [0, 1],
])('MTR-2 shareOnMeter(%f dBFS) is %f of the length up to full scale', (level, share) => {
  const axis = meterAxis(dbu(22), [dbu(17)]);
  const whole = shareOnMeter(axis, dbu(22));
  expect(shareOnMeter(axis, dbu(level + 22)) / whole).toBeCloseTo(share, 12);
});

test('shareOnMeter() goes on by 2.5 % for each dB above full scale, 6 dB past a clip level 4 dB above it: 1 / 1.25', () => {
  const axis = meterAxis(dbu(20), [dbu(24), dbu(23)]);
  expect(shareOnMeter(axis, dbu(20))).toBeCloseTo(1 / 1.25, 12);
  expect(shareOnMeter(axis, dbu(22))).toBeCloseTo(1.05 / 1.25, 12);
  expect(shareOnMeter(axis, dbu(30))).toBe(1);
  expect(shareOnMeter(axis, dbu(37))).toBe(1);
});

test('shareOnMeter() never falls as the level rises, and stays between 0 for silence and 1', () => {
  const level = fc.double({ min: -150, max: 60, noNaN: true });
  fc.assert(
    fc.property(level, level, level, (one, other, clip) => {
      const axis = meterAxis(dbu(18), [dbu(clip)]);
      const [low, high] = [Math.min(one, other), Math.max(one, other)];
      const [lower, higher] = [shareOnMeter(axis, dbu(low)), shareOnMeter(axis, dbu(high))];
      expect(lower).toBeLessThanOrEqual(higher);
      expect(lower).toBeGreaterThanOrEqual(0);
      expect(higher).toBeLessThanOrEqual(1);
    }),
  );
  expect(shareOnMeter(meterAxis(dbu(18), []), dbu(-Infinity))).toBe(0);
});

test('marksOnMeter() stand where the alignment puts them: 0 dBFS at +22 dBu, -60 dBFS at -38 dBu', () => {
  const marks = marksOnMeter(meterAxis(dbu(22), []));
  expect([marks.at(0), marks.at(-1)]).toEqual([-38, 22]);
});
