/**
 * Computed: N equal arrivals of one signal stand 20·log N above one, N equal signals 10·log N
 * (DB-7, DB-8); two arrivals of one signal, one of them inverted and m dB lower, leave
 * 20·log(1 − 10^(−m/20)) (DB-9). The figures are those of the project's table of check values.
 */
import { describe, expect, test } from 'vitest';
import {
  type ControlValue,
  dbu,
  levelAt,
  levelOf,
  paths,
  simulate,
} from '../../simulator/index.ts';
import { sumCoherent, sumUncorrelated } from '../../simulator/units/sum.ts';
import { setUp } from './rig-builder.ts';
import { expectNear, LINEAR_DB, THREE_DECIMALS, TWO_DECIMALS } from './tolerance.ts';

const EQUALS = [
  { count: 2, same: 6.021, different: 3.01 },
  { count: 3, same: 9.542, different: 4.771 },
  { count: 4, same: 12.041, different: 6.021 },
  { count: 8, same: 18.062, different: 9.031 },
  { count: 16, same: 24.082, different: 12.041 },
  { count: 32, same: 30.103, different: 15.051 },
];
const LEVEL_DBU = -17;
const LEVEL_DBFS = LEVEL_DBU - 24;

describe('DB-7, one signal by N ways', () => {
  test.each(EQUALS)('levelOf() a strip on main and $count − 1 subgroups: +$same dB', (row) => {
    const { count, same } = row;
    const board = Object.fromEntries(
      Array.from({ length: count - 1 }, (_, index) => [`desk.ch1.sub${index + 1}`, true]),
    );
    const solution = simulate(setUp({ levels: [LEVEL_DBFS], subgroups: count - 1, board }));
    expect(paths(solution, 't1', 'out.capture')).toHaveLength(count);
    expectNear(levelOf(solution, 't1', 'out.capture'), LEVEL_DBU + same, THREE_DECIMALS);
    expectNear(levelOf(solution, 't1', 'out.capture'), LEVEL_DBU + 20 * Math.log10(count));
    expectNear(levelAt(solution, 'out.capture'), LEVEL_DBU + 20 * Math.log10(count));
  });

  test.each(EQUALS)(
    'levelOf() a track sent by an aux to $count strips in a row: +$same dB',
    (row) => {
      const { count, same } = row;
      const board: Record<string, ControlValue> = {};
      // Strip n comes in from aux n − 1, which strip n − 1 feeds: the same level on every one of them.
      for (let number = 1; number < count; number += 1) {
        board[`desk.ch${number}.aux${number}`] = 0;
        board[`desk.ch${number + 1}.in`] = `desk.aux${number}.out`;
      }
      const auxes = new Array<'pre'>(count - 1).fill('pre');
      const solution = simulate(setUp({ levels: [LEVEL_DBFS], strips: count, auxes, board }));
      expectNear(levelOf(solution, 't1', 'out.capture'), LEVEL_DBU + same, THREE_DECIMALS);
      expectNear(levelAt(solution, 'out.capture'), LEVEL_DBU + 20 * Math.log10(count));
    },
  );

  test.each(EQUALS)('sumCoherent() of $count equal: +$same dB', ({ count, same }) => {
    const arrivals = new Array(count).fill({ level: dbu(LEVEL_DBU) });
    expectNear(sumCoherent(arrivals), LEVEL_DBU + same, THREE_DECIMALS);
  });
});

describe('DB-8, N signals', () => {
  test.each(EQUALS)('levelAt() $count tracks on the main bus: +$different dB', (row) => {
    const { count, different } = row;
    const solution = simulate(setUp({ levels: new Array(count).fill(LEVEL_DBFS) }));
    expectNear(levelAt(solution, 'out.capture'), LEVEL_DBU + different, THREE_DECIMALS);
    expectNear(levelAt(solution, 'out.capture'), LEVEL_DBU + 10 * Math.log10(count));
    expectNear(levelOf(solution, `t${count}`, 'out.capture'), LEVEL_DBU);
  });

  test.each(EQUALS)('sumUncorrelated() of $count equal: +$different dB', ({ count, different }) => {
    const levels = new Array(count).fill(dbu(LEVEL_DBU));
    expectNear(sumUncorrelated(levels), LEVEL_DBU + different, THREE_DECIMALS);
  });
});

describe('DB-9, one of two inverted', () => {
  /** One track on two strips; the second is inverted and trimmed. */
  const nullOf = (trim: number, polarity: boolean) =>
    simulate(
      setUp({
        levels: [LEVEL_DBFS],
        strips: 2,
        auxes: ['post'],
        board: {
          'desk.ch1.aux1': 0,
          'desk.ch2.in': 'desk.aux1.out',
          'desk.ch2.polarity': polarity,
          'desk.ch2.trim': trim,
        },
      }),
    );

  test.each([
    { mismatch: 0.01, left: -58.78 },
    { mismatch: 0.1, left: -38.83 },
    { mismatch: 0.5, left: -25.05 },
    { mismatch: 1, left: -19.27 },
  ])('levelOf() a null with $mismatch dB of trim between: $left dB', ({ mismatch, left }) => {
    const level = levelOf(nullOf(-mismatch, true), 't1', 'out.capture');
    expectNear(level, LEVEL_DBU + left, TWO_DECIMALS);
    expectNear(level, LEVEL_DBU + 20 * Math.log10(1 - 10 ** (-mismatch / 20)), LINEAR_DB);
    const [upright, inverted] = [{ level: dbu(-7) }, { level: dbu(-7 - mismatch), inverted: true }];
    expectNear(sumCoherent([upright, inverted]), -7 + left, TWO_DECIMALS);
  });

  test('levelOf() an exact match is silence, and +6.0206 dB without the inversion', () => {
    const solution = nullOf(0, true);
    expect(levelOf(solution, 't1', 'out.capture')).toBe(-Infinity);
    expect(levelAt(solution, 'out.capture')).toBe(-Infinity);
    expect(paths(solution, 't1', 'out.capture').map(({ inverted }) => inverted)).toContain(true);
    expectNear(levelOf(nullOf(0, false), 't1', 'out.capture'), LEVEL_DBU + 6.0206);
  });

  test('levelAt() a null cancels one signal and leaves another: 11 dBu of t2 remain', () => {
    const solution = simulate(
      setUp({
        levels: [-20, -13],
        strips: 3,
        auxes: ['post'],
        board: {
          'desk.ch1.aux1': 0,
          'desk.ch3.in': 'desk.aux1.out',
          'desk.ch3.polarity': true,
        },
      }),
    );
    expect(levelOf(solution, 't1', 'out.capture')).toBe(-Infinity);
    expectNear(levelAt(solution, 'out.capture'), 11);
  });
});
