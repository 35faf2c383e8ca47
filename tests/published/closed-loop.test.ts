/** Source: lecture notes on control: a closed loop of gain g amplifies by 1/(1 − g), g = 0.99 by 100. */
import { describe, expect, test } from 'vitest';
import { type ControlValue, levelAt, levelOf, paths, simulate } from '../../simulator/index.ts';
import { solveFeedback, spectralRadius } from '../../simulator/solve/matrix.ts';
import { setUp } from './rig-builder.ts';
import { expectNear, LINEAR_DB, SIX_DECIMALS } from './tolerance.ts';

const IN_DBU = -27;
const inDb = (ratio: number) => 20 * Math.log10(ratio);

/** Track t1 goes to aux 1; what leaves aux 1 comes up on strip 3, which sends it there again. */
const aroundAux = (board: Record<string, ControlValue>) =>
  simulate(
    setUp({
      levels: [IN_DBU - 24, -40],
      strips: 3,
      auxes: ['post'],
      rack: [
        { id: 'amp1', kind: 'gain' },
        { id: 'amp2', kind: 'gain' },
      ],
      board: {
        'desk.ch1.aux1': 0,
        'desk.ch3.in': 'desk.aux1.out',
        'desk.ch3.main': false,
        ...board,
      },
    }),
  );

const STABLE = [
  { g: 0.1, rise: 0.915 },
  { g: 0.5, rise: 6.021 },
  { g: 0.9, rise: 20 },
  { g: 0.99, rise: 40 },
];
/** The rises are printed with three decimals. */
const PRINTED = 0.0005;

describe('LOOP-1, 1/(1 - g)', () => {
  test.each(STABLE)('levelOf() an aux that feeds itself by $g rises by $rise dB', ({ g, rise }) => {
    const solution = aroundAux({ 'desk.ch3.aux1': inDb(g) });
    const level = levelOf(solution, 't1', 'desk.aux1.sum');
    expectNear(level, IN_DBU + rise, PRINTED);
    expectNear(level, IN_DBU + inDb(1 / (1 - g)), LINEAR_DB);
    const [loop] = solution.loops;
    expect(solution.loops).toHaveLength(1);
    expect(loop?.stable).toBe(true);
    expectNear(loop?.gain, inDb(g), LINEAR_DB);
  });

  test.each(STABLE)(
    'levelOf() a main bus that feeds itself by $g rises by $rise dB',
    ({ g, rise }) => {
      const board = {
        'desk.ch1.pan': -1,
        'desk.ch2.in': 'desk.main.out.l',
        'out.capture.l': 'none',
        'desk.ch2.pan': -1,
        'desk.ch2.trim': 5,
        'desk.ch2.fader': inDb(g) - 5,
      };
      const solution = simulate(setUp({ levels: [IN_DBU - 24], strips: 2, board }));
      const level = levelOf(solution, 't1', 'desk.main.out.l');
      expectNear(level, IN_DBU + rise, PRINTED);
      expectNear(level, IN_DBU + inDb(1 / (1 - g)), LINEAR_DB);
    },
  );

  test.each(STABLE)('levelOf() the same round turned over: 1/(1 + $g)', ({ g }) => {
    const solution = aroundAux({ 'desk.ch3.aux1': inDb(g), 'desk.ch3.polarity': true });
    expectNear(levelOf(solution, 't1', 'desk.aux1.sum'), IN_DBU - inDb(1 + g), LINEAR_DB);
  });

  test.each(STABLE)('solveFeedback() of the one-by-one matrix $g is 1/(1 - g)', ({ g }) => {
    const matrix = [Float64Array.of(g)];
    expectNear(solveFeedback(matrix, [Float64Array.of(1)])[0]?.[0], 1 / (1 - g), SIX_DECIMALS);
    expectNear(spectralRadius(matrix), g, SIX_DECIMALS);
  });

  test('levelOf() of each of two signals in the round rises alike, and paths() goes round once', () => {
    const solution = aroundAux({ 'desk.ch3.aux1': inDb(0.6), 'desk.ch2.aux1': -3 });
    expectNear(levelOf(solution, 't1', 'desk.aux1.out'), IN_DBU + inDb(2.5));
    expectNear(levelOf(solution, 't2', 'desk.aux1.out'), -16 - 3 + inDb(2.5));
    expect(paths(solution, 't1', 'desk.aux1.out')).toHaveLength(1);
    expectNear(paths(solution, 't1', 'desk.aux1.out')[0]?.level, IN_DBU);
  });
});

