/**
 * Source: Giannoulis, Massberg, Reiss, *Digital Dynamic Range Compressor Design*, JAES 60(6), 2012,
 * read in a secondary copy: the static curve with a knee. CMP-2 and CMP-3 are computed from it.
 */
import { describe, expect, test } from 'vitest';
import { db, dbu, levelAt, levelOf, paths, simulate } from '../../simulator/index.ts';
import { compressedLevel } from '../../simulator/units/compression.ts';
import { setUp } from './rig-builder.ts';
import { expectNear, LINEAR_DB } from './tolerance.ts';

const COMPRESSOR = [{ id: 'comp', kind: 'compressor' }] as const;
const IN_LINE = {
  'rack.comp.in': 'desk.ch1.insert.send',
  'desk.ch1.insert.return': 'rack.comp.out',
};
/** How far to either side a slope is measured, in dB. */
const STEP = 0.0005;
/** What the parabola bends within that step. */
const SLOPE = 0.0001;

/** Level in dBu that leaves the insert of a strip, for one that comes in. */
function leaving(level: number, threshold: number, ratio: string, knee: number): number {
  const board = {
    ...IN_LINE,
    'rack.comp.threshold': threshold,
    'rack.comp.ratio': ratio,
    'rack.comp.knee': knee,
  };
  const bench = { levels: [level - 30], fullScaleDbu: 30, rack: COMPRESSOR, board };
  return levelAt(simulate(setUp(bench)), 'desk.ch1.insert') ?? Number.NaN;
}

describe('CMP-1, the three pieces meet', () => {
  const [T, W] = [-7, 11];
  const CURVES = [
    { ratio: '1.5', r: 1.5 },
    { ratio: '3', r: 3 },
    { ratio: '10', r: 10 },
    { ratio: 'inf', r: Number.POSITIVE_INFINITY },
  ];

  test.each(CURVES)('levelAt() ratio $ratio meets y = x at T - W/2 = -12.5 dBu', ({ ratio }) => {
    const edge = T - W / 2;
    expectNear(leaving(edge, T, ratio, W), edge);
    const after = leaving(edge + STEP, T, ratio, W) - leaving(edge, T, ratio, W);
    const before = leaving(edge, T, ratio, W) - leaving(edge - STEP, T, ratio, W);
    expectNear(before / STEP, 1, SLOPE);
    expectNear(after / STEP, 1, SLOPE);
  });

  test.each(CURVES)('levelAt() ratio $ratio meets T + (x - T)/R at T + W/2 = -1.5 dBu', (curve) => {
    const { ratio, r } = curve;
    const edge = T + W / 2;
    expectNear(leaving(edge, T, ratio, W), T + W / 2 / r);
    const after = leaving(edge + STEP, T, ratio, W) - leaving(edge, T, ratio, W);
    const before = leaving(edge, T, ratio, W) - leaving(edge - STEP, T, ratio, W);
    expectNear(before / STEP, 1 / r, SLOPE);
    expectNear(after / STEP, 1 / r, SLOPE);
  });

  test.each(CURVES)(
    'levelAt() ratio $ratio in the knee: x + (1/R - 1)(x - T + W/2)²/(2W)',
    (curve) => {
      const { ratio, r } = curve;
      for (const x of [-11.3, -8.9, -7, -4.6, -2.2]) {
        const expected = x + ((1 / r - 1) * (x - T + W / 2) ** 2) / (2 * W);
        expectNear(leaving(x, T, ratio, W), expected);
        const curveOf = { threshold: dbu(T), ratio: r, knee: db(W) };
        expectNear(compressedLevel(curveOf, dbu(x)), expected);
      }
    },
  );

  test.each(CURVES)(
    'levelAt() ratio $ratio, widest knee and none: beyond it only T and R count',
    (curve) => {
      const { ratio, r } = curve;
      expectNear(leaving(6, T, ratio, 0), T + 13 / r);
      expectNear(leaving(6, T, ratio, 24), T + 13 / r);
      expectNear(leaving(-20, T, ratio, 24), -20);
    },
  );
});

