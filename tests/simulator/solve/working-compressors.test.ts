import { describe, expect, test } from 'vitest';
import type { Board } from '../../../simulator/board/board.ts';
import { peakAt } from '../../../simulator/solve/headroom.ts';
import { simulate } from '../../../simulator/solve/simulate.ts';
import { workingCompressors } from '../../../simulator/solve/working-compressors.ts';
import { smallRoom } from '../small-room.ts';

const hear = (board: Board = {}) => simulate({ rig: smallRoom((text) => text), board });

const IN_LINE = {
  'rack.squash.in': 'desk.a.insert.send',
  'desk.a.insert.return': 'rack.squash.out',
  'rack.squash.threshold': -8,
  'rack.squash.ratio': '4',
  'rack.squash.knee': 0,
};

describe('workingCompressors()', () => {
  test('one in line hears the viola at 4 dBu and turns 12 dB over its threshold to 3: down by 9 dB', () => {
    const [squash, ...others] = workingCompressors(hear(IN_LINE));
    expect(others).toEqual([]);
    expect(squash).toMatchObject({ place: 'rack.squash.compress', curve: { ratio: 4, knee: 0 } });
    expect(squash?.heard).toBeCloseTo(4, 9);
    expect(squash?.gain).toBeCloseTo(-9, 9);
  });

  test('a stereo one is one, and hears both its legs together: 4 dBu and −2 dBu make 4.97 dBu', () => {
    const found = workingCompressors(
      hear({ 'rack.twin.in.l': 'desk.a.insert.send', 'rack.twin.in.r': 'desk.b.insert.send' }),
    );
    expect(found.map(({ place }) => place)).toEqual(['rack.twin.compress']);
    expect(found[0]?.heard).toBeCloseTo(10 * Math.log10(10 ** 0.4 + 10 ** -0.2), 9);
  });

  test('those that nothing comes to are left out', () => {
    expect(workingCompressors(hear())).toEqual([]);
    expect(workingCompressors(hear({ ...IN_LINE, 'box.viola.mute': true }))).toEqual([]);
  });
});

describe('peakAt()', () => {
  test('is RMS level and crest together where no stage is active as well: 4 + 12 = 16 dBu', () => {
    expect(peakAt(hear(), 'desk.a.in')).toBeCloseTo(16, 9);
    expect(peakAt(hear(), 'desk.c.in')).toBe(-Infinity);
  });

  test('of a stereo place is that of the louder leg', () => {
    const solution = hear({ 'desk.a.pan': 0.4, 'desk.b.mute': true });
    expect(peakAt(solution, 'desk.main.out')).toBe(peakAt(solution, 'desk.main.out.r'));
  });
});
