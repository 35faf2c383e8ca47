/**
 * Source: published exercise on the transitive closure. Of 4 → 1, 1 → 2 and 3 → 4 the rows of what
 * each reaches are 0100, 0000, 1101, 1100.
 */
import { describe, expect, test } from 'vitest';
import { type ControlValue, levelOf, paths, simulate } from '../../simulator/index.ts';
import { setUp } from './rig-builder.ts';
import { expectNear } from './tolerance.ts';

const REACH = ['0100', '0000', '1101', '1100'];
const NODES = [1, 2, 3, 4];
const LEVELS = [-11, -14, -18, -23];

/** Node i is aux i. Track i enters there; strip 4 + i takes it from there to the nodes that i leads to. */
function nodes(edges: readonly (readonly [number, number])[]) {
  const board: Record<string, ControlValue> = {};
  for (const node of NODES) {
    board[`desk.ch${node}.aux${node}`] = 0;
    board[`desk.ch${4 + node}.in`] = `desk.aux${node}.out`;
  }
  for (const [from, to] of edges) board[`desk.ch${4 + from}.aux${to}`] = -from;
  return simulate(
    setUp({ levels: LEVELS, strips: 8, auxes: ['post', 'pre', 'switchable', 'post'], board }),
  );
}

const EDGES = [
  [4, 1],
  [1, 2],
  [3, 4],
] as const;

describe('REACH-1', () => {
  const solution = nodes(EDGES);
  const pairs = NODES.flatMap((from) =>
    NODES.flatMap((to) => (from === to ? [] : [{ from, to, reaches: REACH[from - 1]?.[to - 1] }])),
  );

  test.each(pairs)('paths() from $from to $to: $reaches', ({ from, to, reaches }) => {
    const ways = paths(solution, `t${from}`, `desk.aux${to}.out`);
    expect(ways).toHaveLength(Number(reaches));
    const level = levelOf(solution, `t${from}`, `desk.aux${to}.out`);
    if (reaches === '0') expect(level).toBe(-Infinity);
    else expectNear(level, ways[0]?.level ?? Number.NaN);
  });

  test('paths() 3 reaches 2 by 4 and 1: -18 + 24 - 3 - 4 - 1 = -2 dBu', () => {
    const [way] = paths(solution, 't3', 'desk.aux2.out');
    const sums = way?.steps.map(({ place }) => place).filter((place) => /aux\d\.sum$/.test(place));
    expect(sums).toEqual(['desk.aux3.sum', 'desk.aux4.sum', 'desk.aux1.sum', 'desk.aux2.sum']);
    expectNear(way?.level, -2);
    expectNear(levelOf(solution, 't3', 'desk.aux2.out'), -2);
  });

  test('simulate() no node reaches itself: no loop; with 2 → 3 besides, all four are in one', () => {
    expect(solution.loops).toEqual([]);
    const closed = nodes([...EDGES, [2, 3]]);
    expect(closed.loops).toHaveLength(1);
    // Once round 4 → 1 → 2 → 3 → 4: -4 - 1 - 2 - 3 dB.
    expectNear(closed.loops[0]?.gain, -10);
    for (const { from, to } of pairs) {
      expect(paths(closed, `t${from}`, `desk.aux${to}.out`)).toHaveLength(1);
    }
  });
});
