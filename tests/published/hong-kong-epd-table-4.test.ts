/**
 * Source: Hong Kong Environmental Protection Department, *Technical Memorandum for the Assessment of
 * Noise from Places other than Domestic Premises, Public Places or Construction Sites*, Table 4:
 * what to add to the higher of two levels, to half a decibel.
 */
import { describe, expect, test } from 'vitest';
import { dbu, levelAt, simulate } from '../../simulator/index.ts';
import { sumUncorrelated } from '../../simulator/units/sum.ts';
import { setUp } from './rig-builder.ts';

/** Rows of the table: from this difference to that one, add so much. */
const TABLE = [
  { from: 0, to: 0.5, add: 3 },
  { from: 1, to: 1.5, add: 2.5 },
  { from: 2, to: 3, add: 2 },
  { from: 3.5, to: 4.5, add: 1.5 },
  { from: 5, to: 7, add: 1 },
  { from: 7.5, to: 12, add: 0.5 },
  { from: 12.5, to: 20, add: 0 },
];
const STEP = 0.5;
const HIGHER_DBU = 13;

const rows = TABLE.flatMap(({ from, to, add }) =>
  Array.from({ length: (to - from) / STEP + 1 }, (_, step) => ({
    difference: from + step * STEP,
    add,
  })),
);
const toHalves = (value: number) => Math.round(value / STEP) * STEP;

describe('DB-6, Technical Memorandum, Table 4', () => {
  test('the rows cover every half decibel from 0 to 20', () => {
    expect(rows.map(({ difference }) => difference)).toEqual(
      Array.from({ length: 41 }, (_, step) => step * STEP),
    );
  });

  test.each(rows)('levelAt() two signals $difference dB apart: add $add to the higher', (row) => {
    const { difference, add } = row;
    const bench = { levels: [HIGHER_DBU - 24, HIGHER_DBU - 24 - difference] };
    const level = levelAt(simulate(setUp(bench)), 'out.capture') ?? Number.NaN;
    expect(toHalves(level - HIGHER_DBU)).toBe(add);
    const summed = sumUncorrelated([dbu(HIGHER_DBU - difference), dbu(HIGHER_DBU)]);
    expect(toHalves(summed - HIGHER_DBU)).toBe(add);
  });
});
