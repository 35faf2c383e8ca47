import * as fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import type { Board } from '../../../simulator/board/board.ts';
import { candidateClaims, forgottenMoves } from '../../../simulator/grade/candidates.ts';
import { strangersIn } from '../../../simulator/grade/check-claim.ts';
import { judge } from '../../../simulator/grade/judge.ts';
import { simulate } from '../../../simulator/solve/simulate.ts';
import { arbitraryBoard } from '../arbitrary-setup.ts';
import { smallRoom } from '../small-room.ts';

// Properties take their time on a machine that is busy.
vi.setConfig({ testTimeout: 30_000 });

const rig = smallRoom();
const hearingOf = (board: Board) => {
  const setup = { rig, board };
  return { setup, solution: simulate(setup) };
};

describe('candidateClaims()', () => {
  test('each holds in the solution, fails at the start, and names what the rig has', () => {
    fc.assert(
      fc.property(arbitraryBoard(rig, { loops: true }), arbitraryBoard(rig), (start, solution) => {
        const [before, after] = [hearingOf(start), hearingOf(solution)];
        for (const claim of candidateClaims(rig, start, solution)) {
          expect(strangersIn(claim, rig)).toEqual([]);
          expect(judge(claim, after).holds, JSON.stringify(claim)).toBe(true);
          expect(judge(claim, before).holds, JSON.stringify(claim)).toBe(false);
        }
      }),
      { seed: 20260417, numRuns: 40 },
    );
  });

  test('there are none where nothing was moved', () => {
    const board = { 'desk.a.fader': -4 };
    expect(candidateClaims(rig, board, board)).toEqual([]);
  });

  test('a fader that comes up is told by the level, and by nothing of another source', () => {
    const claims = candidateClaims(rig, { 'desk.a.fader': -20 }, { 'desk.a.fader': -5 });
    expect(claims.length).toBeGreaterThan(0);
    expect(claims.every((claim) => claim.kind === 'reaches' && claim.source === 'viola')).toBe(
      true,
    );
  });
});

test('forgottenMoves() leaves out one move at a time, and brings back a default', () => {
  const start: Board = { 'desk.a.fader': -20 };
  const solution: Board = { 'desk.b.fader': -7 };
  expect(forgottenMoves(rig, start, solution)).toEqual([
    { address: 'desk.a.fader', board: { 'desk.a.fader': -20, 'desk.b.fader': -7 } },
    { address: 'desk.b.fader', board: {} },
  ]);
});
