import { describe, expect, test } from 'vitest';
import type { Board } from '../../../../simulator/board/board.ts';
import { found } from './found.ts';

const BOTH: Board = { 'desk.a.band': true };
const PARALLEL: Board = {
  'desk.a.late': -4,
  'rack.boost.in': 'desk.late.out',
  'desk.c.in': 'rack.boost.out',
};
const delayed = (time: string): Board => ({
  'desk.a.late': 0,
  'rack.wait.in': 'desk.late.out',
  'rack.wait.time': time,
  'desk.c.in': 'rack.wait.out',
});
const withDelay = { withDelay: true };

describe('arrives-twice', () => {
  test('main bus and subgroup at once: parts behind the pan, 20·lg 2 = 6.02 dB more', () => {
    const [one, ...more] = found('arrives-twice', BOTH);
    expect(more).toEqual([]);
    expect(one).toMatchObject({
      severity: 'fault',
      signal: 'viola',
      output: 'out.tape',
      at: 'desk.a.pan',
      turns: ['desk.a.main', 'desk.a.band'],
      meets: 'desk.main.sum',
      closers: ['desk.a.main', 'desk.a.band'],
      mendAt: 'desk.a.band',
      follow: 'viola',
    });
    expect(one?.gain).toBeCloseTo(6.0206, 4);
  });

  test.each<[string, Board]>([
    ['the subgroup alone', { 'desk.a.band': true, 'desk.a.main': false }],
    ['the subgroup not assigned on', { 'desk.a.band': true, 'desk.band.main': false }],
    ['two sides of the output', { ...PARALLEL, 'desk.a.pan': -1, 'desk.c.pan': 1 }],
    [
      'a reverb beside the dry sound, which is a new signal',
      { 'desk.a.wash': 0, 'desk.a.wash.tap': 'post' },
    ],
  ])('not with %s', (_, board) => {
    expect(found('arrives-twice', board)).toEqual([]);
  });

  test('is a note when one way passes a device: 20·lg(1 + 10^(−4/20)) = 4.25 dB more', () => {
    const [one] = found('arrives-twice', PARALLEL);
    expect(one?.severity).toBe('note');
    expect(one?.gain).toBeCloseTo(4.2489, 3);
  });

  test('tells both sides of a stereo source once where they go the same two ways', () => {
    const board = { 'desk.w.in.l': 'converter.out3', 'desk.w.in.r': 'converter.out4' };
    expect(found('arrives-twice', { ...board, 'desk.w.band': true })).toHaveLength(1);
  });
});

describe('inverted-path', () => {
  test('a parallel strip turned round: 20·lg(1 − 10^(−4/20)) = −8.66 dB, not told as arriving twice', () => {
    const board = { ...PARALLEL, 'desk.c.polarity': true };
    const [one, ...more] = found('inverted-path', board);
    expect(more).toEqual([]);
    expect(one).toMatchObject({ severity: 'fault', mendAt: 'desk.a.late', follow: 'viola' });
    expect(one?.gain).toBeCloseTo(-8.6585, 3);
    expect(found('arrives-twice', board)).toEqual([]);
  });

  test('not when both ways are inverted', () => {
    expect(found('inverted-path', { ...PARALLEL, 'desk.a.polarity': true })).toEqual([]);
  });

  test('equal and inverted leaves silence', () => {
    const board = { ...PARALLEL, 'desk.a.late': 0, 'desk.c.polarity': true };
    expect(found('inverted-path', board)[0]?.gain).toBe(-Infinity);
  });
});

describe('late-path', () => {
  test('5 ms later: the first null is at 1 / (2 · 5 ms) = 100 Hz', () => {
    const [one, ...more] = found('late-path', delayed('5'), withDelay);
    expect(more).toEqual([]);
    expect(one?.late).toBeCloseTo(0.005, 9);
    expect(one?.firstNull).toBeCloseTo(100, 6);
    expect(one).toMatchObject({ severity: 'note', signal: 'viola', mendAt: 'desk.a.late' });
    expect(found('arrives-twice', delayed('5'), withDelay)).toEqual([]);
  });

  test('inverted and 5 ms later: the first null above 0 Hz is at 1 / 5 ms = 200 Hz', () => {
    const board = { ...delayed('5'), 'desk.c.polarity': true };
    expect(found('late-path', board, withDelay)[0]?.firstNull).toBeCloseTo(200, 6);
    expect(found('inverted-path', board, withDelay)).toHaveLength(1);
  });

  test('not 60 ms later, which is an echo', () => {
    expect(found('late-path', delayed('60'), withDelay)).toEqual([]);
  });

  test('not in step', () => {
    expect(found('late-path', PARALLEL)).toEqual([]);
  });
});
