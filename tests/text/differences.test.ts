import { expect, test } from 'vitest';
import { differenceLines, levelDifferences } from '../../src/text/index.ts';
import { hear } from './net-loft.ts';

test('differenceLines() names what was moved, from where to where', () => {
  expect(differenceLines(hear({}), hear({ 'desk.ch3.fader': -6 }))).toEqual([
    'The fader of Strip 3 Cello: 0.0 dB → −6.0 dB',
  ]);
});

test('levelDifferences() a fader 6 dB lower: the source falls by that, what does not pass it stays', () => {
  const before = hear({ 'desk.ch3.aux1': 0, 'desk.ch3.aux1.tap': 'pre' });
  const after = hear({
    'desk.ch3.aux1': 0,
    'desk.ch3.aux1.tap': 'pre',
    'desk.ch3.fader': -6,
    'desk.ch3.aux2': -3,
  });
  const [capture, a, b] = levelDifferences(before, after, 'cello');
  expect(capture).toEqual({
    output: 'Capture',
    levels: '+3.0 dBu → −3.0 dBu',
    change: '−6.0 dB',
  });
  expect(a?.change).toBe('');
  expect(b).toEqual({ output: 'Headphones B', levels: 'silent → 0.0 dBu', change: 'comes' });
});
