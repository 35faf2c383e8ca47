import * as fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import type { Board } from '../../../simulator/board/board.ts';
import { levelOf } from '../../../simulator/solve/levels.ts';
import { simulate } from '../../../simulator/solve/simulate.ts';
import { type Path, passes, placesOf } from '../../../simulator/trace/path.ts';
import { MOST_PATHS, paths } from '../../../simulator/trace/paths.ts';
import { dbu } from '../../../simulator/units/level.ts';
import { arbitrarySetup, RUNS } from '../arbitrary-setup.ts';
import { smallRoom } from '../small-room.ts';
import { expectNear } from '../solve/near-levels.ts';

// Properties take their time on a machine that is busy.
vi.setConfig({ testTimeout: 30_000 });

const rig = smallRoom();
const solve = (board: Board) => simulate({ rig, board });
const pathsOn = (board: Board, source: string, output: string) =>
  paths(solve(board), source, output);

/** The levels at the steps of a path that pass these places, to a tenth of a millidecibel. */
const levelsAt = (path: Path | undefined, ...places: string[]) =>
  places.map((place) => {
    const step = path?.steps.find((one) => one.place === place);
    return step ? Math.round(step.level * 1e4) / 1e4 : undefined;
  });

describe('paths() of a strip', () => {
  const board: Board = {
    'box.viola.fader': -1,
    'desk.a.trim': 6,
    'desk.a.fader': -8,
    'desk.a.pan': -1,
  };

  test('lists one way with the level at each step: 4 − 1 = 3, + 6 = 9, − 8 = 1 dBu', () => {
    const [path, ...more] = pathsOn(board, 'viola', 'out.tape');
    expect(more).toEqual([]);
    expect(
      levelsAt(
        path,
        'box.viola.source',
        'box.viola.fader',
        'converter.out1',
        'desk.a.trim',
        'desk.a.fader',
        'out.tape',
      ),
    ).toEqual([4, 3, 3, 9, 1, 1]);
    expect(path?.gain).toBeCloseTo(-3, 9);
    expect(path).toMatchObject({ signal: 'viola', inverted: false, decorrelated: false });
  });

  test('has the gain of each place: trim 6 dB, fader −8 dB, pan hard left 0 dB on one leg', () => {
    const [path] = pathsOn(board, 'viola', 'out.tape');
    const gains = Object.fromEntries(path?.steps.map(({ place, gain }) => [place, gain]) ?? []);
    expect(gains['desk.a.trim']).toBeCloseTo(6, 9);
    expect(gains['desk.a.fader']).toBeCloseTo(-8, 9);
    expect(gains['desk.a.pan']).toBeCloseTo(0, 9);
    expect(path?.steps.at(-1)?.legs).toEqual([{ leg: 'l', level: expect.closeTo(1, 9) }]);
  });

  test('lists the places in signal order, with the insert that nothing is in', () => {
    const [path] = pathsOn(board, 'viola', 'out.tape');
    expect(path && placesOf(path)).toEqual([
      ...['source', 'fader', 'mute'].map((part) => `box.viola.${part}`),
      'converter.out1',
      ...[
        'in',
        'trim',
        'polarity',
        'insert.send',
        'insert.return',
        'insert',
        'fader',
        'mute',
        'pan',
        'main',
      ].map((part) => `desk.a.${part}`),
      ...['sum', 'insert.send', 'insert.return', 'insert', 'fader', 'out'].map(
        (part) => `desk.main.${part}`,
      ),
      'out.tape',
    ]);
  });

  test('lists nothing where nothing arrives, and refuses names that are not there', () => {
    expect(pathsOn({}, 'viola', 'out.cans')).toEqual([]);
    expect(pathsOn({ ...board, 'desk.a.mute': true }, 'viola', 'out.tape')).toEqual([]);
    expect(() => pathsOn({}, 'cello', 'out.tape')).toThrow(RangeError);
    expect(() => pathsOn({}, 'viola', 'out.vinyl')).toThrow(RangeError);
  });

  test('lists a way for each side of a stereo track', () => {
    const found = pathsOn(
      { 'desk.c.in': 'converter.out3', 'desk.b.in': 'converter.out4' },
      'organ',
      'out.tape',
    );
    expect(found.map(({ signal }) => signal).sort()).toEqual(['organ.l', 'organ.r']);
  });
});

