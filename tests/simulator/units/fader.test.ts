import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  FADER_FLOOR,
  FADER_TOP,
  faderGain,
  faderPosition,
} from '../../../simulator/units/fader.ts';
import { CLOSED, db } from '../../../simulator/units/level.ts';

const gain = fc.double({ min: FADER_FLOOR, max: FADER_TOP, noNaN: true }).map(db);
const travel = fc.double({ min: 0, max: 1, noNaN: true });

test.each([
  [0, -Infinity],
  [0.0099, -Infinity],
  [0.01, -90],
  [0.02, -90],
  [0.06, -75],
  [0.25, -40],
  [0.625, -7.5],
  [0.75, 0],
  [0.875, 5],
  [1, 10],
])('faderGain(%d) is %d dB, to 1e-9', (position, expected) => {
  const found = faderGain(position);
  if (expected === -Infinity) expect(found).toBe(CLOSED);
  else expect(found).toBeCloseTo(expected, 9);
});

test.each([
  [-Infinity, 0],
  [-91, 0.02],
  [-90, 0.02],
  [-27.5, 0.375],
  [0, 0.75],
  [10, 1],
  [11, 1],
])('faderPosition(%d dB) is %d of the travel, to 1e-9', (level, expected) => {
  expect(faderPosition(db(level))).toBeCloseTo(expected, 9);
});

describe('the taper', () => {
  test('faderGain(faderPosition(g)) = g from −90 to 10 dB, to 1e-9 dB', () => {
    fc.assert(
      fc.property(gain, (level) => {
        expect(faderGain(faderPosition(level))).toBeCloseTo(level, 9);
      }),
    );
  });

  test('faderPosition(faderGain(p)) = p from 0.02 to 1, to 1e-9', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 1, noNaN: true }), (position) => {
        expect(faderPosition(faderGain(position))).toBeCloseTo(position, 9);
      }),
    );
  });

  test('faderGain() never falls as the fader rises', () => {
    fc.assert(
      fc.property(travel, travel, (one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        expect(faderGain(high)).toBeGreaterThanOrEqual(faderGain(low));
      }),
    );
  });
});
