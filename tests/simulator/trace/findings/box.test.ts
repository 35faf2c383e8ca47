import { describe, expect, test } from 'vitest';
import type { Board } from '../../../../simulator/board/board.ts';
import { found } from './found.ts';

describe('stray-feed', () => {
  const STRAY: Board = { 'box.main.to': 'out1-2', 'box.horn.main': true };

  test('a main feed that is on while the main mix shares outputs with tracks', () => {
    expect(found('stray-feed', STRAY)).toEqual([
      {
        code: 'stray-feed',
        severity: 'fault',
        feeds: ['box.horn.main'],
        lines: ['converter.out1', 'converter.out2'],
        sharers: ['box.viola', 'box.horn'],
        mendAt: 'box.horn.main',
        follow: 'horn',
      },
    ]);
  });

  test.each<[string, Board]>([
    ['the main mix on outputs of its own', { ...STRAY, 'box.main.to': 'out5-6' }],
    ['no main feed on', { 'box.main.to': 'out1-2' }],
    ['the fed track muted', { ...STRAY, 'box.horn.mute': true }],
    ['the main mix closed', { ...STRAY, 'box.main.fader': -Infinity }],
  ])('not with %s', (_, board) => {
    expect(found('stray-feed', board)).toEqual([]);
  });
});

describe('box-fader', () => {
  test('lists the faders of the box away from unity, of tracks and buses', () => {
    expect(found('box-fader', { 'box.horn.fader': -3, 'box.heap.fader': 2 })).toEqual([
      {
        code: 'box-fader',
        severity: 'note',
        faders: [
          { address: 'box.horn.fader', gain: -3 },
          { address: 'box.heap.fader', gain: 2 },
        ],
        mendAt: 'box.horn.fader',
        follow: 'horn',
      },
    ]);
  });

  test('not with faders of the desk, nor with pans of the box', () => {
    expect(found('box-fader', { 'desk.a.fader': -3, 'box.organ.pan': 0.4 })).toEqual([]);
  });
});
