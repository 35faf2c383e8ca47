import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { levelAt, levelOf } from '../../../simulator/solve/levels.ts';
import { response } from '../../../simulator/solve/response.ts';
import { paths } from '../../../simulator/trace/paths.ts';
import type { Hz } from '../../../simulator/units/frequency.ts';
import { RUNS } from '../arbitrary-setup.ts';
import { type BoxRoom, boxRoom } from './box-room.ts';

/** A plug-in that does nothing but come late. */
const late = (latencyMs: number, id = 'late') => ({ id, label: 'Late', kind: 'gain', latencyMs });

/** The viola on output 1, and once more as strong by a bus with a plug-in of 1 ms on output 2. */
const TWICE: BoxRoom = {
  panLaw: 'linear',
  buses: [{ id: 'twin', label: 'Twin', tap: 'pre', plugins: [late(1)] }],
  board: { 'box.viola.twin': 0, 'box.twin.to': 'out2' },
};

/** Response at the tape, relative to the viola alone. */
const rises = (room: BoxRoom, ...frequencies: number[]): number[] =>
  response(boxRoom(room).solution, 'viola', 'out.tape', frequencies as Hz[]) ?? [];

type DrawnFrom<A> = A extends fc.Arbitrary<infer T> ? T : never;

const delaysAt = (room: BoxRoom, place: string): number[] =>
  paths(boxRoom(room).solution, 'viola', place).map(({ delay }) => delay);

describe('the latency of a plug-in', () => {
  test('paths() are as late as all plug-ins on them: 1.25 + 0.5 ms', () => {
    const tracks = [
      {
        id: 'viola',
        label: 'Viola',
        levelDbfs: -17,
        plugins: [late(1.25), late(0.5, 'later')],
      },
    ];
    expect(delaysAt({ tracks }, 'converter.out1')[0]).toBeCloseTo(0.00175, 12);
    const board = { 'box.viola.late.on': false };
    expect(delaysAt({ tracks, board }, 'converter.out1')[0]).toBeCloseTo(0.0005, 12);
  });

  test('levelAt() changes no level where everything is as late', () => {
    const tracks = [{ id: 'viola', label: 'Viola', levelDbfs: -17, plugins: [late(3)] }];
    expect(levelAt(boxRoom({ tracks, latencyMs: 2 }).solution, 'out.tape')).toBeCloseTo(4, 9);
  });
});

