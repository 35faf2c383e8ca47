import { describe, expect, test } from 'vitest';
import { judge } from '../../../simulator/grade/judge.ts';
import { controls } from '../../../simulator/rig/controls.ts';
import { jacks } from '../../../simulator/rig/jacks.ts';
import { levelAt, levelOf } from '../../../simulator/solve/levels.ts';
import { response } from '../../../simulator/solve/response.ts';
import { findings } from '../../../simulator/trace/findings.ts';
import { stopOf } from '../../../simulator/trace/stops.ts';
import type { Hz } from '../../../simulator/units/frequency.ts';
import { type BoxRoom, boxRoom } from './box-room.ts';

const CAPTURES = [
  { id: 'mix', label: 'Mix', stereo: true },
  { id: 'side', label: 'Side' },
];

describe('capture tracks', () => {
  test('levelAt() record what is plugged into the input of the converter that they stand at', () => {
    const { solution, setup } = boxRoom({
      captures: CAPTURES,
      board: {
        'out.tape': 'none',
        'desk.s1.fader': -3,
        'desk.s1.pan': 0,
        'converter.in3': 'desk.main.out.l',
        'converter.in4': 'desk.main.out.r',
        'box.mix.in': 'in3-4',
        'desk.s1.ears': -6,
        'converter.in1': 'desk.ears.out',
        'box.side.in': 'in1',
      },
    });
    expect(levelAt(solution, 'box.mix.in')).toBeCloseTo(1, 9);
    expect(levelAt(solution, 'box.mix.in.l')).toBeCloseTo(1 - 10 * Math.log10(2), 9);
    expect(levelAt(solution, 'box.side.in')).toBeCloseTo(-2, 9);
    const claim = { kind: 'reaches', source: 'viola', output: 'box.mix.in' } as const;
    expect(judge({ ...claim, minDbu: 0.9, maxDbu: 1.1 }, { setup, solution }).holds).toBe(true);
    const once = { kind: 'once', source: 'viola', output: 'box.mix.in.l' } as const;
    expect(judge(once, { setup, solution }).holds).toBe(true);
    const toldAt = (code: string) => findings(setup, solution).some((one) => one.code === code);
    // It is heard: on the capture track, though on no output of the room.
    expect(toldAt('goes-nowhere')).toBe(false);
  });

  test('levelAt() an input that no track stands at is recorded nowhere, a track at no input records nothing', () => {
    const board = { 'out.tape': 'none', 'converter.in3': 'desk.main.out.l' };
    const { solution } = boxRoom({ captures: CAPTURES, board });
    expect(levelAt(solution, 'converter.in3')).toBeCloseTo(4, 9);
    expect(levelAt(solution, 'box.side.in')).toBe(-Infinity);
    expect(stopOf(solution, 'viola', 'box.side.in')).toMatchObject({
      code: 'no-way',
      openings: ['box.side.in'],
    });
  });

  test('levelAt() play back at once where they are assigned', () => {
    const board = {
      'desk.s1.ears': 0,
      'converter.in2': 'desk.ears.out',
      'box.side.in': 'in2',
      'box.side.to': 'out6',
      'desk.s6.main': false,
    };
    const { solution } = boxRoom({ captures: CAPTURES, board });
    expect(levelOf(solution, 'viola', 'desk.s6.in')).toBeCloseTo(4, 9);
  });

  test('controls() choose among single inputs and outputs for a mono one, among pairs for a stereo one', () => {
    const { rig } = boxRoom({ captures: CAPTURES }).setup;
    const optionsOf = (address: string) => {
      const control = controls(rig).get(address);
      return control && 'options' in control ? control.options.map(({ value }) => value) : [];
    };
    expect(optionsOf('box.side.in')).toEqual(['none', 'in1', 'in2', 'in3', 'in4']);
    expect(optionsOf('box.mix.in')).toEqual(['none', 'in1-2', 'in2-3', 'in3-4']);
    expect(optionsOf('box.side.to')).toHaveLength(7);
    expect(optionsOf('box.mix.to')).toHaveLength(6);
  });

  test('jacks() has an input jack for each input of the converter', () => {
    const { rig } = boxRoom({}).setup;
    const ins = jacks(rig).inputs.filter((jack) => jack.startsWith('converter.'));
    expect(ins).toEqual(['converter.in1', 'converter.in2', 'converter.in3', 'converter.in4']);
    expect(controls(rig).get('converter.in2')).toMatchObject({
      kind: 'cord',
      ownerLabel: 'Converter input 2',
      label: 'jack',
    });
  });
});

describe('the loop of a capture track that plays back to the desk that it records', () => {
  const looped = (fader: number, latencyMs = 0): BoxRoom => ({
    captures: CAPTURES,
    latencyMs,
    board: {
      'out.tape': 'none',
      'converter.in1': 'desk.main.out.l',
      'box.side.in': 'in1',
      'box.side.to': 'out5',
      'desk.s5.fader': fader,
    },
  });
  const HALF = 20 * Math.log10(0.5);

  test('levelAt() half of it once round: 1/(1 − ½), 6.02 dB more, stable', () => {
    const { solution } = boxRoom(looped(HALF));
    expect(solution.loops.map(({ stable }) => stable)).toEqual([true]);
    expect(levelAt(solution, 'box.side.in')).toBeCloseTo(4 + 20 * Math.log10(2), 9);
  });

  test('levelAt() all of it once round: no level, not stable, and said so', () => {
    const { solution, setup } = boxRoom(looped(0));
    expect(solution.loops.map(({ stable }) => stable)).toEqual([false]);
    expect(levelAt(solution, 'box.side.in')).toBeUndefined();
    expect(findings(setup, solution).map(({ code }) => code)).toContain('capture-plays-back');
  });

  test('response() with 2 · 1 ms round it depends on frequency: 1/(1 − ½) at 500 Hz, 1/(1 + ½) at 250 Hz', () => {
    const { solution } = boxRoom(looped(HALF, 1));
    const [peak, hole] = response(solution, 'viola', 'box.side.in', [500, 250] as Hz[]) ?? [];
    expect(peak).toBeCloseTo(20 * Math.log10(1 / 0.5), 6);
    expect(hole).toBeCloseTo(20 * Math.log10(1 / 1.5), 6);
    expect(boxRoom(looped(0.1, 1)).solution.loops.map(({ stable }) => stable)).toEqual([false]);
  });
});
