import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Board } from '../../../simulator/board/board.ts';
import { cordFrom, driverOf, feedOf, inputsFedBy } from '../../../simulator/board/feeds.ts';
import { jacks } from '../../../simulator/rig/jacks.ts';
import { arbitrarySetup, RUNS } from '../arbitrary-setup.ts';
import { bayRoom } from '../bay-room.ts';
import { smallRoom } from '../small-room.ts';

const withBay = bayRoom();
const without = smallRoom();
const at = (board: Board = {}) => ({ rig: withBay, board });

describe('feedOf()', () => {
  test.each<[string, Board, string | undefined, string | undefined]>([
    ['desk.a.in', {}, 'converter.out1', 'normal'],
    ['desk.a.in', { 'desk.a.in': 'converter.out5' }, 'converter.out5', 'cord'],
    ['desk.a.in', { 'desk.a.in': 'open' }, undefined, undefined],
    ['desk.a.in', { 'rack.squash.in': 'converter.out1' }, undefined, undefined],
    ['desk.c.in', { 'rack.squash.in': 'converter.out3' }, 'converter.out3', 'normal'],
    ['desk.a.insert.return', {}, 'desk.a.insert.send', 'normal'],
    ['desk.a.insert.return', { 'rack.squash.in': 'desk.a.insert.send' }, undefined, undefined],
    ['desk.b.insert.return', {}, undefined, undefined],
    ['desk.c.insert.return', {}, 'desk.c.insert.send', 'normal'],
    ['desk.c.insert.return', { 'desk.c.insert.return': 'open' }, undefined, undefined],
    ['rack.squash.in', {}, undefined, undefined],
  ])('%s with %j: %s by %s', (input, board, output, by) => {
    expect(feedOf(at(board), input)).toEqual(output && { output, by });
  });
});

describe('cordFrom()', () => {
  test('follows the cords of the board and of the rig', () => {
    const from = (board: Board, output: string) => cordFrom({ rig: without, board }, output);
    expect(from({}, 'converter.out2')).toBe('desk.b.in');
    expect(from({ 'desk.b.in': 'none' }, 'converter.out2')).toBeUndefined();
    expect(from({ 'desk.c.in': 'converter.out5' }, 'converter.out5')).toBe('desk.c.in');
  });

  test.each(['none', 'open'])('%s is no output jack', (value) => {
    expect(cordFrom(at({ 'desk.a.in': 'open' }), value)).toBeUndefined();
  });
});

describe('inputsFedBy()', () => {
  test.each<[string, Board, string[]]>([
    ['converter.out1', {}, ['desk.a.in']],
    ['converter.out1', { 'rack.squash.in': 'converter.out1' }, ['rack.squash.in']],
    ['converter.out3', { 'rack.squash.in': 'converter.out3' }, ['rack.squash.in', 'desk.c.in']],
    ['converter.out3', { 'desk.c.in': 'open' }, []],
    ['converter.out5', {}, []],
  ])('%s with %j: %j', (output, board, inputs) => {
    expect(inputsFedBy(at(board), output)).toEqual(inputs);
  });

  test('of any setup has an input exactly where feedOf() has the output', () => {
    fc.assert(
      fc.property(arbitrarySetup(), (setup) => {
        const { inputs, outputs } = jacks(setup.rig);
        for (const output of outputs) {
          const fed = inputs.filter((input) => feedOf(setup, input)?.output === output);
          expect(new Set(inputsFedBy(setup, output))).toEqual(new Set(fed));
        }
      }),
      RUNS,
    );
  });
});

describe('driverOf()', () => {
  test('looks through mults, one behind the other', () => {
    const setup = at({
      'bay.split.in': 'converter.out5',
      'bay.spare.in': 'bay.split.out3',
      'desk.a.in': 'bay.spare.out2',
    });
    expect(driverOf(setup, 'desk.a.in')).toBe('converter.out5');
  });

  test('is nothing behind a mult that nothing goes into, or that only feeds itself', () => {
    const board = { 'desk.a.in': 'bay.split.out1' };
    expect(driverOf(at(board), 'desk.a.in')).toBeUndefined();
    const ring = { 'bay.split.in': 'bay.spare.out1', 'bay.spare.in': 'bay.split.out2' };
    expect(driverOf(at({ ...board, ...ring }), 'desk.a.in')).toBeUndefined();
  });
});
