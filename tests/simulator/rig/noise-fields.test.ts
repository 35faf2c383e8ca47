import { expect, test } from 'vitest';
import { InputError } from '../../../simulator/file/input-error.ts';
import { headroomAt } from '../../../simulator/solve/headroom.ts';
import { noiseAt } from '../../../simulator/solve/noise.ts';
import { simulate } from '../../../simulator/solve/simulate.ts';
import { smallRoom } from '../small-room.ts';

test('parseRig() fills in noises, clip levels and crests that a rig leaves out', () => {
  const rig = smallRoom();
  expect(rig.box.tracks[0]?.crestDb).toBe(12);
  expect(rig.converter.noiseDbfs).toBe(-118);
  expect(rig.desk).toMatchObject({ noise: { line: -95, fader: -100, bus: -115 }, clipDbu: 24 });
  expect(rig.rack[0]?.level).toBe('plus4');
});

test('parseRig() takes one of the noises of a desk and leaves the others at their defaults', () => {
  const rig = smallRoom((text) => text.replace('desk:', 'desk:\n  noise: { line: -91 }'));
  expect(rig.desk.noise).toEqual({ line: -91, fader: -100, bus: -115 });
});

test('simulate() puts each figure of the rig where it belongs', () => {
  const rig = smallRoom((text) =>
    text
      .replace('desk:', 'desk:\n  clipDbu: 19')
      .replace('fullScaleDbu: 21', 'fullScaleDbu: 21, noiseDbfs: -99')
      .replace('label: Boost, kind: gain', 'label: Boost, kind: gain, noiseDbu: -71, clipDbu: 17')
      .replace('label: Cans', 'label: Cans, noiseDbu: -61, clipDbu: 13'),
  );
  const solution = simulate({ rig, board: {} });
  expect(noiseAt(solution, 'converter.out6')).toBeCloseTo(21 - 99, 9);
  expect(noiseAt(solution, 'rack.boost.out')).toBeCloseTo(-71, 9);
  expect(noiseAt(solution, 'rack.squash.out')).toBeCloseTo(-92, 9);
  expect(noiseAt(solution, 'out.cans')).toBeCloseTo(-61, 2);
  const clipAt = (place: string) => headroomAt(solution, place)?.clip;
  expect(
    [
      'desk.a.trim',
      'rack.boost.in',
      'rack.squash.out',
      'out.cans',
      'out.tape',
      'converter.out1',
    ].map(clipAt),
  ).toEqual([19, 17, 22, 13, 21, 21]);
});

test.each([
  ['desk:', 'desk:\n  noise: { line: 1 }', 'line'],
  ['desk:', 'desk:\n  noise: { bus: -.inf }', 'bus'],
  ['desk:', 'desk:\n  noise: { hiss: -90 }', 'hiss'],
  ['desk:', 'desk:\n  clipDbu: 41', 'clipDbu'],
  ['levelDbfs: -17', 'levelDbfs: -17, crestDb: -1', 'crestDb'],
  ['kind: gain', 'kind: gain, level: minus12', 'level'],
])('parseRig() refuses %s as %s, and names the field', (from, to, field) => {
  const read = () => smallRoom((text) => text.replace(from, to));
  expect(read).toThrow(InputError);
  expect(read).toThrow(field);
});