describe('LOOP-2, no level at g ≥ 1', () => {
  /** 16 000 times, in the stages of one round: 20 + 10 + 10 + 10 + 20 dB, and what is left of 84.08. */
  const SIXTEEN_THOUSAND = {
    'desk.ch3.trim': 20,
    'desk.ch3.fader': 10,
    'desk.ch3.aux1': 10,
    'desk.aux1.level': 10,
    'rack.amp1.in': 'desk.aux1.out',
    'rack.amp1.gain': 20,
    'rack.amp2.in': 'rack.amp1.out',
    'rack.amp2.gain': inDb(16_000) - 70,
    'desk.ch3.in': 'rack.amp2.out',
  };
  const UNSTABLE = [
    { g: '1', gain: 0, board: { 'desk.ch3.aux1': 0 } },
    { g: '1.0001', gain: inDb(1.0001), board: { 'desk.ch3.aux1': inDb(1.0001) } },
    { g: '4', gain: inDb(4), board: { 'desk.ch3.aux1': 0, 'desk.ch3.trim': inDb(4) } },
    { g: '16 000', gain: inDb(16_000), board: SIXTEEN_THOUSAND },
    // The formula says 1/3; but nothing real is in a ring without delay, and so it howls.
    {
      g: '-2',
      gain: inDb(2),
      board: { 'desk.ch3.aux1': inDb(2), 'desk.ch3.polarity': true },
    },
  ];

  test.each(UNSTABLE)('levelOf() a round of $g has no level, and is said to be unstable', (row) => {
    const solution = aroundAux(row.board);
    expect(levelOf(solution, 't1', 'desk.aux1.sum')).toBeUndefined();
    expect(levelAt(solution, 'desk.aux1.out')).toBeUndefined();
    expect(levelAt(solution, 'desk.ch3.mute')).toBeUndefined();
    expect(solution.loops.map(({ stable }) => stable)).toEqual([false]);
    expectNear(solution.loops[0]?.gain, row.gain, LINEAR_DB);
  });

  test.each(UNSTABLE)(
    'levelAt() all that a round of $g reaches has no level, the rest has',
    (row) => {
      const solution = aroundAux({ ...row.board, 'desk.ch3.main': true });
      expect(levelAt(solution, 'desk.main.out')).toBeUndefined();
      expect(levelAt(solution, 'out.capture')).toBeUndefined();
      expect(levelOf(solution, 't2', 'out.capture')).toBeUndefined();
      expectNear(levelAt(solution, 'desk.ch2.pan'), -16);
      expectNear(levelAt(solution, 'desk.ch1.mute'), IN_DBU);
    },
  );

  test.each(UNSTABLE)(
    'levelAt() a closed assign keeps a round of $g out of the main bus',
    (row) => {
      const solution = aroundAux(row.board);
      const powers = 10 ** (IN_DBU / 10) + 10 ** (-16 / 10);
      expectNear(levelAt(solution, 'out.capture'), 10 * Math.log10(powers));
    },
  );

  test('levelAt() a round of 4 has no level even with nothing in it', () => {
    const solution = aroundAux({
      'desk.ch1.aux1': -Infinity,
      'desk.ch3.trim': inDb(4),
      'desk.ch3.aux1': 0,
    });
    expect(levelAt(solution, 'desk.aux1.out')).toBeUndefined();
  });

  test('levelAt() panned hard left, a round of 1.5 leaves the right leg its level', () => {
    const board = {
      'desk.ch1.pan': 0,
      'desk.ch2.in': 'desk.main.out.l',
      'out.capture.l': 'none',
      'desk.ch2.pan': -1,
      'desk.ch2.fader': inDb(1.5),
    };
    const solution = simulate(setUp({ levels: [IN_DBU - 24], strips: 2, board }));
    expect(levelAt(solution, 'desk.main.out.l')).toBeUndefined();
    expect(levelAt(solution, 'desk.main.out')).toBeUndefined();
    expectNear(levelAt(solution, 'desk.main.out.r'), IN_DBU - 3.0103);
  });

  test('simulate() a stable round that an unstable one feeds is stable, and has no level', () => {
    const solution = simulate(
      setUp({
        levels: [-40],
        strips: 3,
        auxes: ['post', 'post'],
        board: {
          'desk.ch1.aux1': 0,
          'desk.ch2.in': 'desk.aux1.out',
          'desk.ch2.aux1': inDb(1.7),
          'desk.ch2.aux2': 0,
          'desk.ch3.in': 'desk.aux2.out',
          'desk.ch3.aux2': inDb(0.3),
        },
      }),
    );
    expect(levelAt(solution, 'desk.aux2.out')).toBeUndefined();
    const [first, second] = solution.loops.toSorted((a, b) => b.gain - a.gain);
    expectNear(first?.gain, inDb(1.7));
    expect(first?.stable).toBe(false);
    expectNear(second?.gain, inDb(0.3));
    expect(second?.stable).toBe(true);
  });
});

/**
 * Computed from the two formulas together: a limiter at T inside a round of g holds what leaves it at T,
 * so that what enters it is s + g·T in voltage. Without the limiter it would be s/(1 − g).
 */
describe('LOOP-1 with a limiter in the round', () => {
  const THRESHOLD = 6;
  const limited = (g: number, inDbu: number) =>
    simulate(
      setUp({
        levels: [inDbu - 24],
        strips: 2,
        auxes: ['post'],
        rack: [{ id: 'limiter', kind: 'compressor' }],
        board: {
          'desk.ch1.aux1': 0,
          'rack.limiter.in': 'desk.aux1.out',
          'rack.limiter.threshold': THRESHOLD,
          'rack.limiter.ratio': 'inf',
          'desk.ch2.in': 'rack.limiter.out',
          'desk.ch2.main': false,
          'desk.ch2.aux1': inDb(g),
        },
      }),
    );

  test.each([
    { g: 0.7, level: -1 },
    { g: 0.9, level: -8 },
    { g: 0.99, level: -14 },
  ])('levelAt() $level dBu in, a round of $g: the limiter holds 6 dBu', ({ g, level }) => {
    const solution = limited(g, level);
    const entering = inDb(10 ** (level / 20) + g * 10 ** (THRESHOLD / 20));
    expectNear(levelAt(solution, 'rack.limiter.in'), entering);
    expectNear(levelAt(solution, 'rack.limiter.out'), THRESHOLD);
    expect(solution.loops.map(({ stable }) => stable)).toEqual([true]);
  });

  test('levelAt() below its threshold the limiter does nothing: -30 dBu / (1 - 0.8) = -16.0206 dBu', () => {
    expectNear(levelAt(limited(0.8, -30), 'rack.limiter.out'), -30 + inDb(5));
  });
});
