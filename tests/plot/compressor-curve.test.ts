import fc from 'fast-check';
import { expect, test } from 'vitest';
import { db, dbu } from '../../simulator/index.ts';
import { curvePoints, pointAt } from '../../src/plot/compressor-curve.ts';

/** Source: Giannoulis, Massberg, Reiss, JAES 60(6) 2012; the levels are computed from its static curve. */
test.each([
  [-25, -25],
  [-17.5, -19.375],
  [-12, -18],
  [0, -15],
])('CMP-2 pointAt() with threshold -20, ratio 4 and no knee: %f in, %f out', (into, out) => {
  const curve = { threshold: dbu(-20), ratio: 4, knee: db(0) };
  expect(pointAt(curve, into).out).toBeCloseTo(out, 9);
});

test('curvePoints() without knee is three points: both ends, and the threshold', () => {
  const curve = { threshold: dbu(-7), ratio: 3, knee: db(0) };
  expect(curvePoints(curve, -40, 20)).toEqual([
    { into: -40, out: -40 },
    { into: -7, out: -7 },
    { into: 20, out: 2 },
  ]);
});

test('curvePoints() rise without a step down, lie on or under unity, and run from end to end', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -40, max: 20, noNaN: true }),
      fc.constantFrom(1, 1.5, 4, Infinity),
      fc.double({ min: 0, max: 24, noNaN: true }),
      (threshold, ratio, knee) => {
        const points = curvePoints({ threshold: dbu(threshold), ratio, knee: db(knee) }, -60, 30);
        expect([points.at(0)?.into, points.at(-1)?.into]).toEqual([-60, 30]);
        points.forEach(({ into, out }, index) => {
          expect(out).toBeLessThanOrEqual(into + 1e-9);
          expect(out).toBeGreaterThanOrEqual((points[index - 1]?.out ?? -Infinity) - 1e-9);
          expect(into).toBeGreaterThanOrEqual(points[index - 1]?.into ?? -Infinity);
        });
      },
    ),
  );
});
