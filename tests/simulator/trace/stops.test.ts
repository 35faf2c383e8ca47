import * as fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import type { Board } from '../../../simulator/board/board.ts';
import { simulate } from '../../../simulator/solve/simulate.ts';
import { paths } from '../../../simulator/trace/paths.ts';
import { type Stop, stopAfter, stopOf } from '../../../simulator/trace/stops.ts';
import { arbitrarySetup, RUNS } from '../arbitrary-setup.ts';
import { smallRoom } from '../small-room.ts';

// Properties take their time on a machine that is busy.
vi.setConfig({ testTimeout: 30_000 });

const rig = smallRoom();
const solve = (board: Board) => simulate({ rig, board });

describe('stopOf()', () => {
  const closed = (...places: string[]): Stop => ({ code: 'closed', places });
  test.each<[name: string, board: Board, source: string, output: string, stop: Stop]>([
    ['a mute', { 'desk.a.mute': true }, 'viola', 'out.tape', closed('desk.a.mute')],
    [
      'a fader that is down',
      { 'desk.a.fader': -Infinity },
      'viola',
      'out.tape',
      closed('desk.a.fader'),
    ],
    ['an assign that is off', { 'desk.a.main': false }, 'viola', 'out.tape', closed('desk.a.main')],
    ['a send that is closed', {}, 'viola', 'out.cans', closed('desk.a.ears')],
    [
      'an aux that is closed, too',
      { 'desk.ears.level': -Infinity },
      'viola',
      'out.cans',
      closed('desk.a.ears', 'desk.ears.level'),
    ],
    [
      'the box fader',
      { 'box.horn.fader': -Infinity },
      'horn',
      'desk.b.in',
      closed('box.horn.fader'),
    ],
    [
      'the shorter of two closed ways',
      { 'desk.a.main': false, 'desk.band.fader': -Infinity },
      'viola',
      'out.tape',
      closed('desk.a.main'),
    ],
    ['a pan to the other side', { 'desk.a.pan': 1 }, 'viola', 'out.tape.l', closed('desk.a.pan')],
    [
      'a mute before the fader of a send',
      { 'desk.a.late': 0, 'desk.a.mute': true },
      'viola',
      'desk.late.out',
      closed('desk.a.mute'),
    ],
    [
      'a cord into the strip',
      { 'desk.a.in': 'none' },
      'viola',
      'out.tape',
      { code: 'no-way', ends: ['converter.out1'], openings: ['desk.a.in', 'desk.c.in'] },
    ],
    [
      'a cord into the output',
      { 'out.tape.l': 'none', 'out.tape.r': 'none' },
      'viola',
      'out.tape',
      { code: 'no-way', ends: ['desk.main.out'], openings: ['out.tape'] },
    ],
    [
      'a cord out of an insert’s device',
      { 'rack.squash.in': 'desk.a.insert.send', 'desk.a.insert.return': 'rack.boost.out' },
      'viola',
      'out.tape',
      { code: 'no-way', ends: ['rack.squash.out'], openings: ['rack.boost.in', 'desk.c.in'] },
    ],
    [
      'an assignment in the box',
      { 'box.viola.to': 'none' },
      'viola',
      'out.tape',
      { code: 'no-way', ends: ['box.viola.pan'], openings: ['converter.out1', 'desk.c.in'] },
    ],
  ])('names %s', (_name, board, source, output, stop) => {
    const solution = solve(board);
    expect(paths(solution, source, output)).toEqual([]);
    const found = stopOf(solution, source, output);
    if (found.code === 'no-way' && stop.code === 'no-way') {
      expect(found.ends).toEqual(stop.ends);
      expect([...found.openings].sort()).toEqual([...stop.openings].sort());
    } else {
      expect(found).toEqual(stop);
    }
  });

  test('refuses a source or place that is not there', () => {
    expect(() => stopOf(solve({}), 'cello', 'out.tape')).toThrow(RangeError);
    expect(() => stopOf(solve({}), 'viola', 'out.vinyl')).toThrow(RangeError);
  });

  test('names something on any desk where nothing arrives', () => {
    let closedCount = 0;
    let noWayCount = 0;
    fc.assert(
      fc.property(arbitrarySetup(), (setup) => {
        const solution = simulate(setup);
        for (const { id } of solution.circuit.signals) {
          if (paths(solution, id, 'out.end').length > 0) continue;
          const stop = stopOf(solution, id, 'out.end');
          if (stop.code === 'closed') {
            closedCount += 1;
            expect(stop.places.length).toBeGreaterThan(0);
          } else {
            noWayCount += 1;
            expect(stop.ends.length).toBeGreaterThan(0);
          }
        }
      }),
      RUNS,
    );
    expect(closedCount).toBeGreaterThan(20);
    expect(noWayCount).toBeGreaterThan(20);
  });
});

test('stopAfter() says where what leaves a device stops: at the mute of its return', () => {
  const solution = solve({ 'desk.w.mute': true, 'desk.a.wash': -1 });
  expect(stopAfter(solution, 'rack.hall.out', 'out.tape')).toEqual({
    code: 'closed',
    places: ['desk.w.mute'],
  });
});
