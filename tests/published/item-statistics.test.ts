import fc from 'fast-check';
import { corr, mean, variance } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  difficulty,
  discrimination,
  reliability,
  upperLowerIndex,
} from '../../src/class/item-statistics.ts';

/**
 * Ten learners, ten items. Source: East Carolina University, statistics help file on KR-20, which prints
 * 0.696; the corrected correlations below were computed from the same rows.
 */
const ROWS = [
  '1111110110',
  '1011011101',
  '1111011001',
  '0010001000',
  '0000010010',
  '1110111111',
  '1101110111',
  '1111111101',
  '0101111101',
  '1101101110',
].map((row) => Array.from(row, Number));
const ITEMS = ROWS.map((_, item) => item);

describe('Kuder and Richardson’s example of ten rows', () => {
  test('difficulty() is the share of learners who solved an item', () => {
    const found = ITEMS.map((item) => difficulty(ROWS, item));
    [0.7, 0.7, 0.6, 0.7, 0.6, 0.8, 0.7, 0.7, 0.5, 0.6].forEach((p, item) => {
      expect(found[item]).toBeCloseTo(p, 12);
    });
  });

  test('reliability() is 0.696347, with population variances throughout', () => {
    expect(reliability(ROWS)).toBeCloseTo(0.696347, 6);
  });

  test('discrimination() leaves the item out of the total', () => {
    const expected = [0.7059, 0.7059, 0, 0.4736, 0.5839, 0.2861, -0.0274, 0.7059, -0.1236, 0.4759];
    const found = ITEMS.map((item) => discrimination(ROWS, item));
    expected.forEach((value, item) => {
      expect(found[item]).toBeCloseTo(value, 4);
    });
  });
});

// Common practice, no source: the upper–lower index of 15 of 15 against 5 of 15 is 10/15.
test('upperLowerIndex() of 15 of 15 against 5 of 15 is 0.67', () => {
  const solved = (count: number) => Array.from({ length: 15 }, (_, at) => (at < count ? 1 : 0));
  expect(upperLowerIndex(solved(15), solved(5))).toBeCloseTo(0.67, 2);
});

/** Scores of a class, whole or in part. */
const classes = fc
  .tuple(fc.integer({ min: 2, max: 30 }), fc.integer({ min: 2, max: 8 }))
  .chain(([learners, items]) =>
    fc.array(fc.array(fc.integer({ min: 0, max: 4 }), { minLength: items, maxLength: items }), {
      minLength: learners,
      maxLength: learners,
    }),
  )
  .map((rows) => rows.map((row) => row.map((quarters) => quarters / 4)));

describe('against the statistics of mathjs', () => {
  const total = (row: readonly number[]) => row.reduce((all, score) => all + score, 0);
  const column = (rows: readonly (readonly number[])[], item: number) =>
    rows.map((row) => row[item] ?? Number.NaN);

  test('difficulty() is the mean of a column', () => {
    fc.assert(
      fc.property(classes, (rows) => {
        expect(difficulty(rows, 0)).toBeCloseTo(Number(mean(column(rows, 0))), 10);
      }),
    );
  });

  test('discrimination() is the correlation with the other columns, or none', () => {
    fc.assert(
      fc.property(classes, (rows) => {
        const rest = rows.map((row) => total(row.slice(1)));
        const oracle = Number(corr(column(rows, 0), rest));
        const found = discrimination(rows, 0);
        if (Number.isFinite(oracle)) expect(found).toBeCloseTo(oracle, 8);
        else expect(found).toBeUndefined();
      }),
    );
  });

  test('reliability() is alpha of variances that mathjs computes', () => {
    fc.assert(
      fc.property(classes, (rows) => {
        const items = rows[0]?.length ?? 0;
        const each = Array.from({ length: items }, (_, item) =>
          Number(variance(column(rows, item), 'uncorrected')),
        );
        const all = Number(variance(rows.map(total), 'uncorrected'));
        const found = reliability(rows);
        if (all === 0) expect(found).toBeUndefined();
        else expect(found).toBeCloseTo((items / (items - 1)) * (1 - total(each) / all), 8);
      }),
    );
  });
});
