import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  controlAt,
  DEFAULT_BOARD,
  isOn,
  numberAt,
  pickAt,
  valueAt,
  withValues,
} from '../../../simulator/board/board.ts';
import { movesBetween } from '../../../simulator/board/moves.ts';
import { arbitraryBoard, RUNS } from '../arbitrary-setup.ts';
import { smallRoom } from '../small-room.ts';

const rig = smallRoom();
const at = (board = DEFAULT_BOARD) => ({ rig, board });

describe('withValues()', () => {
  test('keeps only what is off its default', () => {
    const board = withValues(
      rig,
      { 'desk.a.fader': -4 },
      { 'desk.b.mute': true, 'desk.c.fader': 0 },
    );
    expect(board).toEqual({ 'desk.a.fader': -4, 'desk.b.mute': true });
    expect(withValues(rig, board, { 'desk.a.fader': 0 })).toEqual({ 'desk.b.mute': true });
    expect(withValues(rig, {}, { 'box.organ.to': 'out3-4', 'desk.a.in': 'none' })).toEqual({
      'desk.a.in': 'none',
    });
  });

  test('takes −0 for the default 0', () => {
    expect(withValues(rig, {}, { 'desk.a.pan': -0 })).toEqual({});
  });

  test('leaves the board that it was given as it was', () => {
    const board = Object.freeze({ 'desk.a.fader': -4 });
    withValues(rig, board, { 'desk.a.fader': -8 });
    expect(board).toEqual({ 'desk.a.fader': -4 });
  });

  test('refuses an address that the rig does not have', () => {
    expect(() => withValues(rig, {}, { 'desk.z.fader': -1 })).toThrow(RangeError);
  });

  test('never holds a default, whatever was moved', () => {
    fc.assert(
      fc.property(arbitraryBoard(rig), arbitraryBoard(rig), (one, other) => {
        const board = withValues(rig, one, other);
        for (const [address, value] of Object.entries(board)) {
          expect(controlAt(rig, address).default).not.toBe(value);
        }
      }),
      RUNS,
    );
  });
});

describe('movesBetween()', () => {
  test('lists what differs in the order of the controls, defaults filled in', () => {
    const moves = movesBetween(
      rig,
      { 'desk.b.fader': -7, 'desk.a.mute': true },
      { 'rack.hall.level': 3, 'desk.b.fader': -9, 'desk.a.mute': true },
    );
    expect(moves.map(({ control, from, to }) => [control.address, from, to])).toEqual([
      ['desk.b.fader', -7, -9],
      ['rack.hall.level', 0, 3],
    ]);
  });

  test('lists nothing between a board and itself, and leads from one board to the other', () => {
    fc.assert(
      fc.property(arbitraryBoard(rig), arbitraryBoard(rig), (one, other) => {
        expect(movesBetween(rig, one, one)).toEqual([]);
        const moves = movesBetween(rig, one, other).map(({ control, to }) => [control.address, to]);
        expect(withValues(rig, one, Object.fromEntries(moves))).toEqual(other);
      }),
      RUNS,
    );
  });
});

describe('reading a control', () => {
  test('valueAt() gives the board’s value, else the default', () => {
    expect(valueAt(at({ 'desk.a.fader': -13 }), 'desk.a.fader')).toBe(-13);
    expect(valueAt(at(), 'desk.a.ears')).toBe(-Infinity);
    expect(valueAt(at(), 'box.viola.to')).toBe('out1');
  });

  test('numberAt(), isOn() and pickAt() give what they are named for, or refuse', () => {
    expect(numberAt(at(), 'rack.squash.threshold')).toBe(0);
    expect(isOn(at({ 'desk.a.band': true }), 'desk.a.band')).toBe(true);
    expect(pickAt(at(), 'desk.c.in')).toBeUndefined();
    expect(pickAt(at(), 'desk.b.in')).toBe('converter.out2');
    expect(() => numberAt(at(), 'desk.a.mute')).toThrow(RangeError);
    expect(() => isOn(at(), 'desk.a.fader')).toThrow(RangeError);
  });

  test.each(['desk.z.fader', '', '__proto__', 'constructor', 'toString'])(
    'valueAt(%j) is refused',
    (address) => {
      expect(() => valueAt(at(), address)).toThrow(RangeError);
    },
  );
});
