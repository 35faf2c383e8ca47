import { expect, test } from 'vitest';
import {
  clippingStages,
  firstToClip,
  type NoiseShare,
  noiseAt,
  noiseShares,
  type Rig,
} from '../../simulator/index.ts';
import {
  clippingSentence,
  compressionSentence,
  firstToClipSentence,
  headroomFigure,
  noiseSentence,
  placeName,
} from '../../src/text/index.ts';
import { hear, netLoft } from './net-loft.ts';

test('noiseSentence() names the stages that make most of it, with their shares', () => {
  const { solution } = hear({ 'desk.ch3.aux1': -6 });
  const place = 'out.headphones-a';
  expect(
    noiseSentence(netLoft, place, noiseAt(solution, place), noiseShares(solution, place)),
  ).toMatch(/^The noise in Headphones A is −9\d\.\d dBu, \d+ % of it from the sum of Aux 1.*\.$/);
});

test('noiseSentence() of many alike, of silence and of an unstable loop', () => {
  const share = (place: string): NoiseShare => ({ place, level: -100, share: 0.04 }) as NoiseShare;
  const many = ['desk.ch1.trim', 'desk.ch2.trim', 'desk.ch3.trim'].map(share);
  expect(noiseSentence(netLoft, 'desk.aux1.out', -86.04 as NoiseShare['level'], many)).toBe(
    'The noise at the output of Aux 1 is −86.0 dBu, of 3 stages, none of which stands out.',
  );
  const { solution } = hear();
  expect(noiseSentence(netLoft, 'box.cello.pan', noiseAt(solution, 'box.cello.pan'), [])).toBe(
    'No noise arrives at the pan of the Cello track.',
  );
  expect(noiseSentence(netLoft, 'out.capture', undefined)).toBe(
    'There is no level of the noise in Capture: an unstable loop reaches it.',
  );
});

test('firstToClipSentence() says what is left, or by how much it is too loud: 23 − 22 = 1 dB', () => {
  // Bass alone: 4 dBu and 12 dB of crest on output 8 against 22, on the desk against 24.
  const others = ['tenor', 'alto', 'cello', 'dulcimer', 'drum', 'piano', 'room'];
  const alone = Object.fromEntries(others.map((id) => [`box.${id}.mute`, true]));
  expect(firstToClipSentence(netLoft, firstToClip(hear(alone).solution))).toBe(
    'First to clip is Output 8: 6.0 dB are left up to +22.0 dBu.',
  );
  const loud = hear({ ...alone, 'box.bass.fader': 7 }).solution;
  expect(firstToClipSentence(netLoft, firstToClip(loud))).toBe(
    'Output 8 clips: its peaks come to +23.0 dBu, 1.0 dB above what it passes.',
  );
  const silent = hear({ ...alone, 'box.bass.mute': true }).solution;
  expect(firstToClipSentence(netLoft, firstToClip(silent))).toBe(
    'Nothing can clip: no level arrives at any stage.',
  );
});

test('clippingSentence() lists what clips, where it is more than the one', () => {
  const { solution } = hear({ 'box.bass.fader': 10, 'box.cello.fader': 8 });
  const clipping = clippingStages(solution).filter(({ place }) => place.startsWith('converter.'));
  expect(clippingSentence(netLoft, clipping)).toBe('2 stages clip: Output 3 and Output 8.');
  expect(clippingSentence(netLoft, clipping.slice(1))).toBeUndefined();
});

test('placeName() of the places that only a −10 dBV device has', () => {
  const [comp, ...others] = netLoft.rack;
  if (!comp) throw new Error('Expected a device.');
  const rig: Rig = { ...netLoft, rack: [{ ...comp, level: 'minus10' }, ...others] };
  expect(placeName(rig, 'rack.comp.pad')).toBe('the pad of the compressor to −10 dBV');
  expect(placeName(rig, 'rack.comp.end')).toBe('the output at −10 dBV of the compressor');
});

test('headroomFigure() has a sign only where something clips, and no end where nothing comes', () => {
  expect([8, 0, -2.54, Infinity].map(headroomFigure)).toEqual(['8.0', '0.0', '−2.5', '∞']);
});

test('compressionSentence() says by how much a compressor turns down, or that it does nothing', () => {
  const place = 'rack.comp.compress';
  expect(compressionSentence(netLoft, place, -4.46)).toMatch(/^.*compressor is 4\.5 dB\.$/);
  expect(compressionSentence(netLoft, place, 0)).toMatch(/compressor is none now\.$/);
});
