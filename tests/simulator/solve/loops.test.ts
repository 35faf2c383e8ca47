import { describe, expect, test } from 'vitest';
import type { Board } from '../../../simulator/board/board.ts';
import { levelAt, levelOf } from '../../../simulator/solve/levels.ts';
import type { Loop } from '../../../simulator/solve/loop.ts';
import { simulate } from '../../../simulator/solve/simulate.ts';
import type { Solution } from '../../../simulator/solve/solution.ts';
import { smallRoom } from '../small-room.ts';

const rig = smallRoom();
const solve = (board: Board) => simulate({ rig, board });
const placesOf = ({ circuit }: Solution, loop: Loop | undefined) => [
  ...new Set(loop?.ring.map((stage) => circuit.stages[stage]?.place)),
];

/** Viola, 4 dBu, to the late aux, whose output comes up on strip C, which sends to it again by `sendDb`. */
const ring = (sendDb: number, more: Board = {}): Board => ({
  'desk.a.late': 0,
  'desk.c.in': 'desk.late.out',
  'desk.c.late': sendDb,
  ...more,
});

describe('simulate() of a ring of one strip and one aux', () => {
  test.each([
    [-6, 6.0412],
    [-1, 19.2715],
    [-20, 0.9151],
  ])('with a send of %d dB: 1 / (1 − g) is %d dB above 4 dBu, ± 1e-4', (sendDb, riseDb) => {
    const solution = solve(ring(sendDb));
    expect(levelOf(solution, 'viola', 'desk.late.out')).toBeCloseTo(4 + riseDb, 4);
    expect(solution.loops).toHaveLength(1);
    expect(solution.loops[0]).toMatchObject({ stable: true });
    expect(solution.loops[0]?.gain).toBeCloseTo(sendDb, 9);
  });

  test('inverted, by −6 dB: 1 / (1 + 0.50119) = −3.5287 dB, ± 1e-4', () => {
    const solution = solve(ring(-6, { 'desk.c.polarity': true }));
    expect(levelOf(solution, 'viola', 'desk.late.out')).toBeCloseTo(4 - 3.5287, 4);
  });

  test('names its places in signal order', () => {
    const solution = solve(ring(-6));
    const places = placesOf(solution, solution.loops[0]);
    const turned = places.indexOf('desk.c.in');
    expect([...places.slice(turned), ...places.slice(0, turned)]).toEqual([
      'desk.c.in',
      'desk.c.trim',
      'desk.c.polarity',
      'desk.c.insert.send',
      'desk.c.insert.return',
      'desk.c.insert',
      'desk.c.fader',
      'desk.c.mute',
      'desk.c.late',
      'desk.late.sum',
      'desk.late.level',
      'desk.late.out',
    ]);
  });

  test.each([0, 3, 10])('with a send of %d dB has no level, nor has what it reaches', (sendDb) => {
    const solution = solve(ring(sendDb));
    expect(solution.loops).toMatchObject([{ stable: false }]);
    for (const place of ['desk.late.out', 'desk.c.fader', 'desk.main.out', 'out.tape']) {
      expect(levelAt(solution, place), place).toBeUndefined();
      expect(levelOf(solution, 'horn', place), place).toBeUndefined();
    }
    expect(levelOf(solution, 'viola', 'desk.a.fader')).toBeCloseTo(4, 9);
    expect(levelAt(solution, 'out.cans')).toBe(-Infinity);
  });

  test('inverted at unity is unstable too: a real loop is late', () => {
    expect(solve(ring(0, { 'desk.c.polarity': true })).loops).toMatchObject([{ stable: false }]);
  });

  test.each(['desk.c.mute', 'desk.late.level'])('that %s opens is no loop', (address) => {
    const open = address.endsWith('mute') ? true : -Infinity;
    expect(solve(ring(3, { [address]: open })).loops).toEqual([]);
  });

  test('a stable ring behind an unstable one is called stable, and has no level', () => {
    const solution = solve(
      ring(3, {
        'desk.c.ears': 0,
        'desk.b.in': 'desk.ears.out',
        'out.cans': 'none',
        'desk.b.ears': -8,
      }),
    );
    expect(solution.loops.map(({ stable }) => stable).sort()).toEqual([false, true]);
    expect(levelAt(solution, 'desk.ears.out')).toBeUndefined();
  });
});

