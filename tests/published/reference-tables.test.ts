import { describe, expect, test } from 'vitest';
import { TABLES } from '../../src/reference/tables.ts';

/** What the reference prints, against what the sources print or what follows from their formulas. */

const tableOf = (id: string) => TABLES.find((table) => table.id === id)?.rows ?? [];
const rowOf = (id: string, name: string) => tableOf(id).find(([first]) => first === name);

describe('dBu, dBV and volts', () => {
  // Rec. ITU-R BS.645-2 §1 prints 0.775 V; its §3 a permitted maximum of +9 dBu.
  test('0 dBu is 0.775 V', () => {
    expect(rowOf('levels', '0.00')?.[2]).toBe('774.6 mV');
  });

  // A university's audio glossary (Simon Fraser) prints 1.228 V.
  test('+4 dBu is 1.228 V, and 1.78 dBV', () => {
    expect(rowOf('levels', '+4.00')?.slice(1, 3)).toEqual(['+1.78', '1.228 V']);
  });

  // Computed from the definitions: 20 log(0.316228 / 0.774597).
  test('−10 dBV is −7.78 dBu, and 316.2 mV', () => {
    expect(rowOf('levels', '−7.78')?.slice(1, 3)).toEqual(['−10.00', '316.2 mV']);
  });
});

describe('alignment', () => {
  // EBU R 68-2000, read in a secondary copy: −18 dBFS is the alignment level; 0 dBFS is 6.153 V.
  test('full scale at +18 dBu is 6.153 V, and 0 dBu stands at −18 dBFS', () => {
    expect(rowOf('alignment', '+18 dBu')?.slice(1, 3)).toEqual(['6.153 V', '−18 dBFS']);
  });

  // SMPTE RP 155, read in a secondary copy: −20 dBFS is +4 dBu; 12.283 V, made with 0.775 V, is 0.06 % off.
  test('full scale at +24 dBu puts +4 dBu at −20 dBFS', () => {
    const row = rowOf('alignment', '+24 dBu') ?? [];
    expect(row.slice(3, 5)).toEqual(['−20 dBFS', '+4 dBu']);
    expect(Math.abs(Number.parseFloat(row[1] ?? '') / 12.283 - 1)).toBeLessThan(0.0007);
  });

  // Common practice, no source: −18 dBFS is +4 dBu. 9.7516 V is computed.
  test('full scale at +22 dBu is 9.752 V', () => {
    expect(rowOf('alignment', '+22 dBu')?.[1]).toBe('9.752 V');
  });
});

// Audio Engineering: Know It All (2008) §2.13; the figures for N follow from 20 log N and 10 log N.
test.each([
  ['2', '+6.02 dB', '+3.01 dB'],
  ['3', '+9.54 dB', '+4.77 dB'],
  ['8', '+18.06 dB', '+9.03 dB'],
  ['32', '+30.10 dB', '+15.05 dB'],
])('%s equal levels: the same sound %s, different sounds %s', (count, same, different) => {
  expect(rowOf('equals', count)?.slice(1, 3)).toEqual([same, different]);
});

// Textbook noise gain of an inverting adder: 20 log(N + 1).
test.each([
  ['2', '+9.54 dB'],
  ['8', '+19.08 dB'],
  ['32', '+30.37 dB'],
])('a bus of %s raises its noise by %s', (count, gain) => {
  expect(rowOf('equals', count)?.[3]).toBe(gain);
});

// Hong Kong EPD, Technical Memorandum, Table 4, printed to half a decibel.
test.each([
  ['0 dB', 3],
  ['1 dB', 2.5],
  ['2 dB', 2],
  ['3 dB', 2],
  ['6 dB', 1],
  ['10 dB', 0.5],
  ['12 dB', 0.5],
  ['20 dB', 0],
])('two that differ by %s stand %d dB above the louder', (difference, printed) => {
  const rise = Number.parseFloat(rowOf('unequal', difference)?.[3] ?? '');
  expect(Math.round(2 * rise) / 2).toBe(printed);
});

// Everest, Master Handbook of Acoustics: level differences of 1 and 6 dB, peak and null of a comb.
test.each([
  ['1 dB', '+5.53 dB', '−19.27 dB'],
  ['6 dB', '+3.53 dB', '−6.04 dB'],
])('the same sound %s lower: %s, and %s inverted', (difference, peak, dip) => {
  expect(rowOf('unequal', difference)?.slice(1, 3)).toEqual([peak, dip]);
});

// The same handbook: the first gap at 1/(2t). At 48 kHz 64, 128 and 512 samples.
test.each([
  ['64 samples', '375 Hz'],
  ['128 samples', '188 Hz'],
  ['512 samples', '46.9 Hz'],
])('late by %s, the first gap is at %s', (late, gap) => {
  expect(rowOf('combs', late)?.[2]).toBe(gap);
});

// W3C Web Audio API, StereoPannerNode; 20 log(0.923880) and 20 log(0.382683) at half left.
test('pan laws: equal power at the centre and halfway, −4.52 and −6.02 dB for the others', () => {
  expect(rowOf('pan-laws', 'centre')?.slice(1)).toEqual([
    '−3.01 dB',
    '−3.01 dB',
    '−4.52 dB',
    '−4.52 dB',
    '−6.02 dB',
    '−6.02 dB',
  ]);
  expect(rowOf('pan-laws', '50 % left')?.slice(1, 3)).toEqual(['−0.69 dB', '−8.34 dB']);
});

// Common practice, no source: what full-normal, half-normal and open rows do.
test('normals of a bay', () => {
  expect(tableOf('normals')).toEqual([
    ['Nothing plugged', 'the top', 'the top', 'nothing'],
    ['A cord in the top jack', 'nothing', 'the top', 'nothing'],
    ['A cord in the bottom jack', 'the cord', 'the cord', 'the cord'],
    ['An open plug in the bottom jack', 'nothing', 'nothing', 'nothing'],
  ]);
});

// Textbook voltage divider: 10 kΩ at 100 Ω loses 20 log(10 000/10 100) = −0.086 dB.
test('an output into one input loses 0.09 dB, into eight 0.67 dB', () => {
  expect(rowOf('loads', '1')?.[2]).toBe('−0.09 dB');
  expect(rowOf('loads', '8')?.[2]).toBe('−0.67 dB');
});
