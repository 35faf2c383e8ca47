/**
 * Source: US Army TC 9-62 and US Navy NEETS, scaling amplifier: 12, 3 and 8 V through 6, 3 and 4 kΩ
 * into a summing amplifier with 12 kΩ of feedback give −60 V.
 */
import { describe, expect, test } from 'vitest';
import { dbu, levelOf, paths, simulate, voltsOf } from '../../simulator/index.ts';
import { setUp } from './rig-builder.ts';
import { expectNear, SIX_DECIMALS } from './tolerance.ts';

const inDb = (ratio: number) => 20 * Math.log10(ratio);
const INPUTS = [
  { volts: 12, gain: 12 / 6 },
  { volts: 3, gain: 12 / 3 },
  { volts: 8, gain: 12 / 4 },
];
/** The signal as it leaves the converter, from which the three voltages are taken. */
const SOURCE_VOLTS = 10;

/** One signal sent out by three auxes at 12, 3 and 8 V, and back on three strips to one bus. */
function adder(inverted: readonly boolean[], dry: boolean) {
  const arms = INPUTS.map(({ volts, gain }, index) => ({
    [`desk.ch1.aux${index + 1}`]: inDb(volts / SOURCE_VOLTS),
    [`desk.ch${index + 2}.in`]: `desk.aux${index + 1}.out`,
    [`desk.ch${index + 2}.trim`]: inDb(gain),
    [`desk.ch${index + 2}.polarity`]: inverted[index] ?? false,
    [`desk.ch${index + 2}.pan`]: -1,
  }));
  return simulate(
    setUp({
      levels: [inDb(SOURCE_VOLTS / Math.sqrt(0.6)) - 24],
      strips: 4,
      auxes: ['pre', 'pre', 'pre'],
      board: { 'desk.ch1.main': dry, 'desk.ch1.pan': -1, ...Object.assign({}, ...arms) },
    }),
  );
}

const volts = (solution: ReturnType<typeof simulate>, place: string) =>
  voltsOf(levelOf(solution, 't1', place) ?? dbu(-999));

describe('SUM-1', () => {
  test('levelOf() 12 · 2 + 3 · 4 + 8 · 3 = 60 V on the bus, all of it inverted', () => {
    const solution = adder([true, true, true], false);
    expectNear(volts(solution, 'desk.ch2.in'), 12, SIX_DECIMALS);
    expectNear(volts(solution, 'desk.ch3.in'), 3, SIX_DECIMALS);
    expectNear(volts(solution, 'desk.ch4.in'), 8, SIX_DECIMALS);
    expectNear(volts(solution, 'desk.main.out.l'), 60, SIX_DECIMALS);
    const ways = paths(solution, 't1', 'desk.main.out.l');
    expect(ways.map(({ inverted }) => inverted)).toEqual([true, true, true]);
    const arrivals = ways.map(({ level }) => Math.sqrt(0.6) * 10 ** (level / 20));
    for (const [index, expected] of [24, 24, 12].entries()) {
      expectNear(arrivals[index], expected, SIX_DECIMALS);
    }
  });

  test('levelOf() with the 10 V themselves on the bus, 10 - 60 = -50 V', () => {
    const solution = adder([true, true, true], true);
    expectNear(volts(solution, 'desk.main.out.l'), 50, SIX_DECIMALS);
  });

  test('levelOf() with only the first inverted, -24 + 12 + 24 = 12 V', () => {
    expectNear(volts(adder([true, false, false], false), 'desk.main.out.l'), 12, SIX_DECIMALS);
  });
});