describe('paths() of two ways', () => {
  const doubled: Board = { 'desk.a.band': true, 'desk.band.fader': -5 };

  test('lists the loudest first: 4 dBu straight, 4 − 5 = −1 dBu by the subgroup', () => {
    const [straight, group] = pathsOn(doubled, 'viola', 'out.tape');
    expect(straight?.level).toBeCloseTo(4, 9);
    expect(group?.level).toBeCloseTo(-1, 9);
    expect(straight && passes(straight, 'desk.band')).toBe(false);
    expect(group && passes(group, 'desk.band.fader')).toBe(true);
  });

  test('says which is inverted', () => {
    const both = pathsOn(
      {
        ...doubled,
        'desk.c.in': 'desk.a.insert.send',
        'desk.c.polarity': true,
        'desk.a.band': false,
      },
      'viola',
      'out.tape',
    );
    expect(both.map((path) => [passes(path, 'desk.c'), path.inverted])).toEqual(
      expect.arrayContaining([
        [true, true],
        [false, false],
      ]),
    );
  });
});

describe('paths() through devices', () => {
  test('has the gain that a compressor takes: −10 + 14 / 2 = −3 dBu, 4 − 7', () => {
    const [path] = pathsOn(
      {
        'rack.squash.in': 'desk.a.insert.send',
        'desk.a.insert.return': 'rack.squash.out',
        'rack.squash.threshold': -10,
        'rack.squash.ratio': '2',
      },
      'viola',
      'out.tape',
    );
    const step = path?.steps.find(({ place }) => place === 'rack.squash.compress');
    expect(step?.level).toBeCloseTo(-3, 9);
    expect(step?.gain).toBeCloseTo(-7, 9);
    expect(path?.level).toBeCloseTo(-3, 9);
  });

  const plated: Board = { 'desk.a.wash': -2, 'desk.w.fader': -6 };

  test('a reverb makes a new signal on either side: 4 − 2 + 3.0103 − 6 = −0.9897 dBu, ± 1e-4', () => {
    const [dry, wet] = pathsOn(plated, 'viola', 'out.tape');
    expect(dry).toMatchObject({ decorrelated: false });
    expect(wet).toMatchObject({ decorrelated: true });
    expect(wet?.level).toBeCloseTo(-0.9897, 4);
  });

  test('both sides of a reverb on one wire add in power, not in voltage: 4 − 2 + 3.0103 = 5.0103 dBu', () => {
    const board: Board = { ...plated, 'desk.w.ears': 0 };
    const solution = solve(board);
    const [path, ...more] = paths(solution, 'viola', 'out.cans');
    expect(more).toEqual([]);
    expect(path?.level).toBeCloseTo(5.0103, 4);
    expect(levelOf(solution, 'viola', 'out.cans')).toBeCloseTo(5.0103, 4);
  });

  test('one side of a reverb that was split and comes together adds in voltage', () => {
    const board: Board = {
      'desk.a.wash': 0,
      'desk.w.in.l': 'none',
      'desk.w.in.r': 'none',
      'desk.c.in': 'rack.hall.out.l',
      'desk.c.band': true,
      'desk.band.main': false,
      'desk.c.main': false,
      'desk.w.main': false,
      'desk.b.in': 'desk.band.out.l',
      'desk.a.main': false,
    };
    const solution = solve(board);
    const ways = paths(solution, 'viola', 'out.tape.l');
    expect(ways).toHaveLength(1);
    expect(ways[0]?.level).toBeCloseTo(Number(levelOf(solution, 'viola', 'out.tape.l')), 9);
  });

  test('goes through both channels of a device one after the other', () => {
    const board: Board = {
      'rack.twin.in.l': 'desk.a.insert.send',
      'rack.twin.in.r': 'rack.twin.out.l',
      'desk.a.insert.return': 'rack.twin.out.r',
      'rack.twin.makeup': 1.5,
      'rack.twin.threshold': 20,
    };
    const solution = solve(board);
    const [path, ...more] = paths(solution, 'viola', 'out.tape');
    expect(more).toEqual([]);
    expect(path?.level).toBeCloseTo(4 + 2 * 1.5, 9);
    expect(path && placesOf(path).filter((place) => place === 'rack.twin.makeup')).toHaveLength(2);
  });

  test('goes round a loop at most once in part, and comes to an end', () => {
    const board: Board = { 'desk.a.late': 0, 'desk.c.in': 'desk.late.out', 'desk.c.late': -6 };
    const found = pathsOn(board, 'viola', 'out.tape');
    expect(found.map(({ level }) => Math.round(level * 1e6) / 1e6)).toEqual([4, 4]);
  });
});

