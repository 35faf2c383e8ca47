/**
 * The three kinds of rows of a patchbay, as the trade and general encyclopedias (articles on patch panels and
 * patchbays) describe them: full-normal, half-normal and open. No figure comes from them but which plug breaks what.
 */
import { describe, expect, test } from 'vitest';
import { type ControlValue, levelAt, levelOf, simulate } from '../../simulator/index.ts';
import { setUp } from './rig-builder.ts';
import { expectNear } from './tolerance.ts';

/** Levels of the two tracks as they come out of the converter, in dBu. */
const [T1, T2] = [4, -6] as const;
/** One output into two inputs instead of one, in dB: −0.1720 + 0.0864 (LOAD-1). */
const SECOND_LOAD = -0.0856;

/** Output 1 above the line input of strip 1, in a row of one point. */
const hear = (kind: 'full' | 'half' | 'open', board: Record<string, ControlValue>) =>
  simulate(
    setUp({
      levels: [T1 - 24, T2 - 24],
      strips: 3,
      bay: {
        rows: [
          {
            id: 'a',
            label: 'Row A',
            kind,
            points: [{ top: 'converter.out1', bottom: 'desk.ch1.in' }],
          },
        ],
      },
      board: { 'desk.ch1.in': 'none', 'desk.ch2.in': 'none', ...board },
    }),
  );

const PLUGS = {
  nothing: {},
  'a cord in the top jack': { 'desk.ch3.in': 'converter.out1' },
  'a cord in the bottom jack': { 'desk.ch1.in': 'converter.out2' },
  'a cord in either jack': {
    'desk.ch3.in': 'converter.out1',
    'desk.ch1.in': 'converter.out2',
  },
  'a cord from the top to the bottom jack': { 'desk.ch1.in': 'converter.out1' },
} as const;

/** What arrives below and at the other end of a cord in the top jack: a track, or silence. */
const T1_SPLIT = T1 + SECOND_LOAD;
type Row = readonly [
  check: string,
  kind: 'full' | 'half' | 'open',
  plugs: keyof typeof PLUGS,
  below: number,
  atTop: number,
];
const TABLE: readonly Row[] = [
  ['PATCH-1', 'full', 'nothing', T1, -Infinity],
  ['PATCH-1', 'half', 'nothing', T1, -Infinity],
  ['PATCH-2', 'full', 'a cord in the top jack', -Infinity, T1],
  ['PATCH-2', 'full', 'a cord in the bottom jack', T2, -Infinity],
  ['PATCH-2', 'full', 'a cord in either jack', T2, T1],
  ['PATCH-3', 'half', 'a cord in the top jack', T1_SPLIT, T1_SPLIT],
  ['PATCH-3', 'half', 'a cord in the bottom jack', T2, -Infinity],
  ['PATCH-3', 'half', 'a cord in either jack', T2, T1],
  ['PATCH-4', 'open', 'nothing', -Infinity, -Infinity],
  ['PATCH-4', 'open', 'a cord in the top jack', -Infinity, T1],
  ['PATCH-4', 'open', 'a cord in the bottom jack', T2, -Infinity],
  ['PATCH-4', 'open', 'a cord in either jack', T2, T1],
  ...(['full', 'half', 'open'] as const).map(
    (kind) => ['PATCH-1', kind, 'a cord from the top to the bottom jack', T1, -Infinity] as const,
  ),
];

describe('levelAt() below a point, and at the end of a cord from its top jack', () => {
  test.each(TABLE)('%s: %s-normal, %s: %d and %d dBu', (_, kind, plugs, below, atTop) => {
    const solution = hear(kind, PLUGS[plugs]);
    for (const [place, level] of [
      ['desk.ch1.in', below],
      ['desk.ch3.in', atTop],
    ] as const) {
      if (level === -Infinity) expect(levelAt(solution, place)).toBe(level);
      else expectNear(levelAt(solution, place), level);
    }
  });

  test.each(['full', 'half'] as const)(
    'PATCH-2, PATCH-3: %s-normal, a plug without a cord in the bottom jack silences it',
    (kind) => {
      expect(levelAt(hear(kind, { 'desk.ch1.in': 'open' }), 'desk.ch1.in')).toBe(-Infinity);
    },
  );
});

describe('an insert on the bay: its send above its return', () => {
  const insert = (kind: 'full' | 'half' | 'open', board: Record<string, ControlValue>) => {
    const points = [{ top: 'desk.ch1.insert.send', bottom: 'desk.ch1.insert.return' }];
    const setup = setUp({
      levels: [T1 - 24],
      rack: [{ id: 'amp', kind: 'gain' }],
      bay: { rows: [{ id: 'i', label: 'Inserts', kind, points }] },
      board,
    });
    return levelOf(simulate(setup), 't1', 'desk.ch1.insert');
  };
  const SENT = { 'rack.amp.in': 'desk.ch1.insert.send', 'rack.amp.gain': 3 };
  const BOTH = { ...SENT, 'desk.ch1.insert.return': 'rack.amp.out' };

  test.each([
    ['full', 'no cord', {}, T1],
    ['full', 'a cord in the send', SENT, -Infinity],
    ['full', 'a cord in each', BOTH, T1 + 3],
    ['half', 'no cord', {}, T1],
    ['half', 'a cord in the send', SENT, T1_SPLIT],
    ['half', 'a cord in each', BOTH, T1 + 3],
    ['open', 'no cord', {}, -Infinity],
    ['open', 'a cord in the send', SENT, -Infinity],
    ['open', 'a cord in each', BOTH, T1 + 3],
  ] as const)('PATCH-1…4: %s-normal, %s: t1 at %d dBu behind it', (kind, _, board, level) => {
    if (level === -Infinity) expect(insert(kind, board)).toBe(level);
    else expectNear(insert(kind, board), level);
  });
});
