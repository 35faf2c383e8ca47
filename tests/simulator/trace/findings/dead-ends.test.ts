import { describe, expect, test } from 'vitest';
import type { Board } from '../../../../simulator/board/board.ts';
import { type BoxRoom, boxRoom } from '../../circuit/box-room.ts';
import { found, foundIn } from './found.ts';

/** The organ comes up on the stereo strip, so that nothing of it is left over. */
const ORGAN_PATCHED: Board = { 'desk.w.in.l': 'converter.out3', 'desk.w.in.r': 'converter.out4' };

describe('line-unpatched', () => {
  test('each converter output that carries something and is plugged nowhere', () => {
    expect(found('line-unpatched', {})).toEqual(
      ['converter.out3', 'converter.out4'].map((line) => ({
        code: 'line-unpatched',
        severity: 'fault',
        line,
        owners: ['box.organ'],
        mendAt: 'box.organ.to',
        follow: 'organ',
      })),
    );
  });

  test('not once it is plugged, nor when nothing sounds there', () => {
    expect(found('line-unpatched', ORGAN_PATCHED)).toEqual([]);
    expect(found('line-unpatched', { 'box.organ.mute': true })).toEqual([]);
  });
});

describe('output-unfed', () => {
  test('an output with nothing plugged in', () => {
    expect(found('output-unfed', { 'out.cans': 'none' })).toMatchObject([
      { severity: 'note', output: 'out.cans', mendAt: 'out.cans' },
    ]);
  });

  test('not when one side of it is plugged: then a leg is missing', () => {
    expect(found('output-unfed', { 'out.tape.l': 'none' })).toEqual([]);
  });
});

describe('goes-nowhere', () => {
  test('a track that is assigned nowhere', () => {
    expect(found('goes-nowhere', { 'box.horn.to': 'none' })).toMatchObject([
      { severity: 'fault', source: 'horn', follow: 'horn' },
    ]);
  });

  test('a mute on the only way is a note, and is where to mend it', () => {
    expect(found('goes-nowhere', { 'desk.b.mute': true })).toMatchObject([
      {
        severity: 'note',
        source: 'horn',
        output: 'out.tape',
        stop: { code: 'closed', places: ['desk.b.mute'] },
        mendAt: 'desk.b.mute',
      },
    ]);
  });

  test('an assign off on the only way is a fault', () => {
    expect(found('goes-nowhere', { 'desk.b.main': false })).toMatchObject([
      { severity: 'fault', source: 'horn', mendAt: 'desk.b.main' },
    ]);
  });

  test('not when it is heard in the headphones alone, nor when its line tells it', () => {
    expect(found('goes-nowhere', { 'desk.b.main': false, 'desk.b.ears': -2 })).toEqual([]);
    expect(found('line-unpatched', {})).toHaveLength(2);
    expect(found('goes-nowhere', { 'desk.a.insert.return': 'rack.squash.out' })).toEqual([]);
    expect(found('goes-nowhere', {})).toEqual([]);
  });
});

describe('send-nowhere', () => {
  const SENT: Board = { 'desk.a.late': -7 };

  test('an open send into an aux that is plugged nowhere', () => {
    expect(found('send-nowhere', SENT)).toMatchObject([
      {
        severity: 'fault',
        bus: 'desk.late',
        sends: ['desk.a.late'],
        mendAt: 'desk.late.out',
        follow: 'viola',
      },
    ]);
  });

  test('an aux into a device whose return is muted is a note', () => {
    const board = { 'desk.a.wash': -7, 'desk.w.mute': true };
    expect(found('send-nowhere', board)).toMatchObject([
      { severity: 'note', bus: 'desk.wash', mendAt: 'desk.w.mute' },
    ]);
  });

  test('not when the aux is heard, and not when the send is closed', () => {
    expect(found('send-nowhere', { ...SENT, 'desk.c.in': 'desk.late.out' })).toEqual([]);
    expect(found('send-nowhere', {})).toEqual([]);
  });
});

describe('send-nowhere in the box', () => {
  const lost = (board: BoxRoom['board']) =>
    foundIn(
      'send-nowhere',
      boxRoom({
        buses: [
          { id: 'room', label: 'Room', tap: 'post' },
          { id: 'print', label: 'Print', tap: 'pre' },
        ],
        board: { 'box.viola.room': -7, ...board },
      }).setup,
    );

  test('an open send into a bus that is assigned nowhere', () => {
    expect(lost({})).toMatchObject([
      {
        severity: 'fault',
        bus: 'box.room',
        sends: ['box.viola.room'],
        stop: { code: 'no-way', ends: ['box.room.pan'] },
        mendAt: 'box.room.to',
        follow: 'viola',
      },
    ]);
  });

  test('a bus whose main feed alone would lead on, and is off', () => {
    expect(lost({ 'box.main.to': 'out5-6' })).toMatchObject([
      { severity: 'fault', bus: 'box.room', mendAt: 'box.room.main' },
    ]);
  });

  test('of two buses in a row the last one, with the send into it', () => {
    expect(lost({ 'box.room.print': -2 })).toMatchObject([
      { bus: 'box.print', sends: ['box.room.print'] },
    ]);
  });

  test.each<[string, BoxRoom['board']]>([
    ['the bus assigned to an output that is plugged', { 'box.room.to': 'out5-6' }],
    ['the bus sent on to one that is heard', { 'box.room.print': -2, 'box.print.to': 'out5-6' }],
    ['the send closed', { 'box.viola.room': '-inf' }],
    [
      'the bus assigned to an output that nothing is plugged into, which is told by itself',
      { 'box.room.to': 'out5-6', 'desk.s5.in': 'none', 'desk.s6.in': 'none' },
    ],
  ])('not with %s', (_, board) => {
    expect(lost(board)).toEqual([]);
  });
});
