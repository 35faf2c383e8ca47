/**
 * Source: W3C Web Audio API: StereoPannerNode (PAN-1 to PAN-3); up-mixing and summing of several
 * connections to one input (PAN-5); the example of baseLatency (DIG-7).
 */
import { describe, expect, test } from 'vitest';
import { dbu, levelAt, levelOf, paths, simulate, voltsOf } from '../../simulator/index.ts';
import { panMono, panStereo } from '../../simulator/units/pan.ts';
import { setUp } from './rig-builder.ts';
import { expectNear, LINEAR_DB, SIX_DECIMALS } from './tolerance.ts';

const LEGS = ['l', 'r'] as const;

/** Voltage of the two legs of the main bus, as ratios to a level in dBu. */
function legRatios(setup: ReturnType<typeof setUp>, referenceDbu: number): number[] {
  const solution = simulate(setup);
  return LEGS.map((leg) => {
    const level = levelAt(solution, `desk.main.out.${leg}`) ?? dbu(-999);
    return voltsOf(level) / (Math.sqrt(0.6) * 10 ** (referenceDbu / 20));
  });
}

describe('PAN-1, equal power, mono', () => {
  const POSITIONS = [
    { position: -1, left: 1, right: 0 },
    { position: -0.5, left: 0.92388, right: 0.382683 },
    // Printed 0.707107.
    { position: 0, left: Math.SQRT1_2, right: Math.SQRT1_2 },
    // The law is the same seen from the other side.
    { position: 0.5, left: 0.382683, right: 0.92388 },
    { position: 1, left: 0, right: 1 },
  ];

  test.each(POSITIONS)('levelAt() a strip panned to $position: $left, $right', (row) => {
    const { position, left, right } = row;
    const board = { 'desk.ch1.pan': position };
    const [l, r] = legRatios(setUp({ levels: [-28], board }), -4);
    expectNear(l, left, SIX_DECIMALS);
    expectNear(r, right, SIX_DECIMALS);
  });

  test.each(POSITIONS)('levelAt() a track panned to $position in the box: $left, $right', (row) => {
    const { position, left, right } = row;
    const board = {
      'box.t1.pan': position,
      'box.t1.to': 'out1-2',
      'desk.ch1.pan': -1,
      'desk.ch2.in': 'converter.out2',
      'desk.ch2.pan': 1,
    };
    const [l, r] = legRatios(setUp({ levels: [-28], strips: 2, board }), -4);
    expectNear(l, left, SIX_DECIMALS);
    expectNear(r, right, SIX_DECIMALS);
  });

  test.each(POSITIONS)('panMono() at $position: $left, $right', ({ position, left, right }) => {
    const ratios = panMono('equal-power', position);
    expectNear(ratios.left, left, SIX_DECIMALS);
    expectNear(ratios.right, right, SIX_DECIMALS);
  });

  test('levelAt() hard left leaves silence on the right, not a small level', () => {
    const solution = simulate(setUp({ levels: [-28], board: { 'desk.ch1.pan': -1 } }));
    expect(levelAt(solution, 'desk.main.out.r')).toBe(-Infinity);
  });
});

describe('PAN-2, the power is constant', () => {
  test('levelAt() both legs hold gL² + gR² = 1 at every hundredth of the way', () => {
    for (let hundredth = -100; hundredth <= 100; hundredth += 1) {
      const position = hundredth / 100;
      const { left, right } = panMono('equal-power', position);
      expectNear(left ** 2 + right ** 2, 1, SIX_DECIMALS);
      if (hundredth % 10 !== 0) continue;
      const solution = simulate(setUp({ levels: [-25], board: { 'desk.ch1.pan': position } }));
      expectNear(levelAt(solution, 'desk.main.out'), -1, LINEAR_DB);
    }
  });
});

