import { describe, expect, test } from 'vitest';
import type { Board } from '../../../../simulator/board/board.ts';
import { found } from './found.ts';

describe('ghost', () => {
  const PRE: Board = { 'desk.a.wash': -8, 'desk.a.wash.tap': 'pre' };

  test('a send before the fader into a reverb that is heard with the mix', () => {
    expect(found('ghost', PRE)).toEqual([
      {
        code: 'ghost',
        severity: 'note',
        aux: 'desk.wash',
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
    ['a reverb that only the headphones hear', { ...PRE, 'desk.w.main': false, 'desk.w.ears': -4 }],
  ])('not with %s', (_, board) => {
    expect(found('ghost', board)).toEqual([]);
  });
});

describe('post-fader-headphones', () => {
  const CANS: Board = { 'out.cans': 'desk.wash.out', 'rack.hall.in': 'none', 'desk.a.wash': -8 };

  test('a send after the fader into an aux that is plugged into an output', () => {
    expect(found('post-fader-headphones', CANS)).toEqual([
      {
        code: 'post-fader-headphones',
        severity: 'note',
        aux: 'desk.wash',
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
