import { describe, expect, test } from 'vitest';
import { hasRing, strongestRing } from '../../../simulator/solve/ring.ts';
import { circuitOf } from './parts.ts';

const unity = () => 1;

describe('strongestRing()', () => {
  const two = circuitOf(4, [
    [0, 1, 0.5],
    [1, 0, 0.4],
    [1, 2, -0.9],
    [2, 3, 0.8],
    [3, 1, 0.7],
  ]);

  test('finds the ring with the higher gain: 0.9 · 0.8 · 0.7 = 0.504 against 0.5 · 0.4 = 0.2', () => {
    const { ring, ratio } = strongestRing(two, [0, 1, 2, 3], unity);
    expect(ratio).toBeCloseTo(0.504, 12);
    expect([...ring].sort()).toEqual([1, 2, 3]);
  });

  test('lists its stages in signal order', () => {
    const { ring } = strongestRing(two, [0, 1, 2, 3], unity);
    const start = ring.indexOf(1);
    expect([...ring.slice(start), ...ring.slice(0, start)]).toEqual([1, 2, 3]);
  });

  test('counts the gain of a stage itself: with 0.3 at stage 2, 0.1512 is the weaker one', () => {
    const { ring, ratio } = strongestRing(two, [0, 1, 2, 3], (stage) => (stage === 2 ? 0.3 : 1));
    expect(ratio).toBeCloseTo(0.2, 12);
    expect([...ring].sort()).toEqual([0, 1]);
  });

  test('finds a stage that feeds itself', () => {
    expect(strongestRing(circuitOf(1, [[0, 0, -0.6]]), [0], unity)).toEqual({
      ring: [0],
      ratio: 0.6,
    });
  });

  test('comes to an end where everything feeds everything: 14 stages', () => {
    const all = Array.from({ length: 14 }, (_, stage) => stage);
    const wires = all.flatMap((from) => all.map((to): [number, number, number] => [from, to, 0.9]));
    expect(strongestRing(circuitOf(14, wires), all, unity).ratio).toBeCloseTo(0.9, 12);
  });
});

describe('hasRing()', () => {
  test.each<[string, [number, number, number?][], boolean]>([
    [
      'a chain',
      [
        [0, 1],
        [1, 2],
      ],
      false,
    ],
    [
      'a ring',
      [
        [0, 1],
        [1, 2],
        [2, 0],
      ],
      true,
    ],
    [
      'a ring with a closed wire',
      [
        [0, 1],
        [1, 2],
        [2, 0, 0],
      ],
      false,
    ],
    [
      'a stage that feeds itself',
      [
        [0, 1],
        [1, 1],
      ],
      true,
    ],
    [
      'two ways that meet',
      [
        [0, 1],
        [0, 2],
        [1, 2],
      ],
      false,
    ],
  ])('%s', (_name, wires, expected) => {
    expect(hasRing(circuitOf(3, wires), [0, 1, 2])).toBe(expected);
  });
});
