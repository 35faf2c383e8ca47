import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  amplify,
  CLOSED,
  db,
  dbfs,
  dbfsOf,
  dbu,
  dbuOfDbfs,
  dbuOfDbv,
  dbuOfVolts,
  dbvOf,
  gainBetween,
  gainOf,
  levelOfPower,
  powerOf,
  ratioOf,
  SILENCE,
  voltsOf,
} from '../../../simulator/units/level.ts';

const finite = fc.double({ min: -150, max: 60, noNaN: true }).map(dbu);

describe.each([
  ['dbu', dbu],
  ['dbfs', dbfs],
  ['db', db],
])('%s()', (_name, unit) => {
  test('takes a finite number and -Infinity as they are', () => {
    expect(unit(-7.25)).toBe(-7.25);
    expect(unit(-Infinity)).toBe(-Infinity);
  });
  test.each([Number.NaN, Infinity])('refuses %d', (value) => {
    expect(() => unit(value)).toThrow(RangeError);
  });
});

describe('there and back, to 1e-9 dB', () => {
  test.each<[string, (level: ReturnType<typeof dbu>) => number]>([
    ['dbuOfVolts(voltsOf(x))', (level) => dbuOfVolts(voltsOf(level))],
    ['dbuOfDbv(dbvOf(x))', (level) => dbuOfDbv(dbvOf(level))],
    ['levelOfPower(powerOf(x))', (level) => levelOfPower(powerOf(level))],
    ['dbuOfDbfs(dbfsOf(x, 18.5), 18.5)', (level) => dbuOfDbfs(dbfsOf(level, dbu(18.5)), dbu(18.5))],
    ['gainOf(ratioOf(x))', (level) => gainOf(ratioOf(db(level)))],
  ])('%s = x', (_name, roundTrip) => {
    fc.assert(
      fc.property(finite, (level) => {
        expect(roundTrip(level)).toBeCloseTo(level, 9);
      }),
    );
  });
});

describe('silence', () => {
  test('no voltage and no power are silence, and silence has none', () => {
    expect(dbuOfVolts(0)).toBe(SILENCE);
    expect(levelOfPower(0)).toBe(SILENCE);
    expect(gainOf(0)).toBe(CLOSED);
    expect([voltsOf(SILENCE), powerOf(SILENCE), ratioOf(CLOSED)]).toEqual([0, 0, 0]);
    expect(dbuOfDbfs(dbfs(-Infinity), dbu(23))).toBe(SILENCE);
  });

  test('amplify() through a closed path leaves silence: 8 − ∞ = −∞ dBu', () => {
    expect(amplify(dbu(8), CLOSED)).toBe(SILENCE);
  });

  test('gainBetween() two silences is 0 dB, from a level to silence it closes', () => {
    expect(gainBetween(SILENCE, SILENCE)).toBe(0);
    expect(gainBetween(dbu(-3), SILENCE)).toBe(CLOSED);
    expect(gainBetween(dbu(-3), dbu(4.5))).toBe(7.5);
  });
});

test('gainOf(−2) is the gain of 2, 6.0206 dB ± 1e-4: polarity is no gain', () => {
  expect(gainOf(-2)).toBeCloseTo(6.0206, 4);
});

test.each([-0.001, Number.NaN])('dbuOfVolts(%d) is refused', (volts) => {
  expect(() => dbuOfVolts(volts)).toThrow(RangeError);
});
