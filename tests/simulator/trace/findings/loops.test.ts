import { describe, expect, test } from 'vitest';
import type { Board } from '../../../../simulator/board/board.ts';
import { allFound, found } from './found.ts';

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
