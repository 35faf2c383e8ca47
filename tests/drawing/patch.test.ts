import { describe, expect, test } from 'vitest';
import { feedOf, goalOf, insertPatch } from '../../src/drawing/patch.ts';
import { hear } from '../text/net-loft.ts';

const setup = (board = {}) => hear(board).setup;

describe('insertPatch()', () => {
  test('of an insert without a cord leads nowhere', () => {
    expect(insertPatch(setup(), 'desk.ch3')).toEqual({
      sentTo: undefined,
      returnedFrom: undefined,
    });
  });

  test('of one cord leads to a device, and not back', () => {
    const board = { 'rack.comp.in': 'desk.ch3.insert.send' };
    expect(insertPatch(setup(board), 'desk.ch3')).toEqual({
      sentTo: 'rack.comp',
      returnedFrom: undefined,
    });
  });

  test('of a return alone comes from a device, and nothing goes there', () => {
    const board = { 'desk.ch4.insert.return': 'rack.line.out' };
    expect(insertPatch(setup(board), 'desk.ch4')).toEqual({
      sentTo: undefined,
      returnedFrom: 'rack.line',
    });
  });

  test('of two cords leads there and back, and touches no other strip', () => {
    const board = {
      'rack.comp.in': 'desk.ch3.insert.send',
      'desk.ch3.insert.return': 'rack.comp.out',
    };
    expect(insertPatch(setup(board), 'desk.ch3')).toEqual({
      sentTo: 'rack.comp',
      returnedFrom: 'rack.comp',
    });
    expect(insertPatch(setup(board), 'desk.ch2').sentTo).toBeUndefined();
  });

  test('of a chain of devices goes to the first and comes from the last', () => {
    const board = {
      'rack.comp.in': 'desk.ch3.insert.send',
      'rack.line.in': 'rack.comp.out',
      'desk.ch3.insert.return': 'rack.line.out',
    };
    expect(insertPatch(setup(board), 'desk.ch3')).toEqual({
      sentTo: 'rack.comp',
      returnedFrom: 'rack.line',
    });
  });

  test.each(['desk.main', 'desk.sub2', 'desk.ret1'])('of %s is that of its left side', (owner) => {
    const board = {
      'rack.duo.in.l': `${owner}.insert.send.l`,
      [`${owner}.insert.return.l`]: 'rack.duo.out.l',
    };
    expect(insertPatch(setup(board), owner)).toEqual({
      sentTo: 'rack.duo',
      returnedFrom: 'rack.duo',
    });
  });
});

describe('feedOf()', () => {
  test.each([
    ['desk.ch3.in', 'converter.out3'],
    ['desk.ret1.in', 'rack.plate.out.l'],
    ['out.capture', 'desk.main.out.l'],
    ['out.headphones-a', 'desk.aux1.out'],
    ['rack.comp.in', undefined],
  ])('%s is fed by %s', (input, output) => {
    expect(feedOf(setup(), input)).toBe(output);
  });

  test('an input that was unplugged is fed by nothing', () => {
    expect(feedOf(setup({ 'desk.ch3.in': 'none' }), 'desk.ch3.in')).toBeUndefined();
  });
});

describe('goalOf()', () => {
  test.each([
    ['desk.aux1.out', 'out.headphones-a'],
    ['desk.aux3.out', 'rack.plate.in'],
    ['desk.main.out', 'out.capture.l'],
    ['desk.sub1.out', undefined],
  ])('%s goes to %s', (output, input) => {
    expect(goalOf(setup(), output)).toBe(input);
  });

  test('an output that was plugged elsewhere goes there', () => {
    const board = { 'out.headphones-b': 'none', 'rack.line.in': 'desk.aux2.out' };
    expect(goalOf(setup(board), 'desk.aux2.out')).toBe('rack.line.in');
  });
});
