import { describe, expect, test } from 'vitest';
import {
  boardOf,
  type FileBoard,
  type Hz,
  levelOf,
  outputPlace,
  response,
  simulate,
} from '../../simulator/index.ts';
import { course } from './the-course.ts';

// What lessons say of a desk in words, where no component puts in what the desk does.

/** The level of a source at an output or a place of a rig, in dBu. */
function levelIn(rigId: string, source: string, at: string, values: FileBoard): number | undefined {
  const rig = course.rigs.get(rigId);
  if (!rig) throw new Error(`Expected a rig ${rigId}.`);
  const place = rig.outputs.some(({ id }) => id === at) ? outputPlace(at) : at;
  return levelOf(simulate({ rig, board: boardOf('it', rig, values) }), source, place);
}

describe('a-send-has-no-return', () => {
  const plateAt = (send: number) =>
    levelIn('net-loft', 'alto', 'rack.plate.in', { 'desk.ch2.aux3': -6, 'desk.ret1.aux3': send });

  test('R1 sent to its own plate at −6 dies away, at −3 howls: both sides of the plate add up', () => {
    expect(plateAt(-6)).toBeLessThan(0);
    expect(plateAt(-3)).toBeUndefined();
  });
});

describe('pan-pairs-and-mono', () => {
  const inMono = (values: FileBoard) =>
    levelIn('two-sides', 'alto', 'monitors', { ...values, 'desk.control.mono': true }) ??
    Number.NaN;

  test('in mono, what stands at one side is 3 dB below what stands in the middle', () => {
    expect(inMono({}) - inMono({ 'desk.ch1.pan': 1 })).toBeCloseTo(3.01, 2);
  });

  test('in the middle each side is 3 dB below the one side at the end', () => {
    const left = (pan: number) =>
      levelIn('two-sides', 'alto', 'desk.main.out.l', { 'desk.ch1.pan': pan }) ?? Number.NaN;
    expect(left(-1) - left(0)).toBeCloseTo(3.01, 2);
  });
});

test('subgroup-and-main: at 500 Hz nothing is left of two ways 1 ms apart', () => {
  const rig = course.rigs.get('parallel-chains');
  if (!rig) throw new Error('Expected the rig parallel-chains.');
  const board = boardOf('it', rig, {
    'desk.ch3.sub1': true,
    'rack.late.in.l': 'desk.sub1.insert.send.l',
    'rack.late.in.r': 'desk.sub1.insert.send.r',
    'desk.sub1.insert.return.l': 'rack.late.out.l',
    'desk.sub1.insert.return.r': 'rack.late.out.r',
  });
  const at = outputPlace('capture');
  const [gain] = response(simulate({ rig, board }), 'drum', at, [500 as Hz]) ?? [];
  expect(gain).toBeLessThan(-100);
});
