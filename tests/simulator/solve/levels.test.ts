import { describe, expect, test } from 'vitest';
import { levelAt, levelOf } from '../../../simulator/solve/levels.ts';
import { simulate } from '../../../simulator/solve/simulate.ts';
import { smallRoom } from '../small-room.ts';

const rig = smallRoom();
const solution = simulate({
  rig,
  board: { 'desk.a.fader': -6, 'desk.b.trim': 5, 'desk.a.ears': -7, 'desk.c.in': 'converter.out3' },
});

describe('levelOf()', () => {
  test.each<[source: string, place: string, dbu: number]>([
    ['viola', 'converter.out1', -17 + 21],
    ['viola', 'desk.a.mute', 4 - 6],
    ['viola', 'out.cans', 4 - 7],
    ['viola', 'out.tape', 4 - 6],
    ['viola', 'out.tape.l', 4 - 6 - 3.0103],
    ['horn', 'out.tape', -2 + 5],
    ['horn', 'out.cans', -Infinity],
    ['organ.l', 'out.tape', -5],
    ['organ.r', 'out.tape', -Infinity],
    ['organ', 'box.organ.pan', -5 + 3.0103],
  ])('%s at %s is %d dBu, ± 1e-4', (source, place, expected) => {
    const found = levelOf(solution, source, place);
    if (expected === -Infinity) expect(found).toBe(-Infinity);
    else expect(found).toBeCloseTo(expected, 4);
  });

  test('refuses a source or a place that is not there', () => {
    expect(() => levelOf(solution, 'cello', 'out.tape')).toThrow(RangeError);
    expect(() => levelOf(solution, 'viola', 'out.vinyl')).toThrow(RangeError);
  });
});

test('levelAt() adds different sources in power: −2, 3 and −5 dBu are 4.6871 dBu, ± 1e-4', () => {
  expect(10 * Math.log10(10 ** -0.2 + 10 ** 0.3 + 10 ** -0.5)).toBeCloseTo(4.6871, 4);
  expect(levelAt(solution, 'out.tape')).toBeCloseTo(4.6871, 4);
  expect(levelAt(solution, 'desk.late.out')).toBe(-Infinity);
});
