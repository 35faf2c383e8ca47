import fc from 'fast-check';
import { expect, test } from 'vitest';
import { levelAxis } from '../../src/plot/level-axis.ts';
import { staircase } from '../../src/plot/staircase.ts';

const AXIS = levelAxis([-80, 20], 0, 20);
const SIZE = { width: 500, row: 30 };

test('staircase() stands in each row at its level: -30 dBu of -80 to +20 is half of 500', () => {
  expect(staircase([-30, 20, -Infinity], AXIS, SIZE)).toEqual([
    [
      [250, 0],
      [250, 30],
      [500, 30],
      [500, 60],
      [0, 60],
      [0, 90],
    ],
  ]);
});

test('staircase() breaks off where there is no level, and goes on after it', () => {
  const pieces = staircase([-30, undefined, undefined, 20], AXIS, SIZE);
  expect(pieces.map((piece) => piece.map(([, down]) => down))).toEqual([
    [0, 30],
    [90, 120],
  ]);
});

test('staircase() only ever goes straight across or straight down, and never up', () => {
  const level = fc.option(fc.double({ min: -150, max: 60, noNaN: true }), { nil: undefined });
  fc.assert(
    fc.property(fc.array(level, { maxLength: 20 }), (levels) => {
      const pieces = staircase(levels, AXIS, SIZE);
      expect(pieces.flat()).toHaveLength(2 * levels.filter((one) => one !== undefined).length);
      for (const piece of pieces) {
        piece.slice(1).forEach(([across, down], index) => {
          const [acrossBefore = NaN, downBefore = NaN] = piece[index] ?? [];
          expect(across === acrossBefore || down === downBefore).toBe(true);
          expect(down).toBeGreaterThanOrEqual(downBefore);
        });
      }
    }),
  );
});
