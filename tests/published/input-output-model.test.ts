/**
 * Source: textbook exercise on the open input–output model, x = Ax + b with
 * A = [[0, 0.5], [0.6, 0.2]] and b = [50, 30]: x = [110, 120]. The spectral radius is computed.
 */
import { describe, expect, test } from 'vitest';
import {
  type ControlValue,
  dbu,
  levelAt,
  levelOf,
  simulate,
  voltsOf,
} from '../../simulator/index.ts';
import { solveFeedback, spectralRadius } from '../../simulator/solve/matrix.ts';
import { setUp } from './rig-builder.ts';
import { expectNear, SIX_DECIMALS } from './tolerance.ts';

const inDb = (ratio: number) => 20 * Math.log10(ratio);
/** Level of a voltage, in dBFS of a converter at +24 dBu. */
const dbfsOfVolts = (volts: number) => inDb(volts / Math.sqrt(0.6)) - 24;

type Ratios = readonly [readonly [number, number], readonly [number, number]];

/** Two auxes that feed each other and themselves: aux i goes to aux j by the ratio in row j, column i. */
function coupled(
  [[a11, a12], [a21, a22]]: Ratios,
  levels: readonly number[],
  board: Record<string, ControlValue>,
) {
  return simulate(
    setUp({
      levels,
      strips: 4,
      auxes: ['post', 'pre'],
      board: {
        ...board,
        'desk.ch3.in': 'desk.aux1.out',
        'desk.ch3.aux1': inDb(a11),
        'desk.ch3.aux2': inDb(a21),
        'desk.ch4.in': 'desk.aux2.out',
        'desk.ch4.aux1': inDb(a12),
        'desk.ch4.aux2': inDb(a22),
      },
    }),
  );
}

const A = [
  [0, 0.5],
  [0.6, 0.2],
] as const;

describe('LOOP-3', () => {
  test('levelOf() one signal brought in as 0.50 and 0.30 V stands at 1.10 and 1.20 V', () => {
    const board = { 'desk.ch1.aux1': 0, 'desk.ch1.aux2': inDb(0.3 / 0.5) };
    const solution = coupled(A, [dbfsOfVolts(0.5)], board);
    const volts = (place: string) => voltsOf(levelOf(solution, 't1', place) ?? dbu(-999));
    expectNear(volts('desk.aux1.out'), 1.1, SIX_DECIMALS);
    expectNear(volts('desk.aux2.out'), 1.2, SIX_DECIMALS);
    expect(solution.loops).toHaveLength(1);
    expect(solution.loops[0]?.stable).toBe(true);
    // Of the two rings 0.5 · 0.6 = 0.3 and 0.2, the first is the stronger.
    expectNear(solution.loops[0]?.gain, inDb(0.3));
  });

  test('levelOf() two signals, 0.50 V and 0.30 V: each by (I - A)⁻¹ = [[1.6, 1], [1.2, 2]]', () => {
    const board = { 'desk.ch1.aux1': 0, 'desk.ch2.aux2': 0 };
    const solution = coupled(A, [dbfsOfVolts(0.5), dbfsOfVolts(0.3)], board);
    const volts = (track: string, place: string) =>
      voltsOf(levelOf(solution, track, place) ?? dbu(-999));
    expectNear(volts('t1', 'desk.aux1.out'), 0.8, SIX_DECIMALS);
    expectNear(volts('t2', 'desk.aux1.out'), 0.3, SIX_DECIMALS);
    expectNear(volts('t1', 'desk.aux2.out'), 0.6, SIX_DECIMALS);
    expectNear(volts('t2', 'desk.aux2.out'), 0.6, SIX_DECIMALS);
    const total = voltsOf(levelAt(solution, 'desk.aux1.out') ?? dbu(-999));
    expectNear(total, Math.sqrt(0.8 ** 2 + 0.3 ** 2), SIX_DECIMALS);
  });

  test('solveFeedback() x = [110, 120], and one side does not disturb another', () => {
    const matrix = A.map((row) => Float64Array.from(row));
    const solved = solveFeedback(matrix, [Float64Array.of(50, 1), Float64Array.of(30, 0)]);
    expectNear(solved[0]?.[0], 110, SIX_DECIMALS);
    expectNear(solved[1]?.[0], 120, SIX_DECIMALS);
    expectNear(solved[0]?.[1], 1.6, SIX_DECIMALS);
    expectNear(solved[1]?.[1], 1.2, SIX_DECIMALS);
  });

  test('spectralRadius() of A is 0.1 + √0.31 = 0.65678', () => {
    const radius = spectralRadius(A.map((row) => Float64Array.from(row)));
    expectNear(radius, 0.1 + Math.sqrt(0.31), SIX_DECIMALS);
    expectNear(radius, 0.65678, 0.000005);
  });

  test('levelAt() every ring below unity, and yet unstable: 0.55 + √(0.7 · 0.8) > 1', () => {
    const tight = [
      [0.55, 0.7],
      [0.8, 0.55],
    ] as const;
    const solution = coupled(tight, [-37], { 'desk.ch1.aux1': -4 });
    expect(levelAt(solution, 'desk.aux1.out')).toBeUndefined();
    expect(levelAt(solution, 'desk.aux2.out')).toBeUndefined();
    expect(solution.loops.map(({ stable }) => stable)).toEqual([false]);
    expectNear(
      spectralRadius(tight.map((row) => Float64Array.from(row))),
      0.55 + Math.sqrt(0.56),
      SIX_DECIMALS,
    );
  });
});
