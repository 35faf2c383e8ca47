import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solveFeedback, spectralRadius, zeros } from '../../../simulator/solve/matrix.ts';

const matrix = (...rows: number[][]) => rows.map((row) => Float64Array.from(row));

describe('solveFeedback()', () => {
  test('of nothing that feeds back is what comes in', () => {
    expect(solveFeedback(zeros(2), matrix([3, 5], [7, 11]))).toEqual(matrix([3, 5], [7, 11]));
  });

  test('of one stage that feeds itself by 0.75: 2 / (1 − 0.75) = 8', () => {
    expect(solveFeedback(matrix([0.75]), matrix([2]))).toEqual(matrix([8]));
  });

  test('needs pivots: A = [[1, 2], [3, 1]], b = [−4, −9] gives x = [3, 2]', () => {
    expect(solveFeedback(matrix([1, 2], [3, 1]), matrix([-4], [-9]))).toEqual(matrix([3], [2]));
  });

  test('leaves what it was given as it was', () => {
    const [a, sides] = [matrix([0.5, 0.25], [0.125, 0]), matrix([1], [2])];
    solveFeedback(a, sides);
    expect([a, sides]).toEqual([matrix([0.5, 0.25], [0.125, 0]), matrix([1], [2])]);
  });

  test('x − A x = b for random A with rows below 1, to 1e-9', () => {
    const size = 5;
    const row = fc.array(fc.double({ min: -0.19, max: 0.19, noNaN: true }), {
      minLength: size,
      maxLength: size,
    });
    const square = fc.array(row, { minLength: size, maxLength: size });
    fc.assert(
      fc.property(square, row, (rows, side) => {
        const x = solveFeedback(
          matrix(...rows),
          side.map((value) => Float64Array.of(value)),
        );
        rows.forEach((line, index) => {
          const fed = line.reduce((sum, ratio, column) => sum + ratio * (x[column]?.[0] ?? 0), 0);
          expect((x[index]?.[0] ?? 0) - fed).toBeCloseTo(side[index] ?? 0, 9);
        });
      }),
    );
  });
});

describe('spectralRadius()', () => {
  test.each<[string, number[][], number]>([
    ['nothing', [], 0],
    ['a number', [[-0.7]], 0.7],
    [
      'what only goes forward',
      [
        [0, 5, 9],
        [0, 0, 8],
        [0, 0, 0],
      ],
      0,
    ],
    [
      'a plain ring: ∛(0.5 · 2 · 0.729) = 0.9',
      [
        [0, 0, 0.729],
        [0.5, 0, 0],
        [0, 2, 0],
      ],
      0.9,
    ],
    [
      'a turn: a pair of complex eigenvalues, √(0.6² + 0.8²) = 1',
      [
        [0.6, -0.8],
        [0.8, 0.6],
      ],
      1,
    ],
    [
      'one that is not symmetric: eigenvalues 5 and −2',
      [
        [1, 4],
        [3, 2],
      ],
      5,
    ],
    [
      'very small ones',
      [
        [3e-9, 0],
        [0, 2e-9],
      ],
      3e-9,
    ],
    [
      'two ways that cancel',
      [
        [0.5, 0.5],
        [-0.5, -0.5],
      ],
      0,
    ],
  ])('of %s', (_name, rows, expected) => {
    expect(spectralRadius(matrix(...rows))).toBeCloseTo(expected, 11);
    // Held against a limit it lies on the same side of it.
    expect(spectralRadius(matrix(...rows), expected * 1.01 + 1e-12)).toBeLessThan(
      expected * 1.01 + 1e-12,
    );
    if (expected > 0) {
      expect(spectralRadius(matrix(...rows), expected * 0.99)).toBeGreaterThan(expected * 0.99);
    }
  });
});
