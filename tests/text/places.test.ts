import { expect, test } from 'vitest';
import { controls, jacks } from '../../simulator/index.ts';
import { atGoal, placeName, sourceName } from '../../src/text/index.ts';
import { hear, netLoft } from './net-loft.ts';

test.each([
  ['desk.ch3.fader', 'the fader of Strip 3 Cello'],
  ['desk.ch3.aux1', 'the send of Strip 3 Cello to Aux 1'],
  ['desk.ch3.aux1.tap', 'the tap of the send of Strip 3 Cello to Aux 1'],
  ['desk.ch3.sub1', 'the assign of Strip 3 Cello to Subgroup 1–2'],
  ['desk.ret1.in.l', 'the left line input of Strip R1 Plate return'],
  ['desk.ret1.pan', 'the balance of Strip R1 Plate return'],
  ['desk.main.insert.return.r', 'the right insert return of the main bus'],
  ['box.cello.main', 'the main feed of the Cello track'],
  ['box.cello.to', 'the assignment of the Cello track'],
  ['box.blend.fader', 'the fader of the box bus Blend'],
  ['box.main.fader', 'the fader of the main mix of the box'],
  ['converter.out3', 'Output 3'],
  ['rack.plate.in', 'the input of the plate'],
  ['rack.plate', 'the plate'],
  ['out.headphones-a', 'Headphones A'],
  ['out.capture.l', 'the left side of Capture'],
])('placeName() of %s', (place, name) => {
  expect(placeName(netLoft, place)).toBe(name);
});

test('placeName() gives every control, jack and place of a rig a name of its own, without an address', () => {
  const { outputs, inputs } = jacks(netLoft);
  const addresses = new Set([
    ...controls(netLoft).keys(),
    ...outputs,
    ...inputs,
    ...hear().solution.circuit.stagesAt.keys(),
  ]);
  const names = [...addresses].map((address) => placeName(netLoft, address));
  expect(new Set(names).size).toBe(names.length);
  expect(names.filter((name) => /undefined|\w\.\w/.test(name))).toEqual([]);
});

test('sourceName() names a track, and one side of it', () => {
  expect(sourceName(netLoft, 'drum')).toBe('Frame drum');
  expect(sourceName(netLoft, 'piano.r')).toBe('Piano right');
});

test('atGoal() says “in” of an output and “at” of a place', () => {
  expect(atGoal(netLoft, 'headphones-a')).toBe('in Headphones A');
  expect(atGoal(netLoft, 'rack.plate.in')).toBe('at the input of the plate');
});
