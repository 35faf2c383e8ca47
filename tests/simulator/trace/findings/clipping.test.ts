import * as fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import type { Board } from '../../../../simulator/board/board.ts';
import { clippingStages, headroomAt } from '../../../../simulator/solve/headroom.ts';
import { simulate } from '../../../../simulator/solve/simulate.ts';
import type { FindingOf } from '../../../../simulator/trace/findings/finding.ts';
import { findings } from '../../../../simulator/trace/findings.ts';
import { arbitrarySetup, RUNS } from '../../arbitrary-setup.ts';
import { boxRoom } from '../../circuit/box-room.ts';
import { smallRoom } from '../../small-room.ts';
import { found, foundIn } from './found.ts';

// Properties take their time on a machine that is busy.
vi.setConfig({ testTimeout: 60_000 });

const told = (board: Board) => [...found('over-full-scale', board), ...found('stage-clips', board)];

/** The one that is told, with its figure apart, and nothing else. */
function only<Code extends 'over-full-scale' | 'stage-clips'>(found: readonly FindingOf<Code>[]) {
  expect(found).toHaveLength(1);
  const { over = Number.NaN, ...rest } = found[0] ?? {};
  return { over, rest };
}

// Viola 4 dBu with 12 dB of crest; the desk passes 24 dBu, devices 22, converter and outputs 21.
describe('stage-clips', () => {
  test('an amplifier of the desk: 4 + 8.5 + 12 − 24 = 0.5 dB over at the trim, and what follows is not told', () => {
    const { over, rest } = only(found('stage-clips', { 'desk.a.trim': 8.5 }));
    expect(over).toBeCloseTo(0.5, 9);
    expect(rest).toEqual({
      code: 'stage-clips',
      severity: 'fault',
      places: ['desk.a.trim'],
      clip: 24,
      loudest: ['viola'],
      mendAt: 'desk.a.trim',
      follow: 'viola',
    });
    expect(told({ 'desk.a.trim': 7.5 })).toEqual([]);
  });

  test('the input of a device, and the send as where to mend it: 4 + 6.5 + 12 − 22 = 0.5 dB', () => {
    const sent = (send: number): Board => ({ 'desk.a.wash': send, 'desk.w.fader': -10 });
    const { over, rest } = only(found('stage-clips', sent(6.5)));
    expect(over).toBeCloseTo(0.5, 9);
    expect(rest).toMatchObject({ places: ['rack.hall.in'], clip: 22, mendAt: 'desk.a.wash' });
    expect(told(sent(5.5))).toEqual([]);
  });

  test('an output of the room, behind the fader of the main bus', () => {
    const { over, rest } = only(found('stage-clips', { 'desk.main.fader': 8.5 }));
    // On each side 10 log₁₀(10^0.4 + 10^−0.2) − 3.01 dBu.
    const mix = 10 * Math.log10((10 ** 0.4 + 10 ** -0.2) / 2);
    expect(over).toBeCloseTo(mix + 8.5 + 12 - 21, 9);
    expect(rest).toMatchObject({
      places: ['out.tape'],
      clip: 21,
      loudest: ['viola'],
      mendAt: 'desk.main.fader',
    });
    expect(told({ 'desk.main.fader': 6.5 })).toEqual([]);
  });

  test('where nothing is raised, the last gain before the stage is where one begins', () => {
    const rig = smallRoom((text) => text.replace('desk:\n', 'desk:\n  clipDbu: 15.6\n'));
    const { over, rest } = only(foundIn('stage-clips', { rig, board: {} }));
    expect(over).toBeCloseTo(4 + 12 - 15.6, 9);
    expect(rest).toMatchObject({ places: ['desk.a.trim'], mendAt: 'desk.a.trim' });
  });
});

