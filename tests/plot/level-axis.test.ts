import fc from 'fast-check';
import { expect, test } from 'vitest';
import { levelAxis, shareAlong } from '../../src/plot/level-axis.ts';

const level = fc.double({ min: -150, max: 60, noNaN: true });
const step = fc.constantFrom(5, 10, 20);

test('levelAxis() of -93 and 24 by 20 counts from 0: -100 to +40, 8 marks', () => {
  const { lowest, highest, marks } = levelAxis([24, -93], 0, 20);
  expect([lowest, highest]).toEqual([-100, 40]);
  expect(marks).toHaveLength(8);
});

test('levelAxis() of nothing but silence is one step long, and silence stands at its lower end', () => {
  const axis = levelAxis([-Infinity], 3, 10);
  expect([axis.lowest, axis.highest]).toEqual([3, 13]);
  expect(shareAlong(axis, -Infinity)).toBe(0);
});

test('levelAxis() holds every level, ends within a step of the outermost, and marks lie a step apart', () => {
  fc.assert(
    fc.property(
      fc.array(level, { minLength: 1, maxLength: 9 }),
      level,
      step,
      (levels, zero, by) => {
        const { lowest, highest, marks } = levelAxis(levels, zero, by);
        expect(Math.min(...levels)).toBeGreaterThanOrEqual(lowest - 1e-9);
        expect(Math.max(...levels)).toBeLessThanOrEqual(highest + 1e-9);
        expect(highest - Math.max(...levels)).toBeLessThanOrEqual(by + 1e-9);
        marks.forEach((mark, index) => {
          expect(mark).toBeCloseTo(lowest + index * by, 9);
        });
      },
    ),
  );
});

test('shareAlong() rises with the level, from 0 at the lowest to 1 at the highest', () => {
  fc.assert(
    fc.property(level, level, (one, other) => {
      const axis = levelAxis([-60, 20], 0, 20);
      if (one <= other) expect(shareAlong(axis, one)).toBeLessThanOrEqual(shareAlong(axis, other));
    }),
  );
  expect(shareAlong(levelAxis([-60, 20], 0, 20), -40)).toBeCloseTo(0.25, 12);
});
