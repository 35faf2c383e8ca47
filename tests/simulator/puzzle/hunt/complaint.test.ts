import { describe, expect, test } from 'vitest';
import { boardOf } from '../../../../simulator/board/file-board.ts';
import { complaintAt } from '../../../../simulator/puzzle/hunt/complaint.ts';
import { type HuntFault, solutionWith } from '../../../../simulator/puzzle/hunt/fault.ts';
import { simulate } from '../../../../simulator/solve/simulate.ts';
import { netLoft } from './net-loft-room.ts';

const rig = netLoft();
const setup = {
  rig,
  board: boardOf('board', rig, { 'desk.ch3.aux1': -10, 'desk.ch1.aux1': -10 }),
};
const meant = simulate(setup);

const complaint = (kind: HuntFault['kind'], at: string, output = 'capture') =>
  complaintAt(rig, output, meant, solutionWith(setup, meant, { kind, at }));
const oddities = (...args: Parameters<typeof complaint>) =>
  complaint(...args)?.oddities.map(({ track, symptom }) => `${track} ${symptom}`);

describe('complaintAt()', () => {
  test('silent, too quiet, too loud, and what should not be there', () => {
    expect(oddities('muted', 'desk.ch3.mute')).toEqual(['cello silent']);
    expect(oddities('weak', 'desk.ch3.in')).toEqual(['cello quiet']);
    expect(oddities('stray', 'desk.ch3.sub1')).toEqual(['cello loud']);
    expect(oddities('crossed', 'desk.ch3.in', 'headphones-a')).toEqual([
      'cello silent',
      'dulcimer intruder',
    ]);
  });
  test('sides that are lost or swapped, of a stereo track', () => {
    expect(oddities('dead', 'desk.ch6.fader')).toEqual(['piano left-lost']);
    expect(oddities('dead', 'desk.ch7.fader')).toEqual(['piano right-lost']);
    expect(oddities('crossed', 'desk.ch6.in')).toEqual(['piano sides-swapped']);
  });
  test('everything, where all that was to be heard has the same', () => {
    const all = complaint('dead', 'out.capture.l');
    expect(all?.isOfAll).toBe(true);
    expect(all?.oddities).toHaveLength(rig.box.tracks.length);
    expect(complaint('dead', 'out.headphones-a', 'headphones-a')?.isOfAll).toBe(true);
    expect(complaint('muted', 'desk.ch3.mute')?.isOfAll).toBe(false);
  });
  test('nobody complains of what they do not hear', () => {
    expect(complaint('muted', 'desk.ch3.mute', 'headphones-b')).toBeUndefined();
    expect(complaint('polarity', 'desk.ch3.polarity')).toBeUndefined();
    // The send of the cello is taken behind a fader at unity: the other side of it is as loud.
    expect(complaint('tap', 'desk.ch3.aux1.tap', 'headphones-a')).toBeUndefined();
  });
});