describe('simulate() of a ring through a reverb', () => {
  /** Viola into the hall; the hall's return, both sides of it, sends to the hall again by `sendDb`. */
  const halled = (sendDb: number): Board => ({ 'desk.a.wash': 0, 'desk.w.wash': sendDb });

  test.each([
    [-9, 1.2598],
    [-15, 0.2837],
    [-3.5, 9.7211],
  ])(
    'adds in power, two sides of it: send %d dB, P = P₀ / (1 − 2 · 10^(dB/10)) is %d dB above 4 dBu, ± 1e-3',
    (sendDb, riseDb) => {
      const solution = solve(halled(sendDb));
      expect(solution.loops).toMatchObject([{ stable: true }]);
      expect(levelOf(solution, 'viola', 'rack.hall.out.l')).toBeCloseTo(4 + riseDb, 3);
      expect(levelOf(solution, 'viola', 'rack.hall.out')).toBeCloseTo(4 + riseDb + 3.0103, 3);
      expect(levelOf(solution, 'horn', 'rack.hall.out')).toBe(-Infinity);
    },
  );

  test('is unstable from −3.01 dB on, where the two sides bring back all of the power', () => {
    expect(solve(halled(-3.02)).loops).toMatchObject([{ stable: true }]);
    expect(solve(halled(-3)).loops).toMatchObject([{ stable: false }]);
    expect(levelAt(solve(halled(-3)), 'rack.hall.out')).toBeUndefined();
  });
});

describe('simulate() of a ring with a compressor', () => {
  /** The late aux goes through the compressor before it comes up on strip C. */
  const squashed = (sendDb: number, more: Board = {}): Board => ({
    'desk.a.late': 0,
    'rack.squash.in': 'desk.late.out',
    'desk.c.in': 'rack.squash.out',
    'desk.c.late': sendDb,
    'rack.squash.ratio': 'inf',
    'rack.squash.threshold': 20,
    ...more,
  });

  test('that limits: by −1 dB, 20 dBu out, and 20 · log(10^0.2 + 10^0.95) = 20.4216 dBu in, ± 1e-4', () => {
    const solution = solve(squashed(-1));
    const into = 20 * Math.log10(10 ** (4 / 20) + 10 ** (19 / 20));
    expect(into).toBeCloseTo(20.4216, 4);
    expect(solution.loops).toMatchObject([{ stable: true }]);
    expect(levelAt(solution, 'rack.squash.out')).toBeCloseTo(20, 4);
    expect(levelAt(solution, 'rack.squash.in')).toBeCloseTo(into, 4);
  });

  test.each([-0.5, -0.9, -1.3, -2])(
    'settles where it hardly compresses and the loop is near unity: %d dB',
    (sendDb) => {
      for (const threshold of [18, 19, 20]) {
        for (const knee of [0, 6]) {
          for (const ratio of ['2', '10', 'inf']) {
            const more = {
              'rack.squash.threshold': threshold,
              'rack.squash.knee': knee,
              'rack.squash.ratio': ratio,
            };
            const where = `${threshold} dBu, knee ${knee}, ratio ${ratio}`;
            expect(solve(squashed(sendDb, more)).loops[0]?.stable, where).toBe(true);
          }
        }
      }
    },
  );

  test('that has a gain above unity while it is quiet is unstable: it would howl up to its limit', () => {
    expect(solve(squashed(0.5)).loops).toMatchObject([{ stable: false }]);
  });
});

describe('simulate() of a chain through both channels of a device', () => {
  const chain: Board = {
    'rack.twin.in.l': 'desk.a.insert.send',
    'rack.twin.in.r': 'rack.twin.out.l',
    'desk.a.insert.return': 'rack.twin.out.r',
    'rack.twin.threshold': -6,
    'rack.twin.ratio': 'inf',
  };

  test('closes no loop: only what the device listens to leads back', () => {
    expect(solve(chain).loops).toEqual([]);
  });

  test('settles where both channels turn down alike by what they hear together, to 1e-6 dB', () => {
    const solution = solve(chain);
    const [left, right] = ['rack.twin.in.l', 'rack.twin.in.r'].map((place) =>
      Number(levelAt(solution, place)),
    );
    const gain = Number(levelAt(solution, 'rack.twin.out.r')) - Number(right);
    const heard = 10 * Math.log10(10 ** (Number(left) / 10) + 10 ** (Number(right) / 10));
    expect(left).toBeCloseTo(4, 9);
    expect(right).toBeCloseTo(4 + gain, 6);
    expect(heard + gain).toBeCloseTo(-6, 6);
  });
});
