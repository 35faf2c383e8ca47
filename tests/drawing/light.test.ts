import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { dbu, outputPlace, paths, placesOf } from '../../simulator/index.ts';
import {
  BRIGHTEST_DBU,
  brightnessOf,
  DIMMEST_DBU,
  type Followed,
  lightOf,
} from '../../src/drawing/light.ts';
import { hear } from '../text/net-loft.ts';
import { RUNS } from './arbitrary-desk.ts';

const levels = fc.double({ min: -120, max: 40, noNaN: true });
const brightness = (level: number) => Number(brightnessOf(dbu(level)));

test('brightnessOf() silence is 0, and of no level is unknown', () => {
  expect(brightnessOf(dbu(-Infinity))).toBe(0);
  expect(brightnessOf(undefined)).toBe('unknown');
});

test('brightnessOf() never falls as the level rises, and lies between 0 and 1', () => {
  fc.assert(
    fc.property(levels, levels, (one, other) => {
      const [low, high] = [Math.min(one, other), Math.max(one, other)];
      expect(brightness(low)).toBeLessThanOrEqual(brightness(high));
      expect(brightness(low)).toBeGreaterThan(0);
      expect(brightness(high)).toBeLessThanOrEqual(1);
    }),
    RUNS,
  );
});

test('brightnessOf() tells levels of a working desk apart: each 6 dB from −30 to +6 dBu', () => {
  const steps = [-30, -24, -18, -12, -6, 0, 6].map(brightness);
  const rises = steps.slice(1).map((value, index) => value - (steps[index] ?? value));
  expect(Math.min(...rises)).toBeGreaterThan(0.02);
});

test('brightnessOf() stands still below the dimmest and above the brightest level', () => {
  expect(brightness(DIMMEST_DBU - 37)).toBe(brightness(DIMMEST_DBU));
  expect(brightness(BRIGHTEST_DBU)).toBe(1);
  expect(brightness(BRIGHTEST_DBU + 9)).toBe(1);
});

const CAPTURE = outputPlace('capture');
const cello: Followed = { kind: 'source', source: 'cello' };
const toCapture: Followed = { kind: 'output', output: CAPTURE };

test('lightOf() a source: its own strip is lit, that of another is not', () => {
  const light = lightOf(hear({}).solution, cello);
  expect(light('desk.ch3.fader').brightness).toBeGreaterThan(0);
  expect(light('desk.ch2.fader').brightness).toBe(0);
  expect(light('desk.ch2.fader').isSilent).toBe(false);
});

test('lightOf() a source on a subgroup and on the main bus: doubled from where both come together', () => {
  const light = lightOf(hear({ 'desk.ch3.sub1': true }).solution, cello);
  expect(light('desk.ch3.fader').copies).toBe(1);
  expect(light('desk.sub1.out').copies).toBe(1);
  expect(light(CAPTURE).copies).toBe(2);
});

test('lightOf() the dry sound beside its reverb is not doubled: what the plate gives is another sound', () => {
  expect(lightOf(hear({ 'desk.ch3.aux3': -6 }).solution, cello)(CAPTURE).copies).toBe(1);
});

test('lightOf() an output: what feeds it is lit, brighter where more of it comes from', () => {
  const light = lightOf(hear({ 'desk.ch2.fader': -20, 'desk.ch4.mute': true }).solution, toCapture);
  const [loud, soft] = ['desk.ch3.trim', 'desk.ch2.trim'].map((at) => light(at).brightness);
  expect(Number(loud)).toBeGreaterThan(Number(soft));
  expect(Number(soft)).toBeGreaterThan(0);
  expect(light('desk.ch4.trim').brightness).toBe(0);
});

test('lightOf() one way: its places are lit, and no other', () => {
  const { solution } = hear({ 'desk.ch3.aux3': -6 });
  const [dry, wet] = paths(solution, 'cello', CAPTURE);
  if (!dry || !wet) throw new Error('Expected two ways.');
  const light = lightOf(solution, {
    kind: 'way',
    source: 'cello',
    places: new Set(placesOf(wet)),
  });
  for (const place of placesOf(wet)) expect(light(place).brightness).not.toBe(0);
  const others = placesOf(dry).filter((place) => !placesOf(wet).includes(place));
  expect(others.map((place) => light(place).brightness)).toEqual(others.map(() => 0));
});

test('lightOf() a return that feeds its own send: the places of the ring are on a loop', () => {
  const light = lightOf(hear({ 'desk.ch3.aux3': -6, 'desk.ret1.aux3': -12 }).solution, cello);
  expect(light('desk.aux3.sum').isLoop).toBe(true);
  expect(light('desk.ch3.fader').isLoop).toBe(false);
});

test('lightOf() nothing stands where no source comes', () => {
  expect(lightOf(hear({}).solution, cello)('desk.sub1.sum').isSilent).toBe(true);
});
