import { expect, test } from 'vitest';
import {
  headroomAt,
  levelAt,
  noiseAt,
  outputPlace,
  paths,
  peakAt,
  simulate,
} from '../../simulator/index.ts';
import { meteredPlaces, readMeters } from '../../src/plot/read-meters.ts';
import { responseCurve, shareOfFrequency } from '../../src/plot/response-curve.ts';
import { tightestOf, wayLevels } from '../../src/plot/way-levels.ts';
import { course } from '../lessons/the-course.ts';
import { hear, netLoft } from '../text/net-loft.ts';

/** The desk of a walk-through as one of its steps leaves it. */
function stepOf(id: string, index: number) {
  const walkThrough = course.walkThroughs.get(id);
  const step = walkThrough?.steps[index];
  if (!walkThrough || !step) throw new Error(`Expected step ${index} of ${id}, but found none.`);
  return { rig: walkThrough.rig, board: step.board };
}

const CAPTURE = outputPlace('capture');

test('meteredPlaces() are the input of an owner and the last place of all that it does', () => {
  const { solution } = hear();
  expect(meteredPlaces(solution, 'desk.ch3')).toEqual(['desk.ch3.trim', 'desk.ch3.pan']);
  expect(meteredPlaces(solution, 'desk.aux1')).toEqual(['desk.aux1.sum', 'desk.aux1.out']);
  expect(meteredPlaces(solution, 'rack.comp')).toEqual(['rack.comp.in', 'rack.comp.out']);
  expect(meteredPlaces(solution, 'converter.out3')).toEqual(['converter.out3']);
});

test('readMeters() has one meter a leg, those of an output once, with what the simulator says there', () => {
  const { solution } = hear();
  const readings = readMeters(solution, netLoft.outputs, 'out.capture');
  expect(readings.map(({ place }) => place)).toEqual([
    'out.capture.l',
    'out.capture.r',
    'out.headphones-a',
    'out.headphones-b',
  ]);
  for (const { place, rms, peak, noise, limit } of readings) {
    expect(rms).toBe(levelAt(solution, place));
    expect(peak).toBe(peakAt(solution, place));
    expect(noise).toBe(noiseAt(solution, place));
    expect(limit).toEqual(headroomAt(solution, place));
  }
});

test('wayLevels() run from the recording to the output, through every active stage, with the levels of the way', () => {
  const { solution } = hear({ 'desk.ch3.fader': -7 });
  const [way] = paths(solution, 'cello', CAPTURE);
  if (!way) throw new Error('Expected a way, but found none.');
  const levels = wayLevels(solution, way, new Set([way.steps[0]?.place ?? '']));
  expect(levels.at(0)?.place).toBe('box.cello.source');
  expect(levels.at(-1)).toMatchObject({ place: CAPTURE, level: way.level });
  const active = way.steps.filter(({ place }) => headroomAt(solution, place));
  expect(levels).toHaveLength(active.length + 1);
  const least = Math.min(...levels.map(({ headroom }) => headroom?.headroom ?? Infinity));
  expect(tightestOf(levels)?.headroom).toBe(least);
});

/** Source: Everest, *Master Handbook of Acoustics*, chapter on comb filters. */
test('COMB-1 responseCurve() of two equal ways 1 ms apart has +6.02 dB at 1 kHz, and next to nothing at 500 Hz', () => {
  const { rig, board } = stepOf('a-filter-and-a-comb', 2);
  const curve = responseCurve(simulate({ rig, board }), 'cello', CAPTURE);
  expect(curve?.most.gain).toBeCloseTo(6.0206, 3);
  expect(curve?.least.gain).toBeLessThan(-30);
  const nulls = curve?.line.filter(({ gain }) => gain < -20).map(({ frequency }) => frequency);
  expect(nulls?.[0]).toBeGreaterThan(480);
  expect(nulls?.[0]).toBeLessThan(500);
  expect(curve?.thirds).toHaveLength(31);
  const kilohertz = curve?.thirds.find(({ frequency }) => frequency === 1000);
  expect(kilohertz?.gain).toBeCloseTo(6.0206, 3);
});

test('responseCurve() of a flat way, and of none, is nothing', () => {
  expect(responseCurve(hear().solution, 'cello', CAPTURE)).toBeUndefined();
  const { solution } = hear({ 'desk.ch3.mute': true });
  expect(responseCurve(solution, 'cello', CAPTURE)).toBeUndefined();
});

test('shareOfFrequency() is logarithmic: 20 Hz 0, 632 Hz half, 20 kHz 1', () => {
  expect(shareOfFrequency(20)).toBe(0);
  expect(shareOfFrequency(Math.sqrt(20 * 20_000))).toBeCloseTo(0.5, 12);
  expect(shareOfFrequency(20_000)).toBeCloseTo(1, 12);
});
