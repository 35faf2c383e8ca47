import { describe, expect, test } from 'vitest';
import { lockedControls, matches } from '../../../simulator/grade/locks.ts';
import { movedLocks } from '../../../simulator/grade/moved-locks.ts';
import { controls } from '../../../simulator/rig/controls.ts';
import { smallRoom } from '../small-room.ts';

const rig = smallRoom();

describe('matches()', () => {
  test.each<[string, string, boolean]>([
    ['desk.a.fader', 'desk.a.fader', true],
    ['desk.a.fader', 'desk.a.fader.l', false],
    ['desk.*.fader', 'desk.b.fader', true],
    ['desk.*.fader', 'desk.b.mute', false],
    ['desk.*', 'desk.b.mute', false],
    ['desk.a.**', 'desk.a.wash.tap', true],
    ['desk.a.**', 'desk.ab.fader', false],
    ['desk.*.wash.**', 'desk.c.wash.tap', true],
    ['desk.*.wash.**', 'desk.c.wash', true],
    ['desk.a.insert.**', 'desk.a', false],
    ['**', 'rack.hall.level', true],
    ['*.a.fader', 'desk.a.fader', true],
    ['desk.**.fader', 'desk.a.fader', false],
    ['', 'desk.a.fader', false],
  ])('%s means %s: %s', (pattern, address, expected) => {
    expect(matches(pattern, address)).toBe(expected);
  });
});

describe('lockedControls()', () => {
  test('is all that no pattern opens', () => {
    const all = controls(rig).size;
    const locked = lockedControls(rig, ['desk.*.fader', 'rack.squash.**']);
    const open =
      ['a', 'b', 'c', 'w', 'band', 'main'].length +
      ['threshold', 'ratio', 'knee', 'makeup', 'in'].length;
    expect(locked.size).toBe(all - open);
    expect(locked.has('desk.a.fader')).toBe(false);
    expect(locked.has('desk.a.mute')).toBe(true);
  });

  test('is everything without a pattern, and nothing with **', () => {
    expect(lockedControls(rig, []).size).toBe(controls(rig).size);
    expect(lockedControls(rig, ['**']).size).toBe(0);
  });
});

test('movedLocks() lists what is locked and stands elsewhere than at the start', () => {
  const start = { 'desk.a.fader': -2, 'desk.b.mute': true };
  const board = { 'desk.a.fader': -3, 'desk.c.pan': 0.5 };
  expect(movedLocks(rig, ['desk.*.fader'], start, board)).toEqual(['desk.b.mute', 'desk.c.pan']);
  expect(movedLocks(rig, ['desk.**'], start, board)).toEqual([]);
});
