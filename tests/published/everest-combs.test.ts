/** Source: Everest, Master Handbook of Acoustics, chapter on comb filters. */
import { describe, expect, test } from 'vitest';
import {
  type ControlValue,
  type Hz,
  levelOf,
  paths,
  response,
  simulate,
} from '../../simulator/index.ts';
import { setUp } from './rig-builder.ts';
import { expectNear, LINEAR_DB } from './tolerance.ts';

/** Rows give nulls and peaks with three decimals. */
const PRINTED = 0.0005;
/** How deep a null is said to be there: a level of nothing is −∞ but for rounding. */
const NULL_DB = -200;
/** How far a mean over the grid may be off where the comb is finer than its points. */
const SAMPLED = 0.2;

/** The recording on the main bus, and once more through a delay that comes up on strip 2. */
const beside = (time: string, board: Record<string, ControlValue> = {}) =>
  simulate(
    setUp({
      levels: [-31],
      strips: 2,
      auxes: ['pre'],
      rack: [{ id: 'late', kind: 'delay' }],
      board: {
        'desk.ch1.aux1': 0,
        'rack.late.in': 'desk.aux1.out',
        'rack.late.time': time,
        'desk.ch2.in': 'rack.late.out',
        ...board,
      },
    }),
  );

/** Response at the left of the capture, relative to one arrival alone: −3.0103 dB by the pan. */
const rises = (solution: ReturnType<typeof simulate>, frequencies: number[]): number[] =>
  (response(solution, 't1', 'out.capture.l', frequencies as Hz[]) ?? []).map(
    (gain) => gain - 10 * Math.log10(0.5),
  );

describe('COMB-1, two equal ways t apart: first null at 1/(2t), peaks at n/t', () => {
  test.each([
    ['1', 500, 1000],
    ['0.1', 5000, 10_000],
    ['8', 62.5, 125],
    ['2', 250, 1500],
  ])('response() %s ms apart: null at %f Hz, +6.0206 dB at %f Hz', (time, hole, peak) => {
    const [atNull = 0, atPeak = 0] = rises(beside(time), [hole, peak]);
    expect(atNull).toBeLessThan(NULL_DB);
    expectNear(atPeak, 20 * Math.log10(2), LINEAR_DB);
  });

  test('response() 8 ms apart: neighbouring peaks lie 125 Hz apart', () => {
    const peaks = rises(beside('8'), [125, 250, 375, 500]);
    for (const peak of peaks) expectNear(peak, 20 * Math.log10(2), LINEAR_DB);
  });
});

describe('COMB-2, a way out of the box and back is late by samples at 48 kHz: first null at 1/(2t)', () => {
  test.each([
    [64, 375],
    [128, 187.5],
    [512, 46.875],
  ])('response() %i samples late: null at %f Hz, peak at twice that', (samples, hole) => {
    // Half of them on the way in, half on the way out again.
    const solution = simulate(
      setUp({
        levels: [-31],
        strips: 2,
        auxes: ['pre'],
        converterMs: samples / 2 / 48,
        board: {
          'desk.ch1.aux1': 0,
          'converter.in1': 'desk.aux1.out',
          'box.recorded.in': 'in1',
          'box.recorded.to': 'out2',
          'desk.ch2.in': 'converter.out2',
        },
      }),
    );
    const [atNull = 0, atPeak = 0] = rises(solution, [hole, 2 * hole]);
    expect(atNull).toBeLessThan(NULL_DB);
    expectNear(atPeak, 20 * Math.log10(2), LINEAR_DB);
  });
});

describe('COMB-3, two ways of different level', () => {
  test.each([
    [-1, 5.535, -19.271],
    [-6, 3.529, -6.041],
  ])('response() the late way %i dB down: peak %f dB, null %f dB', (level, peak, hole) => {
    const [atPeak, atNull] = rises(beside('1', { 'desk.ch2.fader': level }), [1000, 500]);
    expectNear(atPeak, peak, PRINTED);
    expectNear(atNull, hole, PRINTED);
  });
});

/** The mean of |1 + e^(−jωt)|² over a logarithmic axis from band edge to band edge, summed finely. */
function meanOfComb(time: number): number {
  const [from, to] = [1000 * 10 ** -1.75, 1000 * 10 ** 1.35];
  const steps = 400_000;
  let sum = 0;
  for (let step = 0; step < steps; step += 1) {
    const frequency = from * (to / from) ** ((step + 0.5) / steps);
    sum += 2 + 2 * Math.cos(2 * Math.PI * frequency * time);
  }
  return sum / steps;
}

test.each([
  ['0.5', 0.0005],
  ['2', 0.002],
  ['20', 0.02],
])('levelOf() a comb %s ms apart over all bands is its mean, within 0.2 dB', (time, seconds) => {
  const both = levelOf(beside(time), 't1', 'out.capture');
  const alone = levelOf(beside(time, { 'desk.ch2.fader': -Infinity }), 't1', 'out.capture');
  expectNear(both, (alone ?? 0) + 10 * Math.log10(meanOfComb(seconds)), SAMPLED);
});

test('paths() of a late way say how late: 0.008 s', () => {
  const ways = paths(beside('8'), 't1', 'out.capture');
  expect(ways.map(({ delay }) => delay).sort()).toEqual([0, 0.008]);
});

test('levelOf() the same delay of everything changes no level', () => {
  const alone = beside('5', { 'desk.ch1.main': false });
  expectNear(levelOf(alone, 't1', 'out.capture'), -31 + 24, LINEAR_DB);
});

describe('a delay that feeds itself: peaks 1/(1 − g), nulls 1/(1 + g)', () => {
  test('response() g = 0.5, 1 ms: +6.0206 dB at 1 kHz, −3.5218 dB at 500 Hz', () => {
    const solution = beside('1', {
      'desk.ch1.main': false,
      'rack.late.feedback': 20 * Math.log10(0.5),
    });
    const [atPeak, atNull] = rises(solution, [1000, 500]);
    expectNear(atPeak, 20 * Math.log10(1 / 0.5), LINEAR_DB);
    expectNear(atNull, 20 * Math.log10(1 / 1.5), LINEAR_DB);
    expect(solution.loops.map(({ stable }) => stable)).toEqual([true]);
  });

  test('levelOf() g = 1 has no level', () => {
    const solution = beside('1', { 'rack.late.feedback': 0 });
    expect(levelOf(solution, 't1', 'out.capture')).toBeUndefined();
  });
});
