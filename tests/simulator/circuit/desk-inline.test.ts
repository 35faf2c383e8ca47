import { describe, expect, test } from 'vitest';
import { levelOf } from '../../../simulator/solve/levels.ts';
import { placesOf } from '../../../simulator/trace/path.ts';
import { paths } from '../../../simulator/trace/paths.ts';
import { type DeskRoom, deskRoom } from './desk-room.ts';

/** Strip 2 is the second path of strip 1; strip 3 stands alone. */
const inline = (board: DeskRoom['board'] = {}) =>
  deskRoom({
    strips: { s2: { inline: 's1' } },
    desk: { subgroups: [{ id: 'multi', label: 'Multitrack' }] },
    board,
  }).solution;

describe('an in-line strip has two paths', () => {
  test('levelOf() each has its own input, fader and way to the mix', () => {
    const solution = inline({ 'desk.s1.fader': -3, 'desk.s2.fader': -8 });
    expect(levelOf(solution, 'flute', 'out.tape')).toBeCloseTo(3 - 3, 9);
    expect(levelOf(solution, 'oboe', 'out.tape')).toBeCloseTo(-2 - 8, 9);
  });

  test('levelOf() swapped, each fader turns the other path', () => {
    const solution = inline({ 'desk.s1.fader': -3, 'desk.s2.fader': -8, 'desk.s1.swap': true });
    expect(levelOf(solution, 'flute', 'out.tape')).toBeCloseTo(3 - 8, 9);
    expect(levelOf(solution, 'oboe', 'out.tape')).toBeCloseTo(-2 - 3, 9);
    expect(levelOf(solution, 'horn', 'out.tape')).toBeCloseTo(5, 9);
  });

  test('levelOf() the idle path as one more send after the fader: 3 − 4 − 6 = −7 dBu, and it follows', () => {
    const board = {
      'desk.s1.fader': -4,
      'desk.s2.path': 'first',
      'desk.s2.fader': -6,
      'desk.s2.main': false,
      'desk.s2.multi': true,
      'desk.multi.main': false,
    };
    const solution = inline(board);
    expect(levelOf(solution, 'flute', 'desk.multi.out')).toBeCloseTo(-7, 9);
    expect(levelOf(solution, 'oboe', 'desk.multi.out')).toBe(-Infinity);
    const [way] = paths(solution, 'flute', 'desk.multi.out');
    const places = way ? placesOf(way) : [];
    expect(places.indexOf('desk.s2.path')).toBeGreaterThan(places.indexOf('desk.s1.fader'));
    const lower = inline({ ...board, 'desk.s1.fader': -14 });
    expect(levelOf(lower, 'flute', 'desk.multi.out')).toBeCloseTo(-17, 9);
    expect(levelOf(inline({ ...board, 'desk.s1.mute': true }), 'flute', 'desk.multi.out')).toBe(
      -Infinity,
    );
  });

  test('levelOf() what the second path is fed from is switched, not added', () => {
    expect(levelOf(inline({ 'desk.s2.path': 'first' }), 'oboe', 'out.tape')).toBe(-Infinity);
  });
});
