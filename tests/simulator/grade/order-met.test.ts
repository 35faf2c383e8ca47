import { describe, expect, test } from 'vitest';
import { withValues } from '../../../simulator/board/board.ts';
import { orderMet } from '../../../simulator/grade/order-met.ts';
import type { FileBoard } from '../../../simulator/rig/schema.ts';
import { simulate } from '../../../simulator/solve/simulate.ts';
import { smallRoom } from '../small-room.ts';

const rig = smallRoom();
const met = (source: string, values: FileBoard, ...stops: string[]) =>
  orderMet(simulate({ rig, board: withValues(rig, {}, values) }), source, 'out.tape', stops);

const INSERTED = {
  'rack.squash.in': 'desk.a.insert.send',
  'desk.a.insert.return': 'rack.squash.out',
};

describe('orderMet()', () => {
  test('stops in any order come back in the order of the way', () => {
    expect(met('viola', {}, 'desk.main', 'desk.a.fader', 'desk.a.trim')).toEqual([
      'desk.a.trim',
      'desk.a.fader',
      'desk.main',
    ]);
    expect(met('viola', INSERTED, 'desk.a.fader', 'rack.squash', 'desk.a.trim')).toEqual([
      'desk.a.trim',
      'rack.squash',
      'desk.a.fader',
    ]);
  });

  test.each<[string, FileBoard, string[]]>([
    ['where a stop is not on the way', {}, ['desk.a.trim', 'rack.squash', 'desk.main']],
    ['where nothing arrives', { 'desk.a.mute': true }, ['desk.a.trim', 'desk.main']],
    [
      'where a second way misses a stop: by the hall, past the fader’s main assign',
      { 'desk.a.wash': -3, 'desk.a.wash.tap': 'pre' },
      ['desk.a.trim', 'desk.a.fader', 'desk.main'],
    ],
    ['of a strip and what is in its insert', INSERTED, ['desk.a', 'rack.squash', 'desk.main']],
  ])('nothing %s', (_what, values, stops) => {
    expect(met('viola', values, ...stops)).toBeUndefined();
  });

  test('what all of several ways have in common is enough', () => {
    const values = { 'desk.a.wash': -3, 'desk.a.wash.tap': 'pre' };
    expect(met('viola', values, 'desk.main', 'desk.a.trim')).toEqual(['desk.a.trim', 'desk.main']);
  });
});
