import { describe, expect, test } from 'vitest';
import type { Board } from '../../../../simulator/board/board.ts';
import { allFound, found } from './found.ts';

const SENT: Board = { 'rack.squash.in': 'desk.a.insert.send' };
const insertsOf = (board: Board) => allFound(board).filter(({ code }) => code.startsWith('insert'));

describe('insert-not-returned', () => {
  test('a send into a device that leads nowhere', () => {
    expect(insertsOf(SENT)).toEqual([
      {
        code: 'insert-not-returned',
        severity: 'fault',
        owner: 'desk.a',
        goesTo: 'rack.squash.in',
        passesOn: true,
        mendAt: 'desk.a.insert.return',
        follow: 'viola',
      },
    ]);
  });

  test('is a note when the device is heard by another way', () => {
    const board = { ...SENT, 'desk.c.in': 'rack.squash.out' };
    expect(found('insert-not-returned', board)).toMatchObject([{ severity: 'note' }]);
  });

  test('not when it comes back, nor by way of two devices', () => {
    expect(insertsOf({ ...SENT, 'desk.a.insert.return': 'rack.squash.out' })).toEqual([]);
    expect(
      insertsOf({
        ...SENT,
        'rack.boost.in': 'rack.squash.out',
        'desk.a.insert.return': 'rack.boost.out',
      }),
    ).toEqual([]);
  });
});

describe('insert-not-sent', () => {
  test('a return from a device that the strip does not feed', () => {
    expect(insertsOf({ 'desk.a.insert.return': 'rack.squash.out' })).toEqual([
      {
        code: 'insert-not-sent',
        severity: 'fault',
        owner: 'desk.a',
        comesFrom: 'rack.squash.out',
        mendAt: 'desk.a.insert.send',
        follow: 'viola',
      },
    ]);
  });

  test('not when only one side of a bus is returned: that is a leg missing', () => {
    const board = {
      'rack.squash.in': 'desk.main.insert.send.l',
      'desk.main.insert.return.l': 'rack.squash.out',
    };
    expect(insertsOf(board)).toEqual([]);
    expect(found('leg-missing', board)).toHaveLength(1);
  });

  test('a send and a return to two devices are both told', () => {
    const board = { ...SENT, 'desk.a.insert.return': 'rack.boost.out' };
    expect(insertsOf(board).map(({ code }) => code)).toEqual([
      'insert-not-returned',
      'insert-not-sent',
    ]);
  });
});
