import * as fc from 'fast-check';
import { lusolve } from 'mathjs';
import { describe, expect, test } from 'vitest';
import type { Board } from '../../../simulator/board/board.ts';
import type { Circuit } from '../../../simulator/circuit/circuit.ts';
import type { Rig } from '../../../simulator/rig/schema.ts';
import { levelAt, levelOf } from '../../../simulator/solve/levels.ts';
import { noiseAt, noiseShares } from '../../../simulator/solve/noise.ts';
import { response } from '../../../simulator/solve/response.ts';
import { simulate } from '../../../simulator/solve/simulate.ts';
import type { Solution } from '../../../simulator/solve/solution.ts';
import type { Hz } from '../../../simulator/units/frequency.ts';
import { dbu } from '../../../simulator/units/level.ts';
import { arbitrarySetup, LINEAR, placesAndLegs, RUNS } from '../arbitrary-setup.ts';
import { smallRoom } from '../small-room.ts';
import { expectNear } from './near-levels.ts';

const anySetup = fc.oneof(arbitrarySetup(), arbitrarySetup({ loops: true }));
const withoutCompressors = fc.oneof(
  arbitrarySetup({ devices: ['gain', 'reverb'] }),
  arbitrarySetup({ devices: ['gain', 'reverb'], loops: true }),
);

const sharesAt = (solution: Solution, place: string): Map<string, number> =>
  new Map(noiseShares(solution, place)?.map((one) => [one.place, 10 ** (one.level / 10)]));

/** The same rig with every noise raised by so many dB. */
const noisier = (rig: Rig, by: number): Rig => ({
  ...rig,
  converter: { ...rig.converter, noiseDbfs: rig.converter.noiseDbfs + by },
  desk: {
    ...rig.desk,
    noise: {
      line: rig.desk.noise.line + by,
      fader: rig.desk.noise.fader + by,
      bus: rig.desk.noise.bus + by,
    },
  },
  rack: rig.rack.map((device) => ({ ...device, noiseDbu: (device.noiseDbu ?? -90) + by })),
});

