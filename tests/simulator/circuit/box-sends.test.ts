import { describe, expect, test } from 'vitest';
import { judge } from '../../../simulator/grade/judge.ts';
import { controls } from '../../../simulator/rig/controls.ts';
import { levelAt, levelOf } from '../../../simulator/solve/levels.ts';
import { paths } from '../../../simulator/trace/paths.ts';
import { boxRoom } from './box-room.ts';

const BUSES = [
  { id: 'near', label: 'Near', tap: 'pre' },
  { id: 'far', label: 'Far', tap: 'post' },
  { id: 'free', label: 'Free', tap: 'switchable' },
  { id: 'plain', label: 'Plain' },
];
const sent = (board: Record<string, unknown>) => boxRoom({ buses: BUSES, board }).solution;

describe('sends in the box are taken before or after the fader', () => {
  const FADED = {
    'box.viola.fader': -11,
    'box.viola.near': -3,
    'box.viola.far': -5,
    'box.viola.free': -6,
  };

  test('levelAt() before it 4 − 3 = 1 dBu, after it 4 − 11 − 5 = −12 dBu', () => {
    const solution = sent(FADED);
    expect(levelAt(solution, 'box.near.sum')).toBeCloseTo(1, 9);
    expect(levelAt(solution, 'box.far.sum')).toBeCloseTo(-12, 9);
  });

  test('levelAt() by a switch: before it 4 − 6 = −2 dBu, after it, as is the default, −13 dBu', () => {
    const before = sent({ ...FADED, 'box.viola.free.tap': 'pre' });
    expect(levelAt(before, 'box.free.sum')).toBeCloseTo(-2, 9);
    expect(levelAt(sent(FADED), 'box.free.sum')).toBeCloseTo(-13, 9);
  });

  test('levelAt() a mute takes what is after it, and leaves what is before the fader', () => {
    const solution = sent({ ...FADED, 'box.viola.mute': true });
    expect(levelAt(solution, 'box.near.sum')).toBeCloseTo(1, 9);
    expect(levelAt(solution, 'box.far.sum')).toBe(-Infinity);
  });

  test('levelAt() a pan moves no send; the pan law of the box puts what is mono into the middle', () => {
    const solution = sent({ ...FADED, 'box.viola.pan': -1 });
    expect(levelAt(solution, 'box.near.sum.l')).toBeCloseTo(1 - 10 * Math.log10(2), 9);
    expect(levelAt(solution, 'box.near.sum.r')).toBeCloseTo(1 - 10 * Math.log10(2), 9);
    const linear = boxRoom({ buses: BUSES, panLaw: 'linear', board: FADED }).solution;
    expect(levelAt(linear, 'box.near.sum.l')).toBeCloseTo(1 - 20 * Math.log10(2), 9);
  });

  test('judge() a send before the fader holds still under it, one after it follows', () => {
    const room = boxRoom({ buses: BUSES, board: FADED });
    const holds = (kind: 'steady' | 'follows', bus: string) =>
      judge(
        {
          kind,
          source: 'viola',
          output: `box.${bus}.sum`,
          probe: { control: 'box.viola.fader', byDb: -8 },
          toleranceDb: 0.1,
        },
        room,
      ).holds;
    expect(holds('steady', 'near')).toBe(true);
    expect(holds('follows', 'near')).toBe(false);
    expect(holds('follows', 'far')).toBe(true);
  });

  test('levelAt() a stereo track is sent side by side', () => {
    const { solution } = boxRoom({
      tracks: [{ id: 'organ', label: 'Organ', levelDbfs: -26, stereo: true }],
      buses: BUSES,
      board: { 'box.organ.near': -4 },
    });
    expect(levelOf(solution, 'organ.l', 'box.near.sum.l')).toBeCloseTo(-9, 9);
    expect(levelOf(solution, 'organ.l', 'box.near.sum.r')).toBe(-Infinity);
  });

  test('levelAt() a bus is sent to a later one: 4 − 3 − 2 = −1 dBu', () => {
    const solution = sent({ 'box.viola.near': -3, 'box.near.far': -2 });
    expect(levelAt(solution, 'box.far.sum')).toBeCloseTo(-1, 9);
  });
});

