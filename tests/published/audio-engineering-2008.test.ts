/**
 * Source: *Audio Engineering: Know It All* (2008), §2.13, eq. 2.30 and fig. 2.8. For DB-4 also
 * Everest, *Master Handbook of Acoustics*, chapter on comb filters.
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
import { expectNear, LINEAR_DB, THREE_DECIMALS } from './tolerance.ts';

const SAME = 6.0206;
const DIFFERENT = 3.0103;
/** The chart is read to a tenth of a decibel, the text to a whole one. */
const CHART = 0.05;
const WHOLE = 0.5;

const leftOnly = (...strips: string[]): Record<string, ControlValue> =>
  Object.fromEntries(strips.map((strip) => [`desk.${strip}.pan`, -1]));

describe('DB-4', () => {
  test('levelOf() two equal arrivals of one signal stand 6.0206 dB above one', () => {
    const bench = { levels: [-31], strips: 2, auxes: ['post'] as const };
    const cord = { 'desk.ch2.in': 'desk.aux1.out' };
    const one = simulate(setUp({ ...bench, board: { ...cord } }));
    const two = simulate(setUp({ ...bench, board: { ...cord, 'desk.ch1.aux1': 0 } }));
    expect(paths(one, 't1', 'out.capture')).toHaveLength(1);
    expect(paths(two, 't1', 'out.capture')).toHaveLength(2);
    const alone = 24 - 31;
    expectNear(levelOf(one, 't1', 'out.capture'), alone);
    expectNear(levelOf(two, 't1', 'out.capture'), alone + SAME);
    // Panned to the centre, each side stands 10·log 2 below both together.
    expectNear(levelOf(two, 't1', 'out.capture.l'), alone + SAME - DIFFERENT);
    expectNear(levelAt(two, 'out.capture'), alone + SAME);
  });

  test('levelAt() two different signals at -8 dBu on one bus stand at -8 + 3.0103 = -4.9897 dBu', () => {
    const solution = simulate(setUp({ levels: [-32, -32], board: leftOnly('ch1', 'ch2') }));
    expectNear(levelAt(solution, 'desk.main.out.l'), -4.9897);
    expectNear(levelOf(solution, 't1', 'desk.main.out.l'), -8);
    expectNear(levelOf(solution, 't2', 'desk.main.out.l'), -8);
    expect(levelAt(solution, 'desk.main.out.r')).toBe(-Infinity);
  });

  test('levelAt() two different signals in the box add in power too: -29 + 3.0103 + 24 dBu', () => {
    const board = { 'box.t2.to': 'out1' };
    const solution = simulate(setUp({ levels: [-29, -29], board }));
    expectNear(levelAt(solution, 'converter.out1'), -29 + DIFFERENT + 24);
    expect(levelAt(solution, 'converter.out2')).toBe(-Infinity);
  });

  test('sumCoherent() and sumUncorrelated() two equal: +6.0206 and +3.0103 dB', () => {
    const level = dbu(-13);
    expectNear(sumCoherent([{ level }, { level }]), -13 + SAME);
    expectNear(sumUncorrelated([level, level]), -13 + DIFFERENT);
  });
});

describe('DB-5', () => {
  test('sumUncorrelated() 90 and 96 dB give 96.973 dB, printed 97', () => {
    expectNear(sumUncorrelated([dbu(90), dbu(96)]), 96.973, THREE_DECIMALS);
    expectNear(sumUncorrelated([dbu(96), dbu(90)]), 97, WHOLE);
  });

  test('levelAt() the same 6 dB apart on a bus, 80 dB lower: 10 and 16 dBu give 16.973 dBu', () => {
    const solution = simulate(setUp({ levels: [-14, -8], board: leftOnly('ch1', 'ch2') }));
    expectNear(levelAt(solution, 'desk.main.out.l'), 16.973, THREE_DECIMALS);
    expectNear(levelAt(solution, 'desk.main.out.l'), 10 * Math.log10(10 ** 1 + 10 ** 1.6));
  });

  test('levelAt() 75 and 80 dB, 70 dB lower: 5 and 10 dBu give 11.193 dBu, +1.2 on the chart', () => {
    const solution = simulate(setUp({ levels: [-19, -14], board: leftOnly('ch1', 'ch2') }));
    const level = levelAt(solution, 'desk.main.out.l');
    expectNear(level, 81.193 - 70, THREE_DECIMALS);
    expectNear((level ?? Number.NaN) - 10, 1.2, CHART);
    expectNear(sumUncorrelated([dbu(75), dbu(80)]), 81.193, THREE_DECIMALS);
    expectNear(level, 10 * Math.log10(10 ** 0.5 + 10 ** 1), LINEAR_DB);
  });
});
