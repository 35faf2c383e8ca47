import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compressedLevel, compressionGain } from '../../../simulator/units/compression.ts';
import { db, dbu } from '../../../simulator/units/level.ts';

const curve = fc.record({
  threshold: fc.double({ min: -40, max: 20, noNaN: true }).map(dbu),
  ratio: fc.oneof(fc.double({ min: 1, max: 20, noNaN: true }), fc.constant(Infinity)),
  knee: fc.double({ min: 0, max: 24, noNaN: true }).map(db),
});
const level = fc.double({ min: -120, max: 60, noNaN: true }).map(dbu);

describe('compressedLevel()', () => {
  const hard = { threshold: dbu(-10), ratio: 4, knee: db(0) };
  test.each([
    [-30, -30],
    [-10, -10],
    [-2, -8],
    [14, -4],
  ])('hard knee, −10 + (x + 10) / 4: %d dBu gives %d dBu', (input, output) => {
    expect(compressedLevel(hard, dbu(input))).toBeCloseTo(output, 9);
  });

  test('soft knee of 8 dB at its middle: −10 − 0.75 · 4² / 16 = −10.75 dBu', () => {
    expect(compressedLevel({ ...hard, knee: db(8) }, dbu(-10))).toBeCloseTo(-10.75, 9);
  });

  test('a ratio of ∞ holds the threshold: 17 dBu gives −10 dBu', () => {
    expect(compressedLevel({ ...hard, ratio: Infinity }, dbu(17))).toBe(-10);
  });

  test('silence stays silence, and its gain is 0 dB', () => {
    expect(compressedLevel(hard, dbu(-Infinity))).toBe(-Infinity);
    expect(compressionGain(hard, dbu(-Infinity))).toBe(0);
  });

  test('never falls as the input rises, and never amplifies, to 1e-9 dB', () => {
    fc.assert(
      fc.property(curve, level, level, (shape, one, other) => {
        const [low, high] = [dbu(Math.min(one, other)), dbu(Math.max(one, other))];
        expect(compressedLevel(shape, high)).toBeGreaterThanOrEqual(
          compressedLevel(shape, low) - 1e-9,
        );
        expect(compressionGain(shape, one)).toBeLessThanOrEqual(1e-9);
      }),
    );
  });

  test('does not jump at the ends of its knee, to 1e-4 dB across 2e-6 dB', () => {
    fc.assert(
      fc.property(curve, fc.constantFrom(-1, 1), (shape, side) => {
        const end = shape.threshold + (side * shape.knee) / 2;
        const [before, after] = [dbu(end - 1e-6), dbu(end + 1e-6)];
        expect(compressedLevel(shape, after) - compressedLevel(shape, before)).toBeLessThan(1e-4);
      }),
    );
  });
});
