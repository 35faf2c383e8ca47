import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { dbu } from '../../simulator/index.ts';
import { BRIGHTEST_DBU, brightnessOf, DIMMEST_DBU, levelToLight } from '../../src/drawing/light.ts';
import { hear } from '../text/net-loft.ts';
import { RUNS } from './arbitrary-desk.ts';

const levels = fc.double({ min: -120, max: 40, noNaN: true });
const brightness = (level: number) => Number(brightnessOf(dbu(level)));

test('brightnessOf() silence is 0, and of no level is unknown', () => {
  expect(brightnessOf(dbu(-Infinity))).toBe(0);
  expect(brightnessOf(undefined)).toBe('unknown');
});

test('brightnessOf() never falls as the level rises, and lies between 0 and 1', () => {
  fc.assert(
    fc.property(levels, levels, (one, other) => {
      const [low, high] = [Math.min(one, other), Math.max(one, other)];
      expect(brightness(low)).toBeLessThanOrEqual(brightness(high));
      expect(brightness(low)).toBeGreaterThan(0);
      expect(brightness(high)).toBeLessThanOrEqual(1);
    }),
    RUNS,
  );
});

test('brightnessOf() tells levels of a working desk apart: each 6 dB from −30 to +6 dBu', () => {
  const steps = [-30, -24, -18, -12, -6, 0, 6].map(brightness);
  const rises = steps.slice(1).map((value, index) => value - (steps[index] ?? value));
  expect(Math.min(...rises)).toBeGreaterThan(0.02);
});

test('brightnessOf() stands still below the dimmest and above the brightest level', () => {
  expect(brightness(DIMMEST_DBU - 37)).toBe(brightness(DIMMEST_DBU));
  expect(brightness(BRIGHTEST_DBU)).toBe(1);
  expect(brightness(BRIGHTEST_DBU + 9)).toBe(1);
});

test('levelToLight() is that of the followed source, or of all: −18 + 22 = 4 dBu, and more', () => {
  const { solution } = hear();
  expect(levelToLight(solution, 'out.capture', 'bass')).toBeCloseTo(4, 9);
  expect(levelToLight(solution, 'desk.ch8.in', undefined)).toBeCloseTo(4, 9);
  expect(levelToLight(solution, 'desk.ch8.in', 'cello')).toBe(-Infinity);
  expect(Number(levelToLight(solution, 'out.capture', undefined))).toBeGreaterThan(4);
});
