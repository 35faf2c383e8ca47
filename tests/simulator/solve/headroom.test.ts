import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Board } from '../../../simulator/board/board.ts';
import type { Rig } from '../../../simulator/rig/schema.ts';
import { clippingStages, firstToClip, headroomAt } from '../../../simulator/solve/headroom.ts';
import { levelAt } from '../../../simulator/solve/levels.ts';
import { simulate } from '../../../simulator/solve/simulate.ts';
import { arbitrarySetup, placesAndLegs, RUNS } from '../arbitrary-setup.ts';
import { smallRoom } from '../small-room.ts';

const room = (text: (text: string) => string = (one) => one): Rig => smallRoom(text);
const hear = (board: Board = {}, rig: Rig = room()) => simulate({ rig, board });

describe('headroomAt()', () => {
  test('clip − (RMS + crest) on strip A: 24 − (4 + 12) = 8 dB, behind a fader of −5 it is 13 dB', () => {
    const solution = hear({ 'desk.a.fader': -5 });
    expect(headroomAt(solution, 'desk.a.trim')).toMatchObject({ clip: 24, stage: 'desk.a.trim' });
    expect(headroomAt(solution, 'desk.a.trim')?.peak).toBeCloseTo(16, 9);
    expect(headroomAt(solution, 'desk.a.trim')?.headroom).toBeCloseTo(8, 9);
    expect(headroomAt(solution, 'desk.a.fader')?.headroom).toBeCloseTo(13, 9);
  });

  test('full scale is the clip level of the converter: a sine of 0 dBFS has no headroom and does not clip', () => {
    const rig = room((text) =>
      text.replace('levelDbfs: -17 }', 'levelDbfs: 0, crestDb: 0 }').replace('-23 }', '-40 }'),
    );
    const solution = hear({ 'desk.a.trim': -10 }, rig);
    expect(headroomAt(solution, 'converter.out1')?.headroom).toBeCloseTo(0, 9);
    expect(clippingStages(solution)).toEqual([]);
    expect(firstToClip(solution)?.stage).toBe('converter.out1');
  });

  test('a sum of the box above full scale clips at the converter, and is named first', () => {
    // Viola 4 dBu and horn −2 dBu, 6 dB up each, on one output: 10.97 dBu and 12 dB of crest against 21.
    const solution = hear({ 'box.horn.to': 'out1', 'box.viola.fader': 6, 'box.horn.fader': 6 });
    const found = firstToClip(solution);
    expect(found).toMatchObject({ place: 'converter.out1', clip: 21 });
    expect(found?.headroom).toBeCloseTo(21 - 12 - (6 + 10 * Math.log10(10 ** 0.4 + 10 ** -0.2)), 9);
    expect(clippingStages(solution).map(({ place }) => place)).toEqual(['converter.out1']);
    expect(clippingStages(hear({ 'box.horn.to': 'out1', 'box.viola.fader': 2 }))).toEqual([]);
  });

  test('the crest of a mix is the power-weighted mean of crests as ratios; one alone has its own', () => {
    const rig = room((text) =>
      text
        .replace('levelDbfs: -17 }', 'levelDbfs: -17, crestDb: 9 }')
        .replace('levelDbfs: -23 }', 'levelDbfs: -23, crestDb: 18 }'),
    );
    const mixed = hear({ 'desk.a.ears': 0, 'desk.b.ears': 0 }, rig);
    const peaks = 10 ** ((4 + 9) / 10) + 10 ** ((-2 + 18) / 10);
    expect(headroomAt(mixed, 'desk.ears.sum')?.peak).toBeCloseTo(10 * Math.log10(peaks), 9);
    expect(headroomAt(hear({ 'desk.b.ears': -30 }, rig), 'desk.ears.sum')?.peak).toBeCloseTo(
      -2 - 30 + 18,
      9,
    );
  });

  test('a stereo place has the headroom of its leg that has less', () => {
    const solution = hear({ 'desk.a.pan': -1, 'desk.b.pan': 1 });
    const [left, right] = [headroomAt(solution, 'desk.main.fader.l'), 'desk.main.fader.r'];
    expect(headroomAt(solution, 'desk.main.fader')).toEqual(left);
    expect(left?.headroom).toBeCloseTo(8, 9);
    expect(headroomAt(solution, right)?.headroom).toBeCloseTo(14, 9);
  });

  test('silence has endless headroom, a passive place and a howling loop have none to tell', () => {
    const solution = hear();
    expect(headroomAt(solution, 'desk.c.trim')?.headroom).toBe(Infinity);
    expect(headroomAt(solution, 'desk.c.trim')?.peak).toBe(-Infinity);
    expect(headroomAt(solution, 'desk.a.pan')).toBeUndefined();
    const howling = hear({ 'desk.a.late': 0, 'desk.c.in': 'desk.late.out', 'desk.c.late': 1 });
    expect(headroomAt(howling, 'desk.late.out')).toBeUndefined();
    expect(firstToClip(howling)?.place).toBe('converter.out1');
    expect(
      firstToClip(hear({ 'box.viola.mute': true, 'box.horn.mute': true, 'box.organ.mute': true })),
    ).toBeUndefined();
  });

  test('any level raised by some dB takes as much of the headroom', () => {
    let held = 0;
    fc.assert(
      fc.property(
        arbitrarySetup({ devices: ['gain', 'reverb'] }),
        fc.double({ min: 0.5, max: 20, noNaN: true }),
        (setup, by) => {
          const { box } = setup.rig;
          const tracks = box.tracks.map((track) => ({ ...track, levelDbfs: -40 }));
          const louder = box.tracks.map((track) => ({ ...track, levelDbfs: -40 + by }));
          const [soft, loud] = [tracks, louder].map((some) =>
            simulate({ ...setup, rig: { ...setup.rig, box: { ...box, tracks: some } } }),
          );
          if (!soft || !loud) throw new Error('Expected two solutions.');
          for (const place of placesAndLegs(soft.circuit)) {
            const before = headroomAt(soft, place);
            const after = headroomAt(loud, place);
            if (before === undefined || before.headroom === Infinity) {
              expect(after?.headroom).toBe(before?.headroom);
            } else if ((levelAt(soft, place) ?? 0) > -200) {
              held += 1;
              expect(after?.headroom).toBeCloseTo(before.headroom - by, 6);
            }
          }
        },
      ),
      RUNS,
    );
    expect(held).toBeGreaterThan(1000);
  });

  test('nothing has less headroom than the first to clip, and all that clip have less than none', () => {
    fc.assert(
      fc.property(arbitrarySetup({ loops: true }), (setup) => {
        const solution = simulate(setup);
        const least = firstToClip(solution)?.headroom ?? Infinity;
        for (const place of placesAndLegs(solution.circuit)) {
          expect(headroomAt(solution, place)?.headroom ?? Infinity).toBeGreaterThanOrEqual(
            least - 1e-5,
          );
        }
        const clipping = clippingStages(solution);
        expect(clipping.length > 0).toBe(least < -1e-6);
        for (const { headroom } of clipping) expect(headroom).toBeLessThan(0);
      }),
      RUNS,
    );
  });
});

