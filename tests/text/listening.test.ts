import { expect, test } from 'vitest';
import { db, dbu } from '../../simulator/index.ts';
import { guardSentence, hearingSentence } from '../../src/text/index.ts';
import { netLoft } from './net-loft.ts';

const heard = (level: number | undefined, place = 'out.capture') =>
  hearingSentence(netLoft, { place, level: level === undefined ? undefined : dbu(level) });

test('hearingSentence() says what is heard, that nothing is, and why it is muted', () => {
  expect(heard(7.4)).toBe('You hear Capture.');
  expect(heard(3, 'desk.control.out')).toBe('You hear the control room.');
  expect(heard(-Infinity)).toBe('You hear nothing: no signal reaches Capture.');
  expect(heard(undefined)).toBe(
    'Capture is muted: a loop that grows without end reaches it, and is not played.',
  );
});

test('guardSentence() says by how much it is turned down, and nothing at 0 dB', () => {
  expect(guardSentence(db(-6.04))).toBe(
    'This is louder than the page plays anything. It is turned down by 6.0 dB.',
  );
  expect(guardSentence(db(0))).toBe('');
});
