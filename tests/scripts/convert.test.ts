import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dbu } from '../../simulator/index.ts';
import { convert, type UnitName } from '../../src/scripts/convert.ts';
import { readNumber } from '../../src/text/read-number.ts';

const FULL_SCALE = dbu(22);

describe('convert()', () => {
  // 1.228 V is printed by a university's audio glossary (Simon Fraser); the others follow.
  test('+4 dBu is 1.78 dBV, −18 dBFS at full scale +22, and 1.228 V', () => {
    const all = convert('dbu', '+4', FULL_SCALE);
    expect(all?.dbv).toBeCloseTo(1.7815, 4);
    expect(all?.dbfs).toBeCloseTo(-18, 10);
    expect(all?.volts).toBeCloseTo(1.2277, 4);
  });

  test('0 V is silence in every other unit', () => {
    expect(convert('volts', '0', FULL_SCALE)?.dbv).toBe(-Infinity);
  });

  test.each(['', 'loud', '1e3', '--4', '1.2.3', '∞'])('%j is no level', (text) => {
    expect(convert('dbu', text, FULL_SCALE)).toBeUndefined();
  });

  test('less than no voltage is no level', () => {
    expect(convert('volts', '-1', FULL_SCALE)).toBeUndefined();
  });

  test('from any unit to any other and back leads where it began', () => {
    const level = fc.double({ min: -120, max: 30, noNaN: true });
    const names = fc.constantFrom<UnitName>('dbu', 'dbv', 'dbfs', 'volts');
    fc.assert(
      fc.property(level, names, (from, name) => {
        const there = convert('dbu', from.toFixed(6), FULL_SCALE);
        const back = convert(name, (there?.[name] ?? Number.NaN).toFixed(12), FULL_SCALE);
        expect(back?.dbu).toBeCloseTo(from, 3);
      }),
    );
  });
});

test.each([
  ['−6', -6],
  ['1,5', 1.5],
  [' +4. ', 4],
  ['.5', 0.5],
])('readNumber() reads %j as %d', (text, value) => {
  expect(readNumber(text)).toBe(value);
});
