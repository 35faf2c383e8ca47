import { describe, expect, test } from 'vitest';
import type { Board } from '../../../../simulator/board/board.ts';
import { found } from './found.ts';

/** The organ on two mono strips, panned apart. */
const ON_STRIPS: Board = {
  'desk.c.in': 'converter.out3',
  'desk.b.in': 'converter.out4',
  'desk.c.pan': -1,
  'desk.b.pan': 1,
};
const organAtTape = { kind: 'source', source: 'organ', output: 'out.tape' } as const;

describe('leg-missing', () => {
  test('one side of a stereo input plugged', () => {
    expect(found('leg-missing', { 'out.tape.r': 'none' })).toMatchObject([
      {
        severity: 'fault',
        pair: { kind: 'cords', place: 'out.tape' },
        missing: 'r',
        mendAt: 'out.tape.r',
      },
    ]);
  });

  test('one side of a stereo output plugged into something mono is a note', () => {
    const board = {
      'desk.w.in.l': 'none',
      'desk.w.in.r': 'none',
      'desk.c.in': 'rack.hall.out.l',
    };
    expect(found('leg-missing', board)).toMatchObject([
      { severity: 'note', pair: { kind: 'cords', place: 'rack.hall.out' }, missing: 'r' },
    ]);
  });

  test('one side of a stereo source that does not arrive', () => {
    expect(found('leg-missing', { ...ON_STRIPS, 'desk.c.mute': true })).toMatchObject([
      {
        severity: 'fault',
        pair: organAtTape,
        missing: 'l',
        stop: { code: 'closed', places: ['desk.c.mute'] },
        mendAt: 'desk.c.mute',
        follow: 'organ',
      },
    ]);
  });

  test('tells a cord that is missing once, not again for the source behind it', () => {
    const board = { ...ON_STRIPS, 'out.tape.r': 'none' };
    expect(found('leg-missing', board).map(({ pair }) => pair.kind)).toEqual(['cords']);
  });

  test('not when both sides are there', () => {
    expect(found('leg-missing', ON_STRIPS)).toEqual([]);
  });
});

describe('legs-swapped', () => {
  test('two cords crossed', () => {
    const board = { 'desk.w.in.l': 'rack.hall.out.r', 'desk.w.in.r': 'rack.hall.out.l' };
    expect(found('legs-swapped', board)).toMatchObject([
      { severity: 'fault', pair: { kind: 'cords', place: 'desk.w.in' }, mendAt: 'desk.w.in.l' },
    ]);
  });

  test('left heard on the right: the pans of two strips the wrong way round', () => {
    const board = { ...ON_STRIPS, 'desk.c.pan': 1, 'desk.b.pan': -1 };
    expect(found('legs-swapped', board)).toMatchObject([{ severity: 'fault', pair: organAtTape }]);
  });

  test('tells crossed cords once, not again for the source that passes them', () => {
    const board = { 'desk.w.in.l': 'converter.out4', 'desk.w.in.r': 'converter.out3' };
    const crossed = { 'out.tape.l': 'desk.main.out.r', 'out.tape.r': 'desk.main.out.l' };
    expect(
      found('legs-swapped', { ...ON_STRIPS, ...crossed }).map(({ pair }) => pair.kind),
    ).toEqual(['cords']);
    expect(found('legs-swapped', board).map(({ pair }) => pair.kind)).toEqual(['source']);
  });

  test('not when one side only leans over: 0.1 to the right of the middle', () => {
    expect(found('legs-swapped', { ...ON_STRIPS, 'desk.c.pan': 0.1 })).toEqual([]);
  });
});

describe('legs-unpanned', () => {
  test('both sides of a stereo source in the middle', () => {
    const board = { ...ON_STRIPS, 'desk.c.pan': 0, 'desk.b.pan': 0 };
    expect(found('legs-unpanned', board)).toMatchObject([
      { severity: 'note', pair: organAtTape, mendAt: expect.stringMatching(/^desk\.[bc]\.pan$/) },
    ]);
  });

  test('not when one of them is panned, nor when both are', () => {
    expect(found('legs-unpanned', { ...ON_STRIPS, 'desk.c.pan': 0 })).toEqual([]);
    expect(found('legs-unpanned', ON_STRIPS)).toEqual([]);
  });
});
