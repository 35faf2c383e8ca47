import { describe, expect, test } from 'vitest';
import { combine, SILENT, scale, soleColumn } from '../../../simulator/solve/row.ts';

describe('combine()', () => {
  test('of nothing, of silence and of closed ways is silence', () => {
    expect(combine([])).toEqual(SILENT);
    expect(combine([{ row: SILENT, ratio: 3 }])).toEqual(SILENT);
    expect(combine([{ row: soleColumn(4), ratio: 0 }])).toEqual(SILENT);
  });

  test('adds the same signal in voltage, sign and all: 2 · 3 − 0.5 · 4 = 4', () => {
    const one = { columns: [7], transfers: [3] };
    const other = { columns: [7, 9], transfers: [4, 6] };
    expect(
      combine([
        { row: one, ratio: 2 },
        { row: other, ratio: -0.5 },
      ]),
    ).toEqual({
      columns: [7, 9],
      transfers: [4, -3],
    });
  });
});

test('scale() turns every ratio: 0.25 · [8, −2] = [2, −0.5]', () => {
  expect(scale({ columns: [1, 5], transfers: [8, -2] }, 0.25)).toEqual({
    columns: [1, 5],
    transfers: [2, -0.5],
  });
});