describe('over-full-scale', () => {
  test('an output of the converter: 4 + 5.5 + 12 − 21 = 0.5 dB over', () => {
    const { over, rest } = only(told({ 'box.viola.fader': 5.5 }));
    expect(over).toBeCloseTo(0.5, 9);
    expect(rest).toEqual({
      code: 'over-full-scale',
      severity: 'fault',
      places: ['converter.out1'],
      clip: 21,
      loudest: ['viola'],
      mendAt: 'box.viola.fader',
      follow: 'viola',
    });
    expect(told({ 'box.viola.fader': 4.5 })).toEqual([]);
  });

  test('a sum of the box: the fewest tracks that make half of its peaks, here of 6.2, 6.1 and 6 dBu', () => {
    const board = {
      'box.viola.fader': 2.2,
      'box.horn.to': 'out1',
      'box.horn.fader': 8.1,
      'box.organ.to': 'out1',
      'box.organ.fader': 8 + 10 * Math.log10(10 ** 0.3) - 3,
    };
    expect(told(board)).toMatchObject([
      { code: 'over-full-scale', places: ['converter.out1'], loudest: ['viola', 'horn'] },
    ]);
  });

  test('an input of the converter: 4 + 5.5 + 12 − 21 = 0.5 dB over', () => {
    const recorded = (fader: number) =>
      boxRoom({
        captures: [{ id: 'mix', label: 'Mix' }],
        board: {
          'out.tape': 'none',
          'converter.in1': 'desk.main.out.l',
          'box.mix.in': 'in1',
          'desk.main.fader': fader,
        },
      }).setup;
    const { over, rest } = only(foundIn('over-full-scale', recorded(5.5)));
    expect(over).toBeCloseTo(0.5, 9);
    expect(rest).toMatchObject({ places: ['converter.in1'], mendAt: 'desk.main.fader' });
    expect(foundIn('over-full-scale', recorded(4.5))).toEqual([]);
  });

  test('both outputs of a stereo track are one', () => {
    const rig = smallRoom((text) => text.replace('levelDbfs: -26,', 'levelDbfs: -16,'));
    expect(foundIn('over-full-scale', { rig, board: { 'box.organ.fader': 5 } })).toMatchObject([
      { places: ['converter.out3', 'converter.out4'], mendAt: 'box.organ.fader' },
    ]);
  });
});

describe('what clips by a cause that is told', () => {
  test('is not told: a trim 12 dB over, with a device and both buses behind it', () => {
    const board = {
      'desk.a.trim': 20,
      'desk.a.pan': -1,
      'rack.boost.in': 'desk.a.insert.send',
      'desk.a.insert.return': 'rack.boost.out',
      'desk.a.wash': 0,
    };
    expect(clippingStages(simulate({ rig: smallRoom(), board })).length).toBeGreaterThan(10);
    expect(told(board)).toMatchObject([{ places: ['desk.a.trim'], mendAt: 'desk.a.trim' }]);
  });

  test('is told where it has a cause of its own as well: a trim 0.5 dB over, and 10 dB at the main bus', () => {
    expect(told({ 'desk.a.trim': 8.5, 'desk.main.fader': 10 })).toMatchObject([
      { places: ['desk.a.trim'] },
      { places: ['desk.main.fader'], mendAt: 'desk.main.fader' },
    ]);
  });

  test('does not hide what clips beside it', () => {
    const board = { 'desk.a.trim': 9, 'desk.b.trim': 16 };
    expect(told(board).map(({ mendAt }) => mendAt)).toEqual(['desk.b.trim', 'desk.a.trim']);
  });
});

test('findings() tell clipping when and only when a stage clips, each control once, by how much it is over', () => {
  let clipped = 0;
  fc.assert(
    fc.property(arbitrarySetup({ loops: true }), (setup) => {
      const solution = simulate(setup);
      const clipping = findings(setup, solution).filter(
        (one) => one.code === 'stage-clips' || one.code === 'over-full-scale',
      );
      const stages = clippingStages(solution);
      if (stages.length > 0) clipped += 1;
      expect(clipping.length > 0).toBe(stages.length > 0);
      expect(new Set(clipping.map(({ mendAt }) => mendAt)).size).toBe(clipping.length);
      const [first] = stages;
      for (const { places, over } of clipping) {
        const [worst = ''] = places;
        expect(over).toBeCloseTo(-(headroomAt(solution, worst)?.headroom ?? Number.NaN), 6);
      }
      // What comes first in signal order has nothing before it to blame.
      if (first) expect(clipping.flatMap(({ places }) => places)).toContain(first.place);
    }),
    RUNS,
  );
  expect(clipped).toBeGreaterThan(20);
});