describe('PAN-3, a stereo input of 1 and 0.25', () => {
  const POSITIONS = [
    { position: -1, left: 1.25, right: 0, pans: [-1, -1] },
    { position: -0.5, left: 1.176777, right: 0.176777, pans: [-1, 0] },
    { position: 0, left: 1, right: 0.25, pans: [-1, 1] },
    { position: 0.5, left: Math.SQRT1_2, right: 0.957107, pans: [0, 1] },
    { position: 1, left: 0, right: 1.25, pans: [1, 1] },
  ] as const;

  test.each(POSITIONS)('panStereo() at $position: $left, $right', ({ position, left, right }) => {
    const { leftToLeft, leftToRight, rightToLeft, rightToRight } = panStereo(position);
    expectNear(leftToLeft + 0.25 * rightToLeft, left, SIX_DECIMALS);
    expectNear(leftToRight + 0.25 * rightToRight, right, SIX_DECIMALS);
  });

  // The panner folds the far side into the near one. On a desk: each side on a mono strip of its own,
  // of which the near one stays hard over and the far one is panned across.
  test.each(POSITIONS)(
    'levelAt() $position, as two strips panned to $pans: $left, $right',
    (row) => {
      const { left, right, pans } = row;
      const board = {
        'desk.ch1.aux1': 20 * Math.log10(0.25),
        'desk.ch2.in': 'desk.aux1.out',
        'desk.ch1.pan': pans[0],
        'desk.ch2.pan': pans[1],
      };
      const [l, r] = legRatios(setUp({ levels: [-21], strips: 2, auxes: ['pre'], board }), 3);
      expectNear(l, left, SIX_DECIMALS);
      expectNear(r, right, SIX_DECIMALS);
    },
  );
});

describe('PAN-5, a bus adds', () => {
  test('levelOf() five equal ways stand at 5 times one, not at 5/5 of it', () => {
    const board = {
      'desk.ch1.sub1': true,
      'desk.ch1.sub2': true,
      'desk.ch1.sub3': true,
      'desk.ch1.sub4': true,
      'desk.ch1.pan': -1,
    };
    const [l] = legRatios(setUp({ levels: [-33], subgroups: 4, board }), -9);
    expectNear(l, 5, SIX_DECIMALS);
  });

  test('levelOf() the level of t1 on the bus does not move when six others are assigned', () => {
    const levels = [-23, -12, -14, -16, -18, -19, -22];
    const off = Object.fromEntries([2, 3, 4, 5, 6, 7].map((n) => [`desk.ch${n}.main`, false]));
    const [alone, together] = [off, {}].map((board) =>
      levelOf(simulate(setUp({ levels, board })), 't1', 'out.capture'),
    );
    expectNear(alone, 1, LINEAR_DB);
    expectNear(together, 1, LINEAR_DB);
  });
});

describe('DIG-7, latency of buffers: frames by sample rate', () => {
  /** Half of the last decimal that is printed, in milliseconds. */
  const PRINTED_MS = 0.000005;

  test('paths() 128 frames at 44.1 kHz out of the box and 128 back into it: 5.80499 ms', () => {
    const setup = setUp({
      levels: [-20],
      converterMs: 128 / 44.1,
      board: {
        'out.capture.l': 'none',
        'converter.in1': 'desk.main.out.l',
        'box.recorded.in': 'in1',
      },
    });
    const [way] = paths(simulate(setup), 't1', 'box.recorded.in');
    expectNear((way?.delay ?? Number.NaN) * 1000, 5.80499, PRINTED_MS);
  });

  test('paths() a plug-in with a buffer of 128 frames at 48 kHz: 2.66667 ms, and no level moves', () => {
    const plugins = { t1: [{ id: 'slow', kind: 'gain', latencyMs: 128 / 48 }] } as const;
    const solution = simulate(setUp({ levels: [-20], plugins }));
    const [way] = paths(solution, 't1', 'out.capture');
    expectNear((way?.delay ?? Number.NaN) * 1000, 2.66667, PRINTED_MS);
    expectNear(levelOf(solution, 't1', 'out.capture'), 4, LINEAR_DB);
  });
});
