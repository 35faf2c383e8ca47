import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { dbu } from '../../../simulator/units/level.ts';
import { sumCoherent, sumUncorrelated } from '../../../simulator/units/sum.ts';

const levels = fc.array(fc.double({ min: -100, max: 40, noNaN: true }).map(dbu), { minLength: 1 });

test('sumUncorrelated() of nothing, and sumCoherent() of nothing, are silence', () => {
  expect(sumUncorrelated([])).toBe(-Infinity);
  expect(sumCoherent([])).toBe(-Infinity);
});

test('sumUncorrelated() of three equal levels: 10·log 3 = 4.7712 dB above one, ± 1e-4', () => {
  expect(sumUncorrelated([dbu(-9), dbu(-9), dbu(-9)])).toBeCloseTo(-9 + 4.7712, 4);
});

test('sumCoherent() of a ratio 3 and an inverted 1 is 2: 20·log 2 = 6.0206 dBu, ± 1e-4', () => {
  const three = dbu(20 * Math.log10(3));
  expect(sumCoherent([{ level: three }, { level: dbu(0), inverted: true }])).toBeCloseTo(6.0206, 4);
});

test('sums do not depend on the order, and silence adds nothing, to 1e-9 dB', () => {
  fc.assert(
    fc.property(levels, (list) => {
      const sum = sumUncorrelated(list);
      expect(sumUncorrelated([...list].reverse())).toBeCloseTo(sum, 9);
      expect(sumUncorrelated([...list, dbu(-Infinity)])).toBe(sum);
      const arrivals = list.map((level) => ({ level }));
      expect(sumCoherent([...arrivals].reverse())).toBeCloseTo(sumCoherent(arrivals), 9);
    }),
  );
});

test('a mix is never below its loudest part, and in phase never below the mix in power', () => {
  fc.assert(
    fc.property(levels, (list) => {
      const inPower = sumUncorrelated(list);
      expect(inPower).toBeGreaterThanOrEqual(Math.max(...list) - 1e-9);
      expect(sumCoherent(list.map((level) => ({ level })))).toBeGreaterThanOrEqual(inPower - 1e-9);
    }),
  );
});
