import { describe, expect, test } from 'vitest';
import { controls } from '../../../simulator/rig/controls.ts';
import { DEVICE_KINDS } from '../../../simulator/rig/schema-fields.ts';
import { levelAt, levelOf } from '../../../simulator/solve/levels.ts';
import { passes, placesOf } from '../../../simulator/trace/path.ts';
import { paths } from '../../../simulator/trace/paths.ts';
import { type BoxRoom, boxRoom } from './box-room.ts';

const BOOST = { id: 'boost', label: 'Boost', kind: 'gain' };
const COMP = { id: 'comp', label: 'Compressor', kind: 'compressor' };
const viola = (...plugins: object[]) => [{ id: 'viola', label: 'Viola', levelDbfs: -17, plugins }];
const BOARD = {
  'box.viola.boost.gain': 8,
  'box.viola.comp.threshold': -2,
  'box.viola.comp.ratio': '4',
};
const heard = (room: BoxRoom, place: string) => levelAt(boxRoom(room).solution, place);

describe('plug-ins stand in order', () => {
  test('levelAt() +8 dB before the compressor: −2 + (4 + 8 + 2)/4 = 1.5 dBu', () => {
    const room = { tracks: viola(BOOST, COMP), board: BOARD };
    expect(heard(room, 'converter.out1')).toBeCloseTo(1.5, 9);
  });

  test('levelAt() +8 dB behind it: −2 + (4 + 2)/4 + 8 = 7.5 dBu', () => {
    const room = { tracks: viola(COMP, BOOST), board: BOARD };
    expect(heard(room, 'converter.out1')).toBeCloseTo(7.5, 9);
  });

  test('levelAt() they come before the fader: −9 dB there take 9 dB, and change no compression', () => {
    const room = { tracks: viola(BOOST, COMP), board: { ...BOARD, 'box.viola.fader': -9 } };
    expect(heard(room, 'converter.out1')).toBeCloseTo(1.5 - 9, 9);
  });

  test('paths() pass the places of each plug-in, then the fader', () => {
    const { solution } = boxRoom({ tracks: viola(BOOST, COMP), board: BOARD });
    const [way] = paths(solution, 'viola', 'converter.out1');
    expect(way && placesOf(way)).toEqual([
      'box.viola.source',
      'box.viola.boost.in',
      'box.viola.boost.gain',
      'box.viola.comp.in',
      'box.viola.comp.compress',
      'box.viola.comp.makeup',
      'box.viola.fader',
      'box.viola.mute',
      'converter.out1',
    ]);
  });
});

describe('a switch takes a plug-in out of the way', () => {
  test('levelAt() without the compressor 4 + 8 = 12 dBu, without the gain −2 + (4 + 2)/4 = −0.5 dBu', () => {
    const off = (name: string): BoxRoom => ({
      tracks: viola(BOOST, COMP),
      board: { ...BOARD, [`box.viola.${name}.on`]: false },
    });
    expect(heard(off('comp'), 'converter.out1')).toBeCloseTo(12, 9);
    expect(heard(off('boost'), 'converter.out1')).toBeCloseTo(-0.5, 9);
  });

  test('paths() do not pass it then, and nothing stands in it', () => {
    const board = { ...BOARD, 'box.viola.comp.on': false };
    const { solution } = boxRoom({ tracks: viola(BOOST, COMP), board });
    const [way] = paths(solution, 'viola', 'converter.out1');
    expect(way && passes(way, 'box.viola.comp')).toBe(false);
    expect(way && passes(way, 'box.viola.boost')).toBe(true);
    expect(levelAt(solution, 'box.viola.comp.makeup')).toBe(-Infinity);
  });
});

describe('plug-ins are as wide as their channel', () => {
  const organ = (...plugins: object[]) => [
    { id: 'organ', label: 'Organ', levelDbfs: -26, stereo: true, plugins },
  ];

  test('levelAt() both sides of a stereo track push one compressor: −5 dBu each, −1.9897 together', () => {
    const { solution } = boxRoom({
      tracks: organ(COMP),
      board: {
        'box.organ.to': 'out1-2',
        'box.organ.comp.threshold': -6,
        'box.organ.comp.ratio': '4',
      },
    });
    const together = -5 + 10 * Math.log10(2);
    const loss = (together + 6) * 0.75;
    expect(levelAt(solution, 'converter.out1')).toBeCloseTo(-5 - loss, 9);
    expect(levelAt(solution, 'converter.out2')).toBeCloseTo(-5 - loss, 9);
  });

  test('levelAt() on a bus: what tracks bring to it is added up first', () => {
    const { solution } = boxRoom({
      buses: [{ id: 'blend', label: 'Blend', plugins: [BOOST] }],
      board: { 'box.viola.to': 'blend', 'box.blend.to': 'out3-4', 'box.blend.boost.gain': -7 },
    });
    expect(levelAt(solution, 'converter.out3')).toBeCloseTo(4 - 10 * Math.log10(2) - 7, 9);
  });

  test('levelOf() a reverb on a mono track stays mono, and makes a new signal of the same power', () => {
    const { solution } = boxRoom({ tracks: viola({ id: 'hall', label: 'Hall', kind: 'reverb' }) });
    expect(levelOf(solution, 'viola', 'converter.out1')).toBeCloseTo(4, 9);
    expect(paths(solution, 'viola', 'converter.out1')[0]?.decorrelated).toBe(true);
  });
});

describe('controls() of plug-ins', () => {
  const { rig } = boxRoom({ tracks: viola(BOOST, COMP) }).setup;
  const own = [...controls(rig).values()].filter(({ owner }) => owner === 'box.viola');

  test('stand in signal order before those of the channel, which is their owner', () => {
    expect(own.map(({ address }) => address.replace('box.viola.', ''))).toEqual([
      'boost.on',
      'boost.gain',
      'comp.on',
      'comp.threshold',
      'comp.ratio',
      'comp.knee',
      'comp.makeup',
      'fader',
      'mute',
      'pan',
      'to',
      'main',
    ]);
  });

  test('say the plug-in in their labels, and are on by default', () => {
    expect(own.slice(2, 4).map(({ ownerLabel, label }) => [ownerLabel, label])).toEqual([
      ['Viola track', 'Compressor on'],
      ['Viola track', 'Compressor threshold'],
    ]);
    expect(controls(rig).get('box.viola.comp.on')?.default).toBe(true);
  });

  test.each(DEVICE_KINDS)('a plug-in can be a %s', (kind) => {
    const { solution } = boxRoom({ tracks: viola({ id: 'one', label: 'One', kind }) });
    expect(levelAt(solution, 'converter.out1')).not.toBe(-Infinity);
  });
});
