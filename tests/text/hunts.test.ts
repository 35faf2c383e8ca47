import { describe, expect, test } from 'vitest';
import {
  type Complaint,
  dbu,
  HUNT_LEVELS,
  type HuntFault,
  type Symptom,
} from '../../simulator/index.ts';
import {
  complainerWords,
  complaintWords,
  contradictionSentence,
  faultText,
  levelOfHuntText,
  readingSentence,
  readingText,
  scoreSentence,
  worthSentence,
} from '../../src/text/index.ts';
import { netLoft } from './net-loft.ts';

const setup = { rig: netLoft, board: {} };
const { rig } = setup;
const said = (symptom: Symptom, ...tracks: string[]) =>
  complaintWords(rig, {
    output: 'capture',
    oddities: tracks.map((track) => ({ track, symptom })),
    isOfAll: false,
  });

describe('complaintWords()', () => {
  test('says of a track what a client hears, and that the rest is well', () => {
    const rest = ' All the rest is as it should be.';
    expect(said('silent', 'cello')).toBe(`I hear nothing of the cello.${rest}`);
    expect(said('quiet', 'cello', 'alto')).toBe(`The cello and the alto are far too quiet.${rest}`);
    expect(said('intruder', 'alto')).toBe(
      `I hear the alto, which should not be there at all.${rest}`,
    );
    expect(said('left-lost', 'piano')).toBe(
      `The piano is on the right alone: nothing comes from the left.${rest}`,
    );
    expect(said('sides-swapped', 'piano')).toBe(`The piano comes from the wrong side.${rest}`);
    expect(said('leans-right', 'piano')).toBe(`The piano leans over to the right.${rest}`);
  });
  test('says of all what it would say of each', () => {
    const all = (symptom: Symptom): Complaint => ({
      output: 'headphones-a',
      oddities: rig.box.tracks.map(({ id }) => ({ track: id, symptom })),
      isOfAll: true,
    });
    expect(complaintWords(rig, all('silent'))).toBe('I hear nothing at all.');
    expect(complaintWords(rig, all('loud'))).toBe('Everything is far too loud.');
    expect(complainerWords(rig, all('loud'))).toBe('Somebody who listens to Headphones A says:');
  });
});

test.each<[HuntFault, string]>([
  [
    { kind: 'dead', at: 'desk.ch3.in' },
    'nothing comes through into the line input of Strip 3 Cello',
  ],
  [{ kind: 'dead', at: 'desk.ch3.fader' }, 'the fader of Strip 3 Cello is dead'],
  [{ kind: 'dead', at: 'desk.main.fader.l' }, 'the left fader of the main bus is dead'],
  [
    { kind: 'weak', at: 'desk.ch3.in' },
    'a bad contact into the line input of Strip 3 Cello loses 20 dB',
  ],
  [{ kind: 'muted', at: 'desk.ch3.mute' }, 'the mute of Strip 3 Cello is on'],
  [{ kind: 'unassigned', at: 'desk.ch3.main' }, 'Strip 3 Cello is not assigned to the main bus'],
  [{ kind: 'unassigned', at: 'box.cello.to' }, 'the Cello track is assigned nowhere'],
  [
    { kind: 'tap', at: 'desk.ch3.aux1.tap' },
    'the tap of the send of Strip 3 Cello to Aux 1 is on the other side of the fader',
  ],
  [
    { kind: 'crossed', at: 'desk.ch3.in' },
    'the cords into the line input of Strip 3 Cello and the line input of Strip 4 Dulcimer are crossed',
  ],
  [
    { kind: 'open-plug', at: 'desk.ch3.insert.return' },
    'an open plug in the insert return of Strip 3 Cello breaks its normal',
  ],
])('faultText() of %o', (fault, text) => {
  expect(faultText(setup, fault)).toBe(text);
});

test('readingText() names the sides where they differ', () => {
  expect(readingText([dbu(-6)])).toBe('−6.0 dBu');
  expect(readingText([dbu(-6), dbu(-Infinity)])).toBe('left −6.0 dBu, right silent');
  expect(readingText([dbu(-6), dbu(-6)])).toBe('−6.0 dBu on each side');
});

test('readingSentence() says the place, the level, and whether that is as written down', () => {
  const reading = { place: 'desk.ch3.fader', found: [dbu(-Infinity)], meant: [dbu(-3)] };
  expect(readingSentence(rig, reading, 2)).toBe(
    'Reading 2, behind the fader of Strip 3 Cello: silent, not as it should be.',
  );
});

test('worthSentence() names the better place and what it would have left at most', () => {
  expect(worthSentence(rig, 'outside', { place: 'desk.ch3.fader', left: 4 })).toBe(
    'No suspect changes anything there. The fader of Strip 3 Cello would have left at most 4 suspects.',
  );
  expect(worthSentence(rig, 'sound', undefined)).toBe(
    'From there no more readings are needed than from the best place.',
  );
});

test('contradictionSentence() says what speaks against a fault', () => {
  const complaint: Complaint = { output: 'capture', oddities: [], isOfAll: false };
  const reading = { place: 'desk.ch3.fader', found: [dbu(-3)], meant: [dbu(-3)] };
  const would = [dbu(-Infinity)];
  expect(contradictionSentence(setup, { code: 'other-reading', reading, would }, complaint)).toBe(
    'With that, silent would have been read at the fader of Strip 3 Cello, and it was −3.0 dBu.',
  );
});

test('scoreSentence() counts what it took against the best', () => {
  const best = { isFound: true, probes: 4, wrong: 0, owed: 0, best: 4, score: 1 };
  expect(scoreSentence(best)).toBe(
    'Found with 4 readings. The best strategy needs 4 readings here at the most: 100 of 100.',
  );
  expect(scoreSentence({ ...best, probes: 5, wrong: 1, owed: 1, score: 0.5 })).toBe(
    'Found with 5 readings, 1 wrong accusation and 1 reading short of a proof. The best strategy needs 4 readings here at the most: 50 of 100.',
  );
});

test('each level has a name', () => {
  expect(HUNT_LEVELS.map((_, index) => levelOfHuntText(index + 1))).not.toContain(undefined);
  expect(levelOfHuntText(HUNT_LEVELS.length)).not.toContain('undefined');
});
