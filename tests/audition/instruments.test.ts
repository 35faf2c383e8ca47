import { describe, expect, test } from 'vitest';
import { signalsOf } from '../../simulator/index.ts';
import type { Loop } from '../../src/audition/instruments/loop.ts';
import { frequencyOf, LOOP_LENGTH } from '../../src/audition/instruments/piece.ts';
import { plainVoice } from '../../src/audition/instruments/plain-voices.ts';
import { cello, drum } from '../../src/audition/instruments/players.ts';
import { recordingOf } from '../../src/audition/instruments/recordings.ts';
import { netLoft } from '../text/net-loft.ts';

const signals = netLoft.box.tracks.flatMap(signalsOf);

const powerOf = (loop: Loop) => loop.reduce((sum, sample) => sum + sample ** 2, 0) / loop.length;

/** Mean of the product of two loops, each at an RMS of 1: 1 where they are the same. */
const likeness = (one: Loop, other: Loop) =>
  one.reduce((sum, sample, frame) => sum + sample * (other[frame] ?? 0), 0) / one.length;

describe.each(signals)('the recording of %s', (signal) => {
  const loop = recordingOf(netLoft, signal);

  test('goes once round in 12 s at an RMS of 1, to 0.001 dB, with no direct current', () => {
    expect(loop.length).toBe(LOOP_LENGTH);
    expect(10 * Math.log10(powerOf(loop))).toBeCloseTo(0, 3);
    expect(loop.reduce((sum, sample) => sum + sample, 0) / loop.length).toBeCloseTo(0, 5);
  });

  test('has no click where it begins again: no step there is larger than inside', () => {
    const steps = loop.slice(1).map((sample, frame) => Math.abs(sample - (loop[frame] ?? 0)));
    const largest = steps.reduce((most, step) => Math.max(most, step), 0);
    expect(Math.abs((loop[0] ?? 0) - (loop.at(-1) ?? 0))).toBeLessThanOrEqual(largest);
  });
});

test('players make the same samples every time', () => {
  expect(cello()).toEqual(cello());
  expect(drum()).toEqual(drum());
  expect(plainVoice(3)).toEqual(plainVoice(3));
});

test('recordings of two signals have little in common, so that their powers add: 45 pairs to 0.7 dB', () => {
  const loops = signals.map((signal) => recordingOf(netLoft, signal));
  let pairs = 0;
  for (const [first, one] of loops.entries()) {
    for (const [second, other] of loops.slice(first + 1).entries()) {
      pairs += 1;
      const change = 10 * Math.log10(1 + likeness(one, other));
      const where = `${signals[first]} and ${signals[first + 1 + second]}`;
      expect.soft(Math.abs(change), where).toBeLessThan(0.7);
    }
  }
  expect(pairs).toBe(45);
});

test('a signal that no player stands for gets a plain voice of its own, at an RMS of 1', () => {
  const voices = Array.from({ length: 12 }, (_, number) => plainVoice(number));
  for (const [number, voice] of voices.entries()) {
    expect(10 * Math.log10(powerOf(voice))).toBeCloseTo(0, 3);
    for (const other of voices.slice(number + 1)) {
      expect.soft(Math.abs(likeness(voice, other)), `voice ${number}`).toBeLessThan(0.2);
    }
  }
});

test('recordingOf() refuses what is no signal of the rig', () => {
  expect(() => recordingOf(netLoft, 'constructor')).toThrow(RangeError);
});

// Source: ISO 16, A4 = 440 Hz; the others by twelve equal semitones, from memory of any table of them.
test('frequencyOf() A4, A2 and C4: 440, 110 and 261.626 Hz', () => {
  expect(frequencyOf('A4')).toBe(440);
  expect(frequencyOf('A2')).toBeCloseTo(110, 9);
  expect(frequencyOf('C4')).toBeCloseTo(261.626, 3);
});
