/**
 * The voltage divider, load ÷ (source + load), as any handbook of electronics has it: 100 Ω into 10 kΩ loses
 * 0.0864 dB, into two of them 0.1720 dB, and 600 Ω into 600 Ω 6.0206 dB. `tests/parity/loading.test.ts` has
 * ngspice say the same. 100 Ω and 10 kΩ as usual output and input impedances are common practice, no source.
 */
import { test } from 'vitest';
import { inParallel, levelAt, loadedRatio, type Ohms, simulate } from '../../simulator/index.ts';
import { setUp } from './rig-builder.ts';
import { expectNear } from './tolerance.ts';

const CASES = [
  { source: 100, load: 10_000, count: 1, loss: -0.0864 },
  { source: 100, load: 10_000, count: 2, loss: -0.172 },
  { source: 600, load: 600, count: 1, loss: -6.0206 },
];
/** As the losses are printed. */
const FOUR_DECIMALS = 0.00005;

test.each(CASES)('loadedRatio() $source Ω into $count × $load Ω: $loss dB (LOAD-1)', (one) => {
  const ratio = loadedRatio(one.source as Ohms, inParallel(one.load as Ohms, one.count));
  expectNear(20 * Math.log10(ratio), one.loss, FOUR_DECIMALS);
});

/** A mult behind output 1, with so many strips plugged into it. */
const strips = (count: number, impedances: { outputOhms?: number; inputOhms?: number } = {}) =>
  simulate(
    setUp({
      levels: [-20],
      strips: 4,
      bay: { mults: [{ id: 'm', label: 'Mult', outputs: 4 }], ...impedances },
      board: {
        'desk.ch1.in': 'none',
        'bay.m.in': 'converter.out1',
        ...Object.fromEntries(
          [1, 2, 3, 4].slice(0, count).map((n) => [`desk.ch${n}.in`, `bay.m.out${n}`]),
        ),
      },
    }),
  );

test('levelAt() a strip behind a mult: a second one costs −0.1720 + 0.0864 = −0.0856 dB', () => {
  const [one, two] = [1, 2].map((count) => levelAt(strips(count), 'desk.ch1.in') ?? Number.NaN);
  expectNear((two ?? Number.NaN) - (one ?? Number.NaN), -0.172 + 0.0864, 2 * FOUR_DECIMALS);
});

test('levelAt() 600 Ω into two inputs of 600 Ω: 1/3 of the voltage instead of 1/2, −3.5218 dB', () => {
  const matched = { outputOhms: 600, inputOhms: 600 };
  const levels = [1, 2].map((count) => levelAt(strips(count, matched), 'desk.ch1.in'));
  expectNear((levels[1] ?? Number.NaN) - (levels[0] ?? Number.NaN), -3.5218, FOUR_DECIMALS);
});
