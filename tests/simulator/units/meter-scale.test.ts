import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dbfs, METER_MARKS, meterShare } from '../../../simulator/index.ts';

test('METER_MARKS rise', () => {
  expect(METER_MARKS).toEqual(METER_MARKS.toSorted((a, b) => a - b));
});

test('meterShare() over full scale stays at the end', () => {
  expect(meterShare(dbfs(0.1))).toBe(1);
  expect(meterShare(dbfs(17))).toBe(1);
});

test('meterShare() below the lowest mark falls to nothing: -63 dBFS is 2.5 - 3 · 0.5 = 1 %', () => {
  expect(meterShare(dbfs(-63))).toBeCloseTo(0.01, 12);
  expect(meterShare(dbfs(-65))).toBeCloseTo(0, 12);
  expect(meterShare(dbfs(-90))).toBe(0);
  expect(meterShare(dbfs(-Infinity))).toBe(0);
});

test('meterShare() never falls as the level rises', () => {
  const level = fc.double({ min: -100, max: 20, noNaN: true });
  fc.assert(
    fc.property(level, level, (a, b) => {
      const [low, high] = [Math.min(a, b), Math.max(a, b)];
      expect(meterShare(dbfs(low))).toBeLessThanOrEqual(meterShare(dbfs(high)));
    }),
  );
});
