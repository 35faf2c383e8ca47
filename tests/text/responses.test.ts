import { expect, test } from 'vitest';
import { responseSentence } from '../../src/text/index.ts';
import { netLoft } from './net-loft.ts';

test('responseSentence() names the frequencies that gain and lose most', () => {
  const ends = {
    most: { frequency: 2000, gain: 6.02 },
    least: { frequency: 500, gain: -Infinity },
  };
  expect(responseSentence(netLoft, 'cello', 'out.capture', ends)).toBe(
    'Response of Cello, from the recording to Capture: most +6.0 dB at 2 kHz, least −∞ dB at 500 Hz.',
  );
});
