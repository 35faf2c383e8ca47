import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  fewestFor,
  partsOf,
  Strategy,
  type Test,
} from '../../../../simulator/puzzle/hunt/strategy.ts';

/** Tests of suspects, with as many that single out one as it takes to part all. */
const matrices = fc.integer({ min: 1, max: 7 }).chain((count) =>
  fc
    .array(fc.array(fc.integer({ min: 0, max: 2 }), { minLength: count, maxLength: count }), {
      maxLength: 4,
    })
    .map((tests) => {
      const single = Array.from({ length: count - 1 }, (_, one) =>
        Array.from({ length: count }, (_unused, suspect) => (suspect === one ? 1 : 0)),
      );
      return { count, tests: [...tests, ...single] };
    }),
);

const everyone = (count: number) => Array.from({ length: count }, (_, suspect) => suspect);

/** The fewest tests in the worst case, by trying everything, without any bound or memory. */
function byTryingAll(tests: readonly Test[], fitting: readonly number[]): number {
  if (fitting.length < 2) return 0;
  let fewest = Infinity;
  for (const outcomes of tests) {
    const seen = new Set(fitting.map((suspect) => outcomes[suspect]));
    if (seen.size < 2) continue;
    const worst = Math.max(
      ...[...seen].map((outcome) =>
        byTryingAll(
          tests,
          fitting.filter((suspect) => outcomes[suspect] === outcome),
        ),
      ),
    );
    fewest = Math.min(fewest, 1 + worst);
  }
  return fewest;
}

describe('Strategy', () => {
  test('needs as few tests as trying everything finds', () => {
    fc.assert(
      fc.property(matrices, ({ count, tests }) => {
        const strategy = new Strategy(tests, count);
        expect(strategy.isExact).toBe(true);
        expect(strategy.worstOf(everyone(count))).toBe(byTryingAll(tests, everyone(count)));
      }),
      { numRuns: 60 },
    );
  });

  test('needs at least the logarithm, and at most one test less than there are suspects', () => {
    fc.assert(
      fc.property(matrices, ({ count, tests }) => {
        const worst = new Strategy(tests, count).worstOf(everyone(count));
        const outcomes = Math.max(...tests.map((one) => new Set(one).size), 2);
        expect(worst).toBeGreaterThanOrEqual(
          Math.ceil(Math.log(count) / Math.log(outcomes) - 1e-9),
        );
        expect(worst).toBeLessThanOrEqual(Math.max(0, count - 1));
      }),
    );
  });

  test('finds each suspect within what it promises', () => {
    fc.assert(
      fc.property(matrices, ({ count, tests }) => {
        const strategy = new Strategy(tests, count);
        for (const guilty of everyone(count)) {
          let fitting: readonly number[] = everyone(count);
          let made = 0;
          for (let step = strategy.bestFor(fitting); step; step = strategy.bestFor(fitting)) {
            const outcomes = tests[step.test] ?? [];
            fitting = fitting.filter((suspect) => outcomes[suspect] === outcomes[guilty]);
            made += 1;
          }
          expect(fitting).toEqual([guilty]);
          expect(made).toBeLessThanOrEqual(strategy.worstOf(everyone(count)));
        }
      }),
    );
  });

  test('splits as evenly as it can, and says so, where trying all takes too long', () => {
    // All ways to split 22 suspects in two that differ: far more sets than the search looks at.
    const count = 22;
    const tests = Array.from({ length: 300 }, (_, seed) =>
      everyone(count).map((suspect) => ((suspect * 2654435761 + seed * 40503) >>> (seed % 13)) & 1),
    );
    const strategy = new Strategy(tests, count);
    const worst = strategy.worstOf(everyone(count));
    expect(worst).toBeGreaterThanOrEqual(5);
    expect(worst).toBeLessThanOrEqual(count - 1);
  });

  test('worstAfter() counts the test itself', () => {
    // A chain of four: each test says whether it is behind a place.
    const chain = [
      [0, 1, 1, 1],
      [0, 0, 1, 1],
      [0, 0, 0, 1],
    ];
    const strategy = new Strategy(chain, 4);
    expect(strategy.bestFor(everyone(4))).toEqual({ test: 1, worst: 2 });
    expect(strategy.worstAfter(1, everyone(4))).toBe(2);
    expect(strategy.worstAfter(0, everyone(4))).toBe(3);
  });

  test('refuses suspects that no test parts', () => {
    expect(() => new Strategy([[0, 0]], 2)).toThrow('Expected a test that parts suspects 0, 1');
  });
});

test('fewestFor() is the logarithm, rounded up', () => {
  expect([1, 2, 3, 4, 5, 8, 9, 17].map((count) => fewestFor(count, 2))).toEqual([
    0, 1, 2, 2, 3, 3, 4, 5,
  ]);
  expect(fewestFor(9, 3)).toBe(2);
});

test('partsOf() keeps together what has one outcome', () => {
  expect(partsOf([0, 2, 3], [7, 7, 8, 7])).toEqual([[0, 3], [2]]);
});
