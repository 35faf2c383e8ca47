import { describe, expect, test } from 'vitest';
import { boardOf } from '../../../../simulator/board/file-board.ts';
import {
  groupsOf,
  LOOKS_ALIKE,
  lookAlike,
  readingAt,
} from '../../../../simulator/puzzle/hunt/reading.ts';
import { simulate } from '../../../../simulator/solve/simulate.ts';
import { dbu } from '../../../../simulator/units/level.ts';
import { netLoft } from './net-loft-room.ts';

const rig = netLoft();
const read = (place: string, board = {}) =>
  readingAt(simulate({ rig, board: boardOf('board', rig, board) }), 'cello', place);

describe('readingAt()', () => {
  test('a mono place shows one level: −19 dBFS + 22 = 3 dBu', () => {
    expect(read('desk.ch3.in')).toEqual([expect.closeTo(3, 6)]);
  });
  test('a stereo place shows each side, 3 dB down in the centre of an equal-power pan', () => {
    expect(read('desk.main.out')).toEqual([expect.closeTo(-0.0103, 3), expect.closeTo(-0.0103, 3)]);
  });
  test('below −60 dBu a meter shows nothing', () => {
    expect(read('desk.ch3.fader', { 'desk.ch3.fader': -62 })).toEqual([expect.closeTo(-59, 6)]);
    expect(read('desk.ch3.aux1', { 'desk.ch3.fader': -62, 'desk.ch3.aux1': -2 })).toEqual([
      -Infinity,
    ]);
  });
});

const at = (...levels: number[]) => levels.map(dbu);

describe('groupsOf()', () => {
  test('keeps apart what differs on one side, and silence from everything', () => {
    expect(groupsOf([at(-3, -3), at(-3, -9), at(-3, -3.2), at(-Infinity, -3)])).toEqual([
      0, 1, 0, 2,
    ]);
  });
  test('a row without a gap is one group, whatever the order', () => {
    const step = LOOKS_ALIKE * 0.9;
    expect(groupsOf([at(0), at(2 * step), at(step)])).toEqual([0, 0, 0]);
    expect(groupsOf([at(0), at(2 * step)])).toEqual([0, 1]);
  });
  test('no level at all is a group of its own', () => {
    expect(groupsOf([[undefined], at(0), [undefined]])).toEqual([0, 1, 0]);
  });
});

test('lookAlike() compares side by side', () => {
  expect(lookAlike(at(0, -6), at(0.3, -6.3))).toBe(true);
  expect(lookAlike(at(0, -6), at(0, -6.6))).toBe(false);
  expect(lookAlike(at(-Infinity), at(-Infinity))).toBe(true);
});