describe('noiseAt() and noiseShares()', () => {
  test('shares add up to the whole in power and stand in order, to 1e-9', () => {
    let shared = 0;
    fc.assert(
      fc.property(anySetup, (setup) => {
        const solution = simulate(setup);
        for (const place of placesAndLegs(solution.circuit)) {
          const shares = noiseShares(solution, place);
          const noise = noiseAt(solution, place);
          if (!shares) {
            expect(noise).toBeUndefined();
            expect(levelAt(solution, place)).toBeUndefined();
            continue;
          }
          if (shares.length === 0) {
            expect(noise).toBe(-Infinity);
            continue;
          }
          const power = shares.reduce((sum, { level }) => sum + 10 ** (level / 10), 0);
          expect(power / 10 ** ((noise ?? Number.NaN) / 10)).toBeCloseTo(1, 9);
          const levels = shares.map(({ level }) => level);
          expect(levels).toEqual([...levels].sort((one, other) => other - one));
          shared += 1;
          expect(shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
        }
      }),
      RUNS,
    );
    expect(shared).toBeGreaterThan(1000);
  });

  test('noise does not change with the levels of the recordings when no compressor is there', () => {
    fc.assert(
      fc.property(withoutCompressors, fc.double({ min: -50, max: 0, noNaN: true }), (setup, to) => {
        const tracks = setup.rig.box.tracks.map((track) => ({ ...track, levelDbfs: to }));
        const other = simulate({
          ...setup,
          rig: { ...setup.rig, box: { ...setup.rig.box, tracks } },
        });
        const solution = simulate(setup);
        for (const place of placesAndLegs(solution.circuit)) {
          expect(noiseAt(other, place)).toBe(noiseAt(solution, place));
        }
      }),
      RUNS,
    );
  });

  test('all noises raised by some dB raise the noise everywhere by as much, to 1e-6 dB', () => {
    fc.assert(
      fc.property(anySetup, fc.double({ min: -30, max: 30, noNaN: true }), (setup, by) => {
        const base = simulate({ ...setup, rig: noisier(setup.rig, 0) });
        const raised = simulate({ ...setup, rig: noisier(setup.rig, by) });
        for (const place of placesAndLegs(base.circuit)) {
          const noise = noiseAt(base, place);
          const wanted = noise === undefined ? undefined : dbu(noise + by);
          expectNear(noiseAt(raised, place), wanted, 1e-6, place);
        }
      }),
      RUNS,
    );
  });

  test('the mute of a strip removes exactly what comes from before it', () => {
    let removed = 0;
    fc.assert(
      fc.property(arbitrarySetup(LINEAR), fc.nat(), (setup, pick) => {
        const strips = setup.rig.desk.strips.filter(({ type }) =>
          setup.rig.desk.stripTypes.find(({ id }) => id === type)?.stages.includes('mute'),
        );
        const strip = strips[pick % strips.length];
        if (!strip) return;
        const mute = `desk.${strip.id}.mute`;
        const muted = simulate({ ...setup, board: { ...setup.board, [mute]: true } });
        const open = simulate({ ...setup, board: { ...setup.board, [mute]: false } });
        for (const place of setup.rig.outputs.map(({ id }) => `out.${id}`)) {
          if (noiseAt(open, place) === undefined || noiseAt(open, mute) === undefined) continue;
          const [before, after] = [sharesAt(open, place), sharesAt(muted, place)];
          const behind = sharesAt(open, mute);
          for (const [born, power] of before) {
            // What never comes to the mute is heard as before. What does may have ways round it.
            if (!behind.has(born)) expect(after.get(born)).toBeCloseTo(power, 12);
            else if (!after.has(born)) removed += 1;
          }
          for (const born of after.keys()) {
            if (!before.has(born)) expect(behind.has(born), born).toBe(true);
          }
        }
      }),
      RUNS,
    );
    expect(removed).toBeGreaterThan(30);
  });

  test('the noise of a converter output goes where the one track on it goes, through loops, reverbs and compressors, to 1e-6', () => {
    let followed = 0;
    fc.assert(
      fc.property(anySetup, (setup) => {
        const solution = simulate(setup);
        const { circuit } = solution;
        const lines = [...circuit.stagesAt.keys()].filter((place) =>
          place.startsWith('converter.'),
        );
        for (const { id } of setup.rig.box.tracks) {
          const on = lines.filter((line) => (levelOf(solution, id, line) ?? -Infinity) > -200);
          const [line] = on;
          if (!line || on.length > 1) continue;
          const start = (levelOf(solution, id, line) ?? 0) - (noiseAt(solution, line) ?? 0);
          for (const place of placesAndLegs(circuit)) {
            const level = levelOf(solution, id, place);
            if (place.startsWith('box.') || level === undefined || level < -150) continue;
            const share = noiseShares(solution, place)?.find((one) => one.place === line);
            expect(level - (share?.level ?? Number.NaN), place).toBeCloseTo(start, 6);
            followed += 1;
          }
        }
      }),
      RUNS,
    );
    expect(followed).toBeGreaterThan(1000);
  });

  test('noise agrees with mathjs lusolve on the transposed equations of random desks, to 1e-4 dB', () => {
    let tried = 0;
    fc.assert(
      fc.property(arbitrarySetup(LINEAR), (setup) => {
        const solution = simulate(setup);
        const { circuit } = solution;
        if (circuit.stages.length > 160) return;
        for (const place of setup.rig.outputs.map(({ id }) => `out.${id}`)) {
          const found = noiseAt(solution, place);
          if (found === undefined) continue;
          tried += 1;
          expectNear(found, noiseElsewhere(circuit, place), 1e-4, place);
        }
      }),
      { seed: 77, numRuns: 40 },
    );
    expect(tried).toBeGreaterThan(30);
  });
});

/** Noise at a place: how each stage comes out there, by (I − A)ᵀ g = e for each leg, and its power through that. */
function noiseElsewhere({ stages, wires, active, stagesAt }: Circuit, place: string) {
  const transposed = stages.map((_, index) => stages.map((__, other) => (index === other ? 1 : 0)));
  wires.forEach((into, to) => {
    for (const { from, ratio } of into) {
      const row = transposed[from] as number[];
      row[to] = (row[to] ?? 0) - ratio;
    }
  });
  let power = 0;
  for (const leg of stagesAt.get(place) ?? []) {
    const side = stages.map((_, index) => [index === leg ? 1 : 0]);
    const gains = lusolve(transposed, side).valueOf() as number[][];
    for (const [stage, { noise }] of active) {
      power += (gains[stage]?.[0] ?? 0) ** 2 * 10 ** (noise / 10);
    }
  }
  return dbu(10 * Math.log10(power));
}

/** Only these make noise, in a small room whose converter puts out 21 dBu at full scale. */
const quietRoom = (noise: Partial<Rig['desk']['noise']> & { readonly converter?: number }) => {
  const { converter = -200, ...desk } = noise;
  const rig = smallRoom();
  return {
    ...rig,
    converter: { ...rig.converter, noiseDbfs: converter },
    desk: { ...rig.desk, noise: { line: -200, fader: -200, bus: -200, ...desk } },
    rack: rig.rack.map((device) => ({ ...device, noiseDbu: -200 })),
  };
};
const hear = (rig: Rig, board: Board = {}) => simulate({ rig, board });

describe('noiseAt() in the small room', () => {
  test('the converter: −104 dBFS at 21 dBu is −83; by the fader of strip A at −7 to the tape: −90 dBu', () => {
    const solution = hear(quietRoom({ converter: -104 }), {
      'desk.a.fader': -7,
      'desk.b.mute': true,
    });
    expect(noiseAt(solution, 'converter.out1')).toBeCloseTo(-83, 9);
    expect(noiseAt(solution, 'out.tape')).toBeCloseTo(-90, 6);
    expect(noiseShares(solution, 'out.tape')?.[0]?.place).toBe('converter.out1');
    expect(noiseAt(solution, 'box.viola.fader')).toBe(-Infinity);
    expect(noiseShares(solution, 'box.viola.fader')).toEqual([]);
  });

  test('a bus has the noise of N + 1: strips A, B, C, W and the band make 6, without two of them 4', () => {
    const rig = quietRoom({ bus: -110 });
    const one = (solution: Solution) => noiseAt(solution, 'desk.main.sum.l');
    // What other buses make is muted: that of the band, and that of the wash, which comes back on strip W.
    const closed: Board = { 'desk.band.mute': true, 'desk.w.mute': true };
    expect(one(hear(rig, closed))).toBeCloseTo(-110 + 20 * Math.log10(6), 6);
    const fewer = hear(rig, { ...closed, 'desk.c.main': false, 'desk.w.main': false });
    expect(one(fewer)).toBeCloseTo(-110 + 20 * Math.log10(4), 6);
    // Muting takes no strip off the bus, a send that is closed neither.
    expect(one(hear(rig, { ...closed, 'desk.c.mute': true }))).toBeCloseTo(
      -110 + 20 * Math.log10(6),
      6,
    );
    expect(noiseAt(hear(rig), 'desk.ears.sum')).toBeCloseTo(-110 + 20 * Math.log10(5), 6);
  });

  test('one strip more on the bus adds its own noise and raises that of the sum', () => {
    const rig = smallRoom();
    const without = hear(rig, { 'desk.c.main': false });
    const added = sharesAt(hear(rig), 'out.tape');
    const before = sharesAt(without, 'out.tape');
    expect(before.has('desk.c.trim')).toBe(false);
    expect(added.has('desk.c.trim')).toBe(true);
    expect(added.get('desk.main.sum')).toBeGreaterThan(before.get('desk.main.sum') ?? Infinity);
    for (const [place, power] of before) {
      if (place !== 'desk.main.sum') expect(added.get(place), place).toBeCloseTo(power, 15);
    }
  });

  test('a strip on the main bus and on the band arrives twice, and so does its noise: −80 + 6.0206 dBu', () => {
    const rig = quietRoom({ line: -80 });
    const alone: Board = { 'desk.b.mute': true, 'desk.c.mute': true, 'desk.w.mute': true };
    expect(noiseAt(hear(rig, alone), 'out.tape')).toBeCloseTo(-80, 6);
    const twice = hear(rig, { ...alone, 'desk.a.band': true });
    expect(noiseAt(twice, 'out.tape')).toBeCloseTo(-80 + 6.0206, 4);
  });

  test('a compressor turns noise down by what it does to the music: 4 dBu, threshold −12, 4 to 1: −12 dB', () => {
    const patched: Board = {
      'rack.squash.in': 'desk.a.insert.send',
      'desk.a.insert.return': 'rack.squash.out',
      'rack.squash.threshold': -12,
      'desk.b.mute': true,
    };
    const solution = hear(quietRoom({ converter: -104 }), patched);
    expect(noiseAt(solution, 'out.tape')).toBeCloseTo(-83 - 12, 6);
    const softer = { ...patched, 'box.viola.fader': -20 };
    expect(noiseAt(hear(quietRoom({ converter: -104 }), softer), 'out.tape')).toBeCloseTo(-83, 6);
  });

  test('round a stable loop of −6 dB it grows by 6.0412 dB; where the loop howls it is unknown', () => {
    const rig = quietRoom({ converter: -104 });
    const ring = (send: number): Board => ({
      'desk.a.late': 0,
      'desk.c.in': 'desk.late.out',
      'desk.c.late': send,
    });
    expect(noiseAt(hear(rig, ring(-6)), 'desk.late.out')).toBeCloseTo(-83 + 6.0412, 4);
    const howling = hear(rig, ring(1));
    expect(noiseAt(howling, 'out.tape')).toBeUndefined();
    expect(noiseShares(howling, 'out.tape')).toBeUndefined();
    expect(noiseAt(howling, 'out.cans')).toBeDefined();
  });

  test('through a reverb it comes out of either side as a new noise of the same power', () => {
    const rig = quietRoom({ converter: -104 });
    const solution = hear(rig, { 'desk.a.wash': -5, 'desk.a.mute': false });
    expect(noiseAt(solution, 'rack.hall.out.l')).toBeCloseTo(-88, 6);
    expect(noiseAt(solution, 'rack.hall.out')).toBeCloseTo(-88 + 3.0103, 4);
  });

  test('there is no place of that name: RangeError', () => {
    expect(() => noiseAt(hear(smallRoom()), 'desk.nowhere')).toThrow(RangeError);
  });
});

describe('noiseAt() behind what depends on frequency', () => {
  const rig = quietRoom({ converter: -104 });
  const withDevice = (kind: 'equaliser' | 'delay'): Rig => ({
    ...rig,
    rack: rig.rack.map((device) => (device.id === 'boost' ? { ...device, kind } : device)),
  });
  const patched: Board = { 'rack.boost.in': 'converter.out1', 'desk.a.in': 'rack.boost.out' };

  test('white noise through a high shelf of +9 dB is the mean over 20 kHz, not over bands, to 0.01 dB', () => {
    const solution = hear(withDevice('equaliser'), { ...patched, 'rack.boost.high': 9 });
    // Points evenly spaced on a linear axis, each with the same share of white noise.
    const points = Array.from({ length: 4000 }, (_, index) => ((index + 0.5) * 5) as Hz);
    const gains = response(solution, 'viola', 'rack.boost.out', points) ?? [];
    const mean = gains.reduce((sum, gain) => sum + 10 ** (gain / 10), 0) / points.length;
    const wanted = -83 + 10 * Math.log10(mean);
    expect(mean).toBeGreaterThan(10 ** 0.6);
    expect(Math.abs((noiseAt(solution, 'rack.boost.out') ?? 0) - wanted)).toBeLessThan(0.01);
  });

  test('a noise and itself 8 ms later make a comb, which has the power of two: +3.0103 dB, to 0.05 dB', () => {
    const solution = hear(withDevice('delay'), {
      'desk.a.late': 0,
      'rack.boost.in': 'desk.late.out',
      'rack.boost.time': '8',
      'desk.c.in': 'rack.boost.out',
      'desk.b.mute': true,
    });
    expect(noiseAt(solution, 'rack.boost.out')).toBeCloseTo(-83, 6);
    const noise = noiseAt(solution, 'out.tape') ?? 0;
    expect(Math.abs(noise - (-83 + 3.0103))).toBeLessThan(0.05);
  });
});
