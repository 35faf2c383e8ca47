import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { balance, PAN_LAWS, panMono, panStereo } from '../../../simulator/units/pan.ts';

const position = fc.double({ min: -1, max: 1, noNaN: true });

describe('panMono()', () => {
  test('equal-power: left² + right² = 1 at every position, to 1e-12', () => {
    fc.assert(
      fc.property(position, (at) => {
        const { left, right } = panMono('equal-power', at);
        expect(left ** 2 + right ** 2).toBeCloseTo(1, 12);
      }),
    );
  });

  test('linear: left + right = 1 at every position, to 1e-12', () => {
    fc.assert(
      fc.property(position, (at) => {
        const { left, right } = panMono('linear', at);
        expect(left + right).toBeCloseTo(1, 12);
      }),
    );
  });

  test('compromise: each side² is the product of the other two laws, to 1e-12', () => {
    fc.assert(
      fc.property(position, (at) => {
        const [power, linear] = [panMono('equal-power', at), panMono('linear', at)];
        const { left, right } = panMono('compromise', at);
        expect(left ** 2).toBeCloseTo(power.left * linear.left, 12);
        expect(right ** 2).toBeCloseTo(power.right * linear.right, 12);
      }),
    );
  });

  describe.each(PAN_LAWS)('%s', (law) => {
    test('is mirrored: the left at p is the right at −p, to 1e-12', () => {
      fc.assert(
        fc.property(position, (at) => {
          expect(panMono(law, at).left).toBeCloseTo(panMono(law, -at).right, 12);
        }),
      );
    });

    test('is exact at its ends: −1 gives 1 and 0, 1 gives 0 and 1', () => {
      expect(panMono(law, -1)).toEqual({ left: 1, right: 0 });
      expect(panMono(law, 1)).toEqual({ left: 0, right: 1 });
    });

    test('never falls on the side that it is turned to', () => {
      fc.assert(
        fc.property(position, position, (one, other) => {
          const [low, high] = [Math.min(one, other), Math.max(one, other)];
          expect(panMono(law, high).right).toBeGreaterThanOrEqual(panMono(law, low).right);
          expect(panMono(law, high).left).toBeLessThanOrEqual(panMono(law, low).left);
        }),
      );
    });

    test.each([-1.01, 1.01, Number.NaN, Infinity])('refuses position %d', (at) => {
      expect(() => panMono(law, at)).toThrow(RangeError);
    });
  });
});

describe('panStereo()', () => {
  test('passes both sides as they are at the centre', () => {
    expect(panStereo(0)).toEqual({
      leftToLeft: 1,
      leftToRight: 0,
      rightToLeft: 0,
      rightToRight: 1,
    });
  });

  test('folds all into the side of an end: −1 left only, 1 right only', () => {
    const { leftToRight, rightToRight } = panStereo(-1);
    expect([leftToRight, rightToRight]).toEqual([0, 0]);
    const { leftToLeft, rightToLeft } = panStereo(1);
    expect([leftToLeft, rightToLeft]).toEqual([0, 0]);
  });

  test('keeps the power of each input: Σ ratio² = 1 for either side, to 1e-12', () => {
    fc.assert(
      fc.property(position, (at) => {
        const { leftToLeft, leftToRight, rightToLeft, rightToRight } = panStereo(at);
        expect(leftToLeft ** 2 + leftToRight ** 2).toBeCloseTo(1, 12);
        expect(rightToLeft ** 2 + rightToRight ** 2).toBeCloseTo(1, 12);
      }),
    );
  });

  test('is mirrored: left at p is right at −p, to 1e-12', () => {
    fc.assert(
      fc.property(position, (at) => {
        const [here, there] = [panStereo(at), panStereo(-at)];
        expect(here.leftToLeft).toBeCloseTo(there.rightToRight, 12);
        expect(here.leftToRight).toBeCloseTo(there.rightToLeft, 12);
      }),
    );
  });
});

describe('balance()', () => {
  test('leaves both sides alone at the centre, and closes the far one at an end', () => {
    expect(balance(0)).toEqual({ left: 1, right: 1 });
    expect(balance(-1)).toEqual({ left: 1, right: 0 });
    expect(balance(1)).toEqual({ left: 0, right: 1 });
  });

  test('leaves the near side at 1 and turns the far one down by cos(|p|·π/2), to 1e-12', () => {
    fc.assert(
      fc.property(position, (at) => {
        const { left, right } = balance(at);
        expect(Math.max(left, right)).toBe(1);
        expect(Math.min(left, right)).toBeCloseTo(Math.cos((Math.abs(at) * Math.PI) / 2), 12);
      }),
    );
  });
});