describe('a −10 dBV device in a +4 dBu room', () => {
  const padded = room((text) =>
    text.replace(
      'label: Boost, kind: gain }',
      'label: Boost, kind: gain, level: minus10, noiseDbu: -90, clipDbu: 7 }',
    ),
  );
  const patched: Board = {
    'rack.boost.in': 'desk.a.insert.send',
    'desk.a.insert.return': 'rack.boost.out',
  };

  test('hears 11.7815 dB less and gives back what came: 4 − 11.7815 = −7.7815 dBu within', () => {
    const solution = hear(patched, padded);
    expect(levelAt(solution, 'rack.boost.pad')).toBeCloseTo(-7.7815, 4);
    expect(levelAt(solution, 'rack.boost.end')).toBeCloseTo(-7.7815, 4);
    expect(levelAt(solution, 'rack.boost.out')).toBeCloseTo(4, 9);
  });

  test('clips by its own level, 7 − (−7.7815 + 12) = 2.7815 dB, behind 5 dB more of its gain it does', () => {
    expect(headroomAt(hear(patched, padded), 'rack.boost.pad')?.headroom).toBeCloseTo(2.7815, 4);
    const louder = hear({ ...patched, 'rack.boost.gain': 5 }, padded);
    expect(firstToClip(louder)).toMatchObject({ place: 'rack.boost.end', clip: 7 });
    expect(firstToClip(louder)?.headroom).toBeCloseTo(2.7815 - 5, 4);
    expect(clippingStages(louder).map(({ stage }) => stage)).toEqual(['rack.boost.end']);
  });
});
