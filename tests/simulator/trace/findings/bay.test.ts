import { describe, expect, test } from 'vitest';
import type { Board } from '../../../../simulator/board/board.ts';
import { simulate } from '../../../../simulator/solve/simulate.ts';
import { findings } from '../../../../simulator/trace/findings.ts';
import { bayRoom } from '../../bay-room.ts';

const rig = bayRoom();
const allFound = (board: Board) => findings({ rig, board }, simulate({ rig, board }));
const codesOf = (board: Board) => allFound(board).map(({ code }) => code);

describe('findings() in a room with a bay', () => {
  test('an output that is normalled is patched, and so is one behind a mult', () => {
    expect(codesOf({})).not.toContain('line-unpatched');
    expect(codesOf({ 'desk.c.in': 'open' })).toContain('line-unpatched');
    const split = { 'bay.split.in': 'converter.out3', 'desk.c.in': 'bay.split.out1' };
    expect(codesOf(split)).not.toContain('line-unpatched');
  });

  test('an output of the room that is normalled is fed', () => {
    const monitored = bayRoom((text) =>
      text.replace('  mults:', '        - { top: desk.late.out, bottom: out.cans }\n  mults:'),
    );
    const unfed = (board: Board) =>
      findings({ rig: monitored, board }, simulate({ rig: monitored, board })).filter(
        ({ code }) => code === 'output-unfed',
      );
    // The point stands in the open row: nothing passes by itself.
    expect(unfed({ 'out.cans': 'none' })).toHaveLength(1);
    expect(unfed({ 'out.cans': 'desk.ears.out' })).toEqual([]);
  });

  test('the send of a full-normal insert alone takes the signal away: a fault, whoever hears the device', () => {
    const board: Board = { 'rack.squash.in': 'desk.a.insert.send', 'desk.c.in': 'rack.squash.out' };
    expect(allFound(board)).toContainEqual(
      expect.objectContaining({
        code: 'insert-not-returned',
        severity: 'fault',
        owner: 'desk.a',
        passesOn: false,
        mendAt: 'desk.a.insert.return',
      }),
    );
    const splitting: Board = {
      ...board,
      'rack.squash.in': 'desk.c.insert.send',
      'desk.c.in': 'none',
    };
    expect(codesOf(splitting)).toContain('insert-not-returned');
  });

  test('an insert in an open row leads nowhere until both its jacks are plugged', () => {
    expect(codesOf({})).toContain('goes-nowhere');
    const both = {
      'rack.squash.in': 'desk.b.insert.send',
      'desk.b.insert.return': 'rack.squash.out',
    };
    expect(codesOf(both)).not.toContain('goes-nowhere');
  });

  test('one side of a normalled pair that is broken is a leg missing', () => {
    for (const plug of ['open', 'rack.squash.out']) {
      expect(allFound({ 'desk.w.in.l': plug })).toContainEqual(
        expect.objectContaining({
          code: 'leg-missing',
          pair: { kind: 'cords', place: 'desk.w.in' },
          missing: plug === 'open' ? 'l' : 'r',
        }),
      );
    }
    const both = allFound({ 'desk.w.in.l': 'open', 'desk.w.in.r': 'open' });
    expect(both.filter((one) => 'pair' in one && one.pair.kind === 'cords')).toEqual([]);
  });

  test('headphones are headphones behind a mult too', () => {
    const board = {
      'bay.split.in': 'desk.late.out',
      'out.cans': 'bay.split.out1',
      'desk.a.late': 0,
    };
    expect(codesOf(board)).toContain('post-fader-headphones');
  });
});