describe('paths() of random desks', () => {
  const noReverb = arbitrarySetup({ devices: ['gain', 'compressor'] });

  test('without loops and reverbs the ways to a leg, added in voltage, are the level there, to 1e-6 dB', () => {
    let withTwo = 0;
    fc.assert(
      fc.property(noReverb, (setup) => {
        const solution = simulate(setup);
        const { circuit, loops } = solution;
        if (loops.length > 0) return;
        const ends = circuit.stages.filter(({ place }) =>
          /^(out|rack|converter)\.|\.out$/.test(place),
        );
        for (const { id: leg } of ends) {
          for (const { id: signal } of circuit.signals) {
            const found = paths(solution, signal, leg);
            if (found.length >= MOST_PATHS) continue;
            if (found.length > 1) withTwo += 1;
            const voltage = found.reduce(
              (sum, { level, inverted }) => sum + (inverted ? -1 : 1) * 10 ** (level / 20),
              0,
            );
            const level = dbu(20 * Math.log10(Math.abs(voltage)));
            expectNear(level, levelOf(solution, signal, leg), 1e-6, `${signal} at ${leg}`);
          }
        }
      }),
      RUNS,
    );
    expect(withTwo).toBeGreaterThan(50);
  });

  test('each way is consistent: gains add up, levels follow the legs, it begins and ends where it should', () => {
    fc.assert(
      fc.property(fc.oneof(arbitrarySetup(), arbitrarySetup({ loops: true })), (setup) => {
        const solution = simulate(setup);
        for (const { id: track } of setup.rig.box.tracks) {
          const found = paths(solution, track, 'out.end');
          const levels = found.map(({ level }) => level);
          expect(levels).toEqual([...levels].sort((a, b) => b - a));
          for (const path of found) {
            const [first] = path.steps;
            const last = path.steps.at(-1);
            expect([first?.place, last?.place]).toEqual([`box.${track}.source`, 'out.end']);
            const gains = path.steps.reduce((sum, { gain }) => sum + gain, 0);
            if (path.level === -Infinity) continue;
            expect(gains).toBeCloseTo(path.gain, 6);
            expect(path.level).toBeCloseTo(Number(first?.level) + path.gain, 6);
            for (const { level, legs } of path.steps) {
              const power = legs.reduce((sum, leg) => sum + 10 ** (leg.level / 10), 0);
              expect(10 * Math.log10(power)).toBeCloseTo(level, 6);
            }
          }
        }
      }),
      RUNS,
    );
  });

  test('a way is there where there is a level, and none where there is silence', () => {
    fc.assert(
      fc.property(arbitrarySetup(), (setup) => {
        const solution = simulate(setup);
        for (const { id } of solution.circuit.signals) {
          const level = levelOf(solution, id, 'out.end');
          const count = paths(solution, id, 'out.end').length;
          if (level !== undefined && level > -200) expect(count).toBeGreaterThan(0);
          // An unstable loop leaves no level, whether or not the signal leads into it.
          if (count === 0 && level !== undefined) expect(level).toBe(-Infinity);
        }
      }),
      RUNS,
    );
  });
});
