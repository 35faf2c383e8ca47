import { describe, expect, test } from 'vitest';
import type { Board } from '../../../../simulator/board/board.ts';
import { type BoxRoom, boxRoom } from '../../circuit/box-room.ts';
import { allFound, found, foundIn } from './found.ts';

describe('return-feeds-send', () => {
  const RETURN: Board = { 'desk.a.wash': 0, 'desk.w.wash': -9 };

  test('a stable one is a note, with its send, its device and its gain', () => {
    const [one, ...more] = found('return-feeds-send', RETURN);
    expect(more).toEqual([]);
    expect(one).toMatchObject({
      severity: 'note',
      send: 'desk.w.wash',
      device: 'rack.hall',
      stable: true,
      mendAt: 'desk.w.wash',
      follow: 'viola',
    });
  });

  test('an unstable one is a fault, and still names a track that comes into it', () => {
    expect(found('return-feeds-send', { ...RETURN, 'desk.w.wash': 3 })).toMatchObject([
      { severity: 'fault', stable: false, follow: 'viola' },
    ]);
  });

  test('not when the return feeds another send', () => {
    const board = { 'desk.a.wash': 0, 'desk.w.ears': -9 };
    expect(allFound(board).filter(({ code }) => /loop|feeds-send/.test(code))).toEqual([]);
  });
});

describe('loop', () => {
  const RING: Board = { 'desk.a.late': 0, 'desk.c.in': 'desk.late.out', 'desk.c.late': -5 };

  test('an aux that feeds itself without a device: −5 dB once round', () => {
    const [one, ...more] = found('loop', RING);
    expect(more).toEqual([]);
    expect(one).toMatchObject({ severity: 'note', stable: true, mendAt: 'desk.c.late' });
    expect(one?.gain).toBeCloseTo(-5, 9);
    expect(found('return-feeds-send', RING)).toEqual([]);
  });

  test('is a fault when it grows: +5 dB once round', () => {
    expect(found('loop', { ...RING, 'desk.c.late': 5 })).toMatchObject([{ severity: 'fault' }]);
  });

  test('not for the feedback of a delay that dies away inside it', () => {
    const board = { 'rack.wait.in': 'desk.late.out', 'rack.wait.feedback': -6 };
    expect(found('loop', board, { withDelay: true })).toEqual([]);
  });
});

describe('capture-plays-back', () => {
  const ROOM: BoxRoom = {
    captures: [
      { id: 'mix', label: 'Mix', stereo: true },
      { id: 'side', label: 'Side' },
    ],
  };
  const SIDE = {
    'converter.in1': 'desk.main.out.r',
    'desk.s1.pan': 0,
    'box.side.in': 'in1',
    'box.side.to': 'out5',
    'desk.s5.pan': 1,
    'desk.s5.fader': -6,
  };
  const inBox = (board: BoxRoom['board']) =>
    foundIn('capture-plays-back', boxRoom({ ...ROOM, ...(board ? { board } : {}) }).setup);

  test('tells the capture track, where it records and where it plays back to: −6 dB once round', () => {
    const [one, ...more] = inBox(SIDE);
    expect(more).toEqual([]);
    expect(one).toMatchObject({
      severity: 'fault',
      capture: 'box.side',
      records: 'converter.in1',
      plays: 'converter.out5',
      stable: true,
      mendAt: 'box.side.to',
      follow: 'viola',
    });
    expect(one?.gain).toBeCloseTo(-6, 9);
    expect(foundIn('loop', boxRoom({ ...ROOM, board: SIDE }).setup)).toEqual([]);
  });

  test('both sides of a stereo one are one, told by the side that gains more: −3 dB on the right', () => {
    const found = inBox({
      'out.tape': 'none',
      'converter.in1': 'desk.main.out.l',
      'converter.in2': 'desk.main.out.r',
      'box.mix.in': 'in1-2',
      'box.mix.to': 'out5-6',
      'desk.s1.pan': 0,
      'desk.s5.fader': -6,
      'desk.s6.fader': -3,
      'desk.s6.pan': 1,
    });
    expect(found).toMatchObject([{ capture: 'box.mix', records: 'converter.in2' }]);
    expect(found[0]?.gain).toBeCloseTo(-3, 9);
  });

  test.each<[string, BoxRoom['board']]>([
    ['one that plays back on the other side of the bus', { ...SIDE, 'desk.s5.pan': -1 }],
    ['one that plays back to a strip that is muted', { ...SIDE, 'desk.s5.mute': true }],
    ['one that plays back to an output that is not plugged', { ...SIDE, 'desk.s5.in': 'none' }],
    [
      'one that records another bus',
      { ...SIDE, 'converter.in1': 'desk.ears.out', 'desk.s1.ears': 0 },
    ],
  ])('not with %s', (_, board) => {
    expect(inBox(board)).toEqual([]);
  });
});
