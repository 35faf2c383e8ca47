import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dbu, dbuOfVolts } from '../../simulator/index.ts';
import {
  LEVEL_UNITS,
  levelText,
  markText,
  meterName,
  meterText,
  scaleIn,
  zeroOf,
} from '../../src/text/index.ts';
import { netLoft } from './net-loft.ts';

test('scaleIn() dBFS counts from the alignment of the converter: +22 dBu in the net-loft session', () => {
  expect(zeroOf(scaleIn(netLoft, 'dBFS'))).toBe(22);
  expect(levelText(3, 1, scaleIn(netLoft, 'dBFS'))).toBe('−19.0 dBFS');
});

test('levelText() says silence and no level alike in every unit', () => {
  for (const unit of LEVEL_UNITS) {
    expect(levelText(-Infinity, 1, scaleIn(netLoft, unit))).toBe('silent');
    expect(levelText(undefined, 1, scaleIn(netLoft, unit))).toBe('no level (unstable loop)');
  }
});

test.each([
  [12.283, '12.28 V'],
  [0.99999, '1.000 V'],
  [0.0316228, '31.62 mV'],
  [0.00002452, '24.52 µV'],
  [3.1e-10, '0.310 nV'],
])('levelText() has four figures of a voltage: %f V is %s', (volts, text) => {
  expect(levelText(dbuOfVolts(volts), 1, scaleIn(netLoft, 'V'))).toBe(text);
});

test('levelText() in volts reads back as the level, within the fourth figure', () => {
  const SIZES: Readonly<Record<string, number>> = { V: 1, mV: 1e-3, µV: 1e-6, nV: 1e-9 };
  fc.assert(
    fc.property(fc.double({ min: -150, max: 60, noNaN: true }), (level) => {
      const [figure, name = ''] = levelText(level, 1, scaleIn(netLoft, 'V')).split(' ');
      const volts = Number(figure) * (SIZES[name] ?? NaN);
      expect(Math.abs(dbuOfVolts(volts) - level)).toBeLessThan(0.005);
    }),
  );
});

test('markText() has its unit only in volts: 10 V, 100 mV, +4, −20', () => {
  const volts = scaleIn(netLoft, 'V');
  expect([10, 0.1].map((one) => markText(dbuOfVolts(one), volts))).toEqual(['10 V', '100 mV']);
  expect([4, -20].map((one) => markText(one, scaleIn(netLoft, 'dBu')))).toEqual(['+4', '−20']);
});

test('meterText() says level, peaks, what is left up to the clip level, and the noise', () => {
  const reading = { place: 'out.capture.l', rms: dbu(-2), peak: dbu(10), noise: dbu(-78.1) };
  const limit = { clip: dbu(22), headroom: 12 as never };
  const scale = scaleIn(netLoft, 'dBu');
  expect(meterName(netLoft, reading.place)).toBe('Capture left');
  expect(meterText({ ...reading, limit }, scale)).toBe(
    '−2.0 dBu, peaks +10.0 dBu, 12.0 dB below clipping at +22.0 dBu, noise −78.1 dBu',
  );
  expect(meterText({ ...reading, limit: undefined, rms: undefined }, scale)).toBe(
    'no level (unstable loop)',
  );
  const over = { clip: dbu(7), headroom: -3 as never };
  expect(meterText({ ...reading, limit: over, noise: dbu(-Infinity) }, scale)).toBe(
    '−2.0 dBu, peaks +10.0 dBu, clips: 3.0 dB over +7.0 dBu, no noise',
  );
});
