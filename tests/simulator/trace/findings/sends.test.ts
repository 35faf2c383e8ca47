import { describe, expect, test } from 'vitest';
import type { Board } from '../../../../simulator/board/board.ts';
import { type BoxRoom, boxRoom } from '../../circuit/box-room.ts';
import { found, foundIn } from './found.ts';

describe('ghost', () => {
  const PRE: Board = { 'desk.a.wash': -8, 'desk.a.wash.tap': 'pre' };

  test('a send before the fader into a reverb that is heard with the mix', () => {
    expect(found('ghost', PRE)).toEqual([
      {
        code: 'ghost',
        severity: 'note',
        bus: 'desk.wash',
        sends: ['desk.a.wash'],
        device: 'rack.hall',
        output: 'out.tape',
        mendAt: 'desk.a.wash.tap',
        follow: 'viola',
      },
    ]);
  });

  test('still there when the fader is down: that is when it is heard', () => {
    expect(found('ghost', { ...PRE, 'desk.a.fader': -Infinity })).toHaveLength(1);
  });

  test.each<[string, Board]>([
    ['a send after the fader', { ...PRE, 'desk.a.wash.tap': 'post' }],
    ['the return muted', { ...PRE, 'desk.w.mute': true }],
    ['headphones, without a device', { 'desk.a.ears': -8 }],
    [
      'a device in the mix that the strip goes through as well',
      {
        ...PRE,
        'rack.hall.in': 'none',
        'desk.c.in': 'desk.wash.out',
        'desk.main.insert.return.l': 'rack.twin.out.l',
        'desk.main.insert.return.r': 'rack.twin.out.r',
        'rack.twin.in.l': 'desk.main.insert.send.l',
        'rack.twin.in.r': 'desk.main.insert.send.r',
      },
    ],
    ['a reverb that only the headphones hear', { ...PRE, 'desk.w.main': false, 'desk.w.ears': -4 }],
  ])('not with %s', (_, board) => {
    expect(found('ghost', board)).toEqual([]);
  });
});

describe('ghost in the box', () => {
  const ghosts = (board: BoxRoom['board'], tap = 'switchable') =>
    foundIn(
      'ghost',
      boxRoom({
        buses: [
          {
            id: 'room',
            label: 'Room',
            tap,
            plugins: [{ id: 'hall', label: 'Hall', kind: 'reverb' }],
          },
          {
            id: 'glue',
            label: 'Glue',
            plugins: [{ id: 'comp', label: 'Comp', kind: 'compressor' }],
          },
        ],
        board: { 'box.viola.room': -7, 'box.room.to': 'out5-6', ...board },
      }).setup,
    );
  const PRE = { 'box.viola.room.tap': 'pre' };

  test('a send before the fader into a bus whose plug-in is heard where the track is', () => {
    expect(ghosts(PRE)).toEqual([
      {
        code: 'ghost',
        severity: 'note',
        bus: 'box.room',
        sends: ['box.viola.room'],
        device: 'box.room.hall',
        output: 'out.tape',
        mendAt: 'box.viola.room.tap',
        follow: 'viola',
      },
    ]);
    expect(ghosts({}, 'pre')).toMatchObject([{ mendAt: 'box.viola.room' }]);
  });

  test('one in a bus that the track is assigned to, but not the plug-in that both go through', () => {
    const inMix = { 'box.viola.to': 'glue', 'box.room.to': 'glue', 'box.glue.to': 'out5-6' };
    expect(ghosts({ ...PRE, ...inMix })).toMatchObject([{ device: 'box.room.hall' }]);
    // Without the reverb what is left is a bus in the mix; the compressor behind it takes the track too.
    expect(ghosts({ ...PRE, ...inMix, 'box.room.hall.on': false })).toEqual([]);
  });

  test.each<[string, BoxRoom['board']]>([
    ['a send after the fader', {}],
    ['the plug-in off', { ...PRE, 'box.room.hall.on': false }],
    ['the bus muted', { ...PRE, 'box.room.mute': true }],
    [
      'the track muted on the desk, so that only the effect is heard',
      { ...PRE, 'desk.s1.mute': true },
    ],
  ])('not with %s', (_, board) => {
    expect(ghosts(board)).toEqual([]);
  });
});

describe('post-fader-headphones', () => {
  const CANS: Board = { 'out.cans': 'desk.wash.out', 'rack.hall.in': 'none', 'desk.a.wash': -8 };

  test('a send after the fader into an aux that is plugged into an output', () => {
    expect(found('post-fader-headphones', CANS)).toEqual([
      {
        code: 'post-fader-headphones',
        severity: 'note',
        bus: 'desk.wash',
        sends: ['desk.a.wash'],
        output: 'out.cans',
        mendAt: 'desk.a.wash.tap',
        follow: 'viola',
      },
    ]);
  });

  test('where the tap is fixed, the send itself is where to mend it', () => {
    const board = { 'out.cans': 'desk.late.out', 'desk.b.late': -8 };
    expect(found('post-fader-headphones', board)).toMatchObject([{ mendAt: 'desk.b.late' }]);
  });

  test.each<[string, Board]>([
    ['a send before the fader', { ...CANS, 'desk.a.wash.tap': 'pre' }],
    ['an effect, which lies between aux and output', { 'desk.a.wash': -8 }],
    ['a closed send', { ...CANS, 'desk.a.wash': -Infinity }],
  ])('not with %s', (_, board) => {
    expect(found('post-fader-headphones', board)).toEqual([]);
  });
});

describe('post-fader-headphones in the box', () => {
  const CUE: BoxRoom = {
    buses: [{ id: 'cue', label: 'Cue', tap: 'switchable' }],
    board: {
      'box.viola.cue': -6,
      'box.cue.to': 'out5-6',
      'desk.s5.in': 'none',
      'out.tape': 'converter.out5',
    },
  };
  const headphones = (room: BoxRoom) => foundIn('post-fader-headphones', boxRoom(room).setup);

  test('a send after the fader into a bus that an output is plugged straight into', () => {
    expect(headphones(CUE)).toEqual([
      {
        code: 'post-fader-headphones',
        severity: 'note',
        bus: 'box.cue',
        sends: ['box.viola.cue'],
        output: 'out.tape',
        mendAt: 'box.viola.cue.tap',
        follow: 'viola',
      },
    ]);
  });

  test.each<[string, BoxRoom]>([
    ['a send before the fader', { ...CUE, board: { ...CUE.board, 'box.viola.cue.tap': 'pre' } }],
    [
      'an effect on the bus',
      {
        ...CUE,
        buses: [
          {
            id: 'cue',
            label: 'Cue',
            tap: 'switchable',
            plugins: [{ id: 'hall', label: 'Hall', kind: 'reverb' }],
          },
        ],
      },
    ],
    [
      'an output where the track itself is heard',
      { ...CUE, board: { ...CUE.board, 'box.viola.to': 'out5' } },
    ],
  ])('not with %s', (_, room) => {
    expect(headphones(room)).toEqual([]);
  });
});
