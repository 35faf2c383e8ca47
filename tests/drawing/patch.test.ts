import { describe, expect, test } from 'vitest';
import { feedInto, goalFrom, insertPatch, jointName, ownerAt } from '../../src/drawing/patch.ts';
import { bayRoom } from '../simulator/bay-room.ts';
import { hear } from '../text/net-loft.ts';

const setup = (board = {}) => hear(board).setup;
/** The owners that the insert of an owner leads to and comes from, and whether it is passed straight. */
const patched = (board: object, owner: string) => {
  const { sent, returned, isStraight } = insertPatch(setup(board), owner);
  return [ownerAt(sent), ownerAt(returned), isStraight];
};

describe('insertPatch()', () => {
  test('of an insert without a cord leads nowhere', () => {
    expect(patched({}, 'desk.ch3')).toEqual([undefined, undefined, true]);
  });

  test('of one cord leads to a device, and not back', () => {
    const board = { 'rack.comp.in': 'desk.ch3.insert.send' };
    expect(patched(board, 'desk.ch3')).toEqual(['rack.comp', undefined, true]);
  });

  test('of a return alone comes from a device, and nothing goes there', () => {
    const board = { 'desk.ch4.insert.return': 'rack.line.out' };
    expect(patched(board, 'desk.ch4')).toEqual([undefined, 'rack.line', false]);
  });

  test('of two cords leads there and back, and touches no other strip', () => {
    const board = {
      'rack.comp.in': 'desk.ch3.insert.send',
      'desk.ch3.insert.return': 'rack.comp.out',
    };
    expect(patched(board, 'desk.ch3')).toEqual(['rack.comp', 'rack.comp', false]);
    expect(patched(board, 'desk.ch2')).toEqual([undefined, undefined, true]);
  });

  test('of a chain of devices goes to the first and comes from the last', () => {
    const board = {
      'rack.comp.in': 'desk.ch3.insert.send',
      'rack.line.in': 'rack.comp.out',
      'desk.ch3.insert.return': 'rack.line.out',
    };
    expect(patched(board, 'desk.ch3')).toEqual(['rack.comp', 'rack.line', false]);
  });

  test.each(['desk.main', 'desk.sub2', 'desk.ret1'])('of %s is that of its left side', (owner) => {
    const board = {
      'rack.duo.in.l': `${owner}.insert.send.l`,
      [`${owner}.insert.return.l`]: 'rack.duo.out.l',
    };
    expect(patched(board, owner)).toEqual(['rack.duo', 'rack.duo', false]);
  });
});

describe('feedInto()', () => {
  test.each([
    ['desk.ch3.in', 'converter.out3'],
    ['desk.ret1.in', 'rack.plate.out.l'],
    ['out.capture', 'desk.main.out.l'],
    ['out.headphones-a', 'desk.aux1.out'],
    ['rack.comp.in', undefined],
  ])('%s is fed by %s', (input, output) => {
    expect(feedInto(setup(), input)?.jack).toBe(output);
  });

  test('an input that was unplugged is fed by nothing', () => {
    expect(feedInto(setup({ 'desk.ch3.in': 'none' }), 'desk.ch3.in')).toBeUndefined();
  });
});

describe('goalFrom()', () => {
  test.each([
    ['desk.aux1.out', 'out.headphones-a'],
    ['desk.aux3.out', 'rack.plate.in'],
    ['desk.main.out', 'out.capture.l'],
    ['desk.sub1.out', undefined],
  ])('%s goes to %s', (output, input) => {
    expect(goalFrom(setup(), output)?.jack).toBe(input);
  });

  test('an output that was plugged elsewhere goes there', () => {
    const board = { 'out.headphones-b': 'none', 'rack.line.in': 'desk.aux2.out' };
    expect(goalFrom(setup(board), 'desk.aux2.out')?.jack).toBe('rack.line.in');
  });
});

describe('on a bay', () => {
  const rig = bayRoom();

  test('feedInto() and goalFrom() tell a normal from a cord', () => {
    const setup = { rig, board: { 'desk.b.in': 'converter.out5', 'out.cans': 'converter.out3' } };
    expect(feedInto(setup, 'desk.a.in')).toEqual({ jack: 'converter.out1', by: 'normal' });
    expect(feedInto(setup, 'desk.b.in')).toEqual({ jack: 'converter.out5', by: 'cord' });
    expect(goalFrom(setup, 'rack.hall.out')).toEqual({ jack: 'desk.w.in.l', by: 'normal' });
    expect(goalFrom(setup, 'converter.out3')).toEqual({ jack: 'out.cans', by: 'cord' });
  });

  test('insertPatch() is not straight in an open row, nor in a full-normal one with a plug in it', () => {
    expect(insertPatch({ rig, board: {} }, 'desk.a').isStraight).toBe(true);
    expect(insertPatch({ rig, board: {} }, 'desk.b')).toEqual({
      sent: undefined,
      returned: undefined,
      isStraight: false,
    });
    const sent = { rig, board: { 'rack.squash.in': 'desk.a.insert.send' } };
    expect(insertPatch(sent, 'desk.a')).toEqual({
      sent: { jack: 'rack.squash.in', by: 'cord' },
      returned: undefined,
      isStraight: false,
    });
  });

  test('jointName() has a word for a normal', () => {
    expect(jointName('out 3', { jack: 'converter.out3', by: 'normal' })).toBe('norm. out 3');
    expect(jointName('out 3', { jack: 'converter.out3', by: 'cord' })).toBe('out 3');
  });
});