describe('CMP-2, threshold -20 dBu, ratio 4, no knee', () => {
  test.each([
    { level: -25, out: -25 },
    { level: -17.5, out: -19.375 },
    { level: -12, out: -18 },
    { level: 0, out: -15 },
  ])('levelAt() $level dBu leaves the insert at $out dBu', ({ level, out }) => {
    expectNear(leaving(level, -20, '4', 0), out, LINEAR_DB);
  });

  test('levelOf() two different signals are turned down alike, by what both together call for', () => {
    // -12 and -6 dBu make 10·log(10^-1.2 + 10^-0.6) dBu, of which 3/4 of the excess over -20 goes.
    const solution = simulate(
      setUp({
        levels: [-42, -36],
        fullScaleDbu: 30,
        auxes: ['pre'],
        rack: COMPRESSOR,
        board: {
          'desk.ch1.aux1': 0,
          'desk.ch2.aux1': 0,
          'rack.comp.in': 'desk.aux1.out',
          'rack.comp.threshold': -20,
          'rack.comp.ratio': '4',
        },
      }),
    );
    const together = 10 * Math.log10(10 ** -1.2 + 10 ** -0.6);
    const loss = (-3 / 4) * (together + 20);
    expectNear(levelAt(solution, 'rack.comp.in'), together);
    expectNear(levelAt(solution, 'rack.comp.out'), together + loss);
    expectNear(levelOf(solution, 't1', 'rack.comp.out'), -12 + loss);
    expectNear(levelOf(solution, 't2', 'rack.comp.out'), -6 + loss);
  });

  test('levelAt() silence stays silence, whatever the make-up', () => {
    const board = { ...IN_LINE, 'desk.ch1.trim': -20, 'box.t1.mute': true, 'rack.comp.makeup': 17 };
    const solution = simulate(setUp({ levels: [-9], rack: COMPRESSOR, board }));
    expect(levelAt(solution, 'out.capture')).toBe(-Infinity);
  });
});

describe('CMP-3, the same compressor in parallel with the dry signal, at unity', () => {
  const ROWS = [
    { level: -28, boost: 6.0206 },
    { level: -20, boost: 6.0206 },
    { level: -12, boost: 3.5287 },
    { level: 0, boost: 1.4216 },
  ];
  const CURVE = { 'rack.comp.threshold': -20, 'rack.comp.ratio': '4' };

  test.each(ROWS)('levelOf() by an aux and a strip, $level dBu in: +$boost dB over dry', (row) => {
    const solution = simulate(
      setUp({
        levels: [row.level - 30],
        fullScaleDbu: 30,
        strips: 2,
        auxes: ['post'],
        rack: COMPRESSOR,
        board: {
          ...CURVE,
          'desk.ch1.aux1': 0,
          'rack.comp.in': 'desk.aux1.out',
          'desk.ch2.in': 'rack.comp.out',
        },
      }),
    );
    expect(paths(solution, 't1', 'out.capture')).toHaveLength(2);
    expectNear(levelOf(solution, 't1', 'out.capture'), row.level + row.boost);
  });

  test.each(ROWS)(
    'levelOf() by the insert of a subgroup, $level dBu in: +$boost dB over dry',
    (row) => {
      const solution = simulate(
        setUp({
          levels: [row.level - 30],
          fullScaleDbu: 30,
          subgroups: 1,
          rack: COMPRESSOR,
          board: {
            ...CURVE,
            'desk.ch1.pan': -1,
            'desk.ch1.sub1': true,
            'rack.comp.in': 'desk.sub1.insert.send.l',
            'desk.sub1.insert.return.l': 'rack.comp.out',
          },
        }),
      );
      expectNear(levelOf(solution, 't1', 'desk.main.out.l'), row.level + row.boost);
    },
  );
});