describe('delay compensation', () => {
  test('response() off, 1 ms apart is a comb: null at 500 Hz, +6.02 dB at 1 kHz', () => {
    const [hole = 0, peak = 0] = rises(TWICE, 500, 1000);
    expect(hole).toBeLessThan(-200);
    expect(peak).toBeCloseTo(20 * Math.log10(2), 9);
  });

  test('response() on, the box holds the straight way back: +6.02 dB everywhere', () => {
    const room = { ...TWICE, compensates: true };
    for (const gain of rises(room, 100, 500, 3170, 9000)) {
      expect(gain).toBeCloseTo(20 * Math.log10(2), 9);
    }
    for (const line of ['converter.out1', 'converter.out2']) {
      expect(delaysAt(room, line)).toEqual([0.001]);
    }
  });

  test('paths() a plug-in that is off, and a send that is closed, hold nothing back', () => {
    const off = { ...TWICE, compensates: true };
    const board = { ...TWICE.board, 'box.twin.late.on': false };
    expect(delaysAt({ ...off, board }, 'converter.out1')).toEqual([0]);
    const closed = { 'box.twin.to': 'out2' };
    expect(delaysAt({ ...off, board: closed }, 'converter.out1')).toEqual([0]);
  });

  test('paths() a mute or a fader changes no delay', () => {
    const board = { ...TWICE.board, 'box.twin.mute': true };
    expect(delaysAt({ ...TWICE, compensates: true, board }, 'converter.out1')).toEqual([0.001]);
  });

  test('levelAt() feeds of the main mix wait for the slowest of them', () => {
    const room: BoxRoom = {
      ...TWICE,
      compensates: true,
      board: {
        ...TWICE.board,
        'box.viola.to': 'none',
        'box.twin.to': 'none',
        'box.viola.main': true,
        'box.twin.main': true,
        'box.main.to': 'out3-4',
      },
    };
    expect(delaysAt(room, 'converter.out3')).toEqual([0.001, 0.001]);
    const unwaited = { ...room, compensates: false };
    expect(delaysAt(unwaited, 'converter.out3').sort()).toEqual([0, 0.001]);
  });

  test('paths() whatever is assigned and sent, all that leaves a compensating box leaves it together', () => {
    const ids = ['one', 'two', 'three'];
    const latency = fc.integer({ min: 0, max: 40 }).map((tenths) => tenths / 10);
    const routes = fc.record({
      latencies: fc.array(latency, { minLength: 4, maxLength: 4 }),
      sends: fc.array(fc.boolean(), { minLength: 6, maxLength: 6 }),
      goals: fc.array(fc.constantFrom('none', 'out1', 'out2', 'out3-4', 'next'), {
        minLength: 4,
        maxLength: 4,
      }),
      mains: fc.array(fc.boolean(), { minLength: 4, maxLength: 4 }),
    });
    const channels = ['viola', ...ids];
    const roomOf = ({ latencies, sends, goals, mains }: DrawnFrom<typeof routes>) => {
      const pairs = channels.flatMap((from, index) =>
        ids.slice(index).map((to) => `box.${from}.${to}`),
      );
      return {
        compensates: true,
        tracks: [
          { id: 'viola', label: 'Viola', levelDbfs: -17, plugins: [late(latencies[0] ?? 0)] },
        ],
        buses: ids.map((id, index) => ({
          id,
          label: id,
          tap: 'pre',
          plugins: [late(latencies[index + 1] ?? 0)],
        })),
        board: {
          ...Object.fromEntries(
            pairs.map((address, index) => [address, sends[index] ? -4 : '-inf']),
          ),
          ...Object.fromEntries(
            channels.flatMap((id, index) => {
              const goal = goals[index] === 'next' ? (ids[index] ?? 'none') : goals[index];
              return [
                [`box.${id}.to`, goal],
                [`box.${id}.main`, mains[index]],
              ];
            }),
          ),
          'box.main.to': 'out5-6',
        },
      };
    };
    fc.assert(
      fc.property(routes, (drawn) => {
        const { solution } = boxRoom(roomOf(drawn));
        const delays = [1, 2, 3, 4, 5, 6].flatMap((line) =>
          paths(solution, 'viola', `converter.out${line}`).map(({ delay }) => delay),
        );
        if (delays.length > 1) {
          expect(Math.max(...delays) - Math.min(...delays)).toBeLessThan(1e-9);
        }
      }),
      { ...RUNS, numRuns: 60 },
    );
  });
});

describe('what comes back from outside stays late', () => {
  /** The viola straight on strip 1; and sent out by an aux, in at the converter, and out again to strip 3. */
  const outside: BoxRoom = {
    captures: [{ id: 'back', label: 'Back' }],
    compensates: true,
    latencyMs: 0.75,
    board: {
      'desk.s1.ears': 0,
      'converter.in2': 'desk.ears.out',
      'box.back.in': 'in2',
      'box.back.to': 'out3',
    },
  };

  test('paths() by once in and once out more: 0.75 against 3 · 0.75 ms', () => {
    const [one = 0, other = 0] = delaysAt(outside, 'out.tape').sort();
    expect(one).toBeCloseTo(0.00075, 12);
    expect(other).toBeCloseTo(0.00225, 12);
  });

  test('response() is a comb with its first null at 1/(2 · 1.5 ms), with compensation or without', () => {
    for (const compensates of [true, false]) {
      const [hole = 0, peak = 0] = rises({ ...outside, compensates }, 1 / 0.003, 1 / 0.0015);
      expect(hole).toBeLessThan(-200);
      expect(peak).toBeCloseTo(20 * Math.log10(2), 6);
    }
  });

  test('levelOf() a slow plug-in beside it is made up for; the way outside is not', () => {
    const room = { ...outside, ...TWICE, compensates: true };
    const board = { ...outside.board, ...TWICE.board };
    const delays = delaysAt({ ...room, board }, 'out.tape').sort();
    expect(delays.map((delay) => Math.round(delay * 1e6))).toEqual([1750, 1750, 3250]);
    expect(levelOf(boxRoom({ ...room, board }).solution, 'viola', 'box.back.in')).toBeCloseTo(4, 9);
  });
});