test('controls() has a send to each later bus that takes sends, closed, with a tap where it can be switched', () => {
  const { rig } = boxRoom({ buses: BUSES }).setup;
  const sends = [...controls(rig).values()].filter(({ address }) =>
    /^box\.[^.]+\.(near|far|free|plain)/.test(address),
  );
  expect(sends.map(({ address, label, default: initial }) => [address, label, initial])).toEqual([
    ['box.viola.near', 'send to Near', -Infinity],
    ['box.viola.far', 'send to Far', -Infinity],
    ['box.viola.free', 'send to Free', -Infinity],
    ['box.viola.free.tap', 'tap of the send to Free', 'post'],
    ['box.near.far', 'send to Far', -Infinity],
    ['box.near.free', 'send to Free', -Infinity],
    ['box.near.free.tap', 'tap of the send to Free', 'post'],
    ['box.far.free', 'send to Free', -Infinity],
    ['box.far.free.tap', 'tap of the send to Free', 'post'],
  ]);
});

describe('an effect in the box on its own pair', () => {
  const hall = { id: 'hall', label: 'Hall', kind: 'reverb' };
  const { solution } = boxRoom({
    buses: [{ id: 'room', label: 'Room', tap: 'post', plugins: [hall] }],
    board: { 'box.viola.room': -10, 'box.viola.fader': -1, 'box.room.to': 'out5-6' },
  });

  test('levelOf() dry on output 1 at 3 dBu, reverberation on 5 and 6 at 3 − 10 − 3.01 dBu', () => {
    expect(levelOf(solution, 'viola', 'converter.out1')).toBeCloseTo(3, 9);
    for (const line of ['converter.out5', 'converter.out6']) {
      expect(levelOf(solution, 'viola', line)).toBeCloseTo(-7 - 10 * Math.log10(2), 9);
    }
  });

  test('paths() one dry way to output 1, one way as reverberation to output 5', () => {
    const natures = (line: string) =>
      paths(solution, 'viola', line).map(({ decorrelated }) => decorrelated);
    expect(natures('converter.out1')).toEqual([false]);
    expect(natures('converter.out5')).toEqual([true]);
  });

  test('levelAt() they meet on the desk in power', () => {
    const wet = 2 * 10 ** (-(7 + 10 * Math.log10(2)) / 10);
    expect(levelAt(solution, 'out.tape')).toBeCloseTo(10 * Math.log10(10 ** 0.3 + wet), 9);
  });
});

describe('the main mix of the box', () => {
  const FED = { 'box.viola.main': true, 'box.main.to': 'out1-2' };

  test('levelAt() shares output 1 with the track: 1 + √½ times it, 4.6453 dB more', () => {
    const { solution } = boxRoom({ board: FED });
    expect(levelAt(solution, 'converter.out1')).toBeCloseTo(
      4 + 20 * Math.log10(1 + Math.SQRT1_2),
      9,
    );
    expect(levelAt(solution, 'converter.out2')).toBeCloseTo(4 - 10 * Math.log10(2), 9);
    expect(paths(solution, 'viola', 'converter.out1')).toHaveLength(2);
  });

  test('levelAt() on outputs of its own leaves the track alone', () => {
    const { solution } = boxRoom({ board: { ...FED, 'box.main.to': 'out3-4' } });
    expect(levelAt(solution, 'converter.out1')).toBeCloseTo(4, 9);
    expect(levelAt(solution, 'converter.out3')).toBeCloseTo(4 - 10 * Math.log10(2), 9);
  });

  test('levelAt() takes a bus and the track that feeds it, both', () => {
    const { solution } = boxRoom({
      buses: [{ id: 'blend', label: 'Blend' }],
      board: { ...FED, 'box.viola.to': 'blend', 'box.blend.main': true },
    });
    expect(levelAt(solution, 'box.main.sum')).toBeCloseTo(4 + 20 * Math.log10(2), 9);
  });
});
