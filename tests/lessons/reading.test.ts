import { describe, expect, test } from 'vitest';
import { type Reading, readingText } from '../../src/components/lesson/reading.ts';
import { course } from './the-course.ts';

const fourStrips = course.rigs.get('four-strips');
if (!fourStrips) throw new Error('Expected the rig four-strips.');

const COMPRESSED = {
  'rack.comp.in': 'desk.ch1.insert.send',
  'desk.ch1.insert.return': 'rack.comp.out',
  'rack.comp.threshold': -4,
};
/** The cello once more, 1 ms late. */
const LATE = {
  'desk.ch1.aux1': 0,
  'rack.late.in': 'desk.aux1.out',
  'desk.ch3.in': 'rack.late.out',
};

describe('readingText()', () => {
  test.each<[string, Reading, string]>([
    [
      'level: -20 + 22 - 7',
      { of: 'level', at: 'capture', source: 'cello', board: { 'desk.ch1.fader': -7 } },
      '−5.00 dBu',
    ],
    [
      'level of silence',
      { of: 'level', at: 'capture', source: 'cello', board: { 'desk.ch1.mute': true } },
      'silent',
    ],
    [
      'rise from -7 to +2.5',
      {
        of: 'rise',
        at: 'capture',
        source: 'cello',
        board: { 'desk.ch1.fader': 2.5 },
        from: { 'desk.ch1.fader': -7 },
      },
      '+9.50 dB',
    ],
    [
      'headroom: 24 - (2 + 12 + 3)',
      { of: 'headroom', at: 'desk.ch1.trim', board: { 'desk.ch1.trim': 3 } },
      '7.0 dB',
    ],
    [
      'compression: 6 dB over at 4 : 1',
      { of: 'compression', at: 'rack.comp.compress', board: COMPRESSED },
      '−4.50 dB',
    ],
    [
      'response at the peak of a comb',
      { of: 'response', at: 'capture', source: 'cello', hz: 3000, board: LATE },
      '+6.02 dB',
    ],
    ['late', { of: 'late', at: 'capture', source: 'cello', board: LATE }, '1 ms'],
  ])('%s', (_what, reading, text) => {
    expect(readingText(fourStrips, reading)).toBe(text);
  });

  test('noise: two strips on a bus of -100 dBu, 20·log 3', () => {
    const rig = course.rigs.get('summing-amplifier');
    if (!rig) throw new Error('Expected the rig summing-amplifier.');
    const reading = {
      of: 'noise',
      at: 'desk.main.sum.l',
      board: { 'desk.ch3.main': false },
    } as const;
    expect(readingText(rig, reading)).toBe('−90.46 dBu');
  });

  test.each<[string, Reading]>([
    ['no compressor', { of: 'compression', at: 'desk.ch1.trim' }],
    ['no active stage', { of: 'headroom', at: 'desk.ch1.mute' }],
    ['no way', { of: 'late', at: 'rack.plate.out', source: 'cello' }],
  ])('%s there is nothing to read', (_what, reading) => {
    expect(() => readingText(fourStrips, reading)).toThrow(
      `Expected a ${reading.of} at ${reading.at}`,
    );
  });
});
