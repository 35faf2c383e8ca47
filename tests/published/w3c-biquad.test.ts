/**
 * Source: W3C Web Audio API, BiquadFilterNode, “Filters Characteristics”. The expected values follow from what
 * the shapes are there to do; the whole curves are held against a browser in the parity tests.
 */
import { describe, expect, test } from 'vitest';
import { type ControlValue, type Hz, response, simulate } from '../../simulator/index.ts';
import { setUp } from './rig-builder.ts';
import { expectNear } from './tolerance.ts';

const HUNDREDTH = 0.01;

/** The curve of an equaliser in the insert of the only strip, relative to its passing everything. */
function curve(board: Record<string, ControlValue>, frequencies: number[]): number[] {
  const bench = (more: Record<string, ControlValue>) =>
    simulate(
      setUp({
        levels: [-30],
        rack: [{ id: 'eq', kind: 'equaliser' }],
        board: {
          'rack.eq.in': 'desk.ch1.insert.send',
          'desk.ch1.insert.return': 'rack.eq.out',
          ...more,
        },
      }),
    );
  const read = (more: Record<string, ControlValue>) =>
    response(bench(more), 't1', 'out.capture', frequencies as Hz[]) ?? [];
  const flat = read({});
  return read(board).map((gain, index) => gain - (flat[index] ?? 0));
}

describe('an equaliser in an insert', () => {
  test('at rest passes everything as it is', () => {
    for (const gain of curve({}, [30, 1000, 15_000])) expect(gain).toBe(0);
  });

  test('the flattest high-pass is 3.01 dB down at its corner and falls 12 dB an octave far below', () => {
    const [corner = 0, far = 0, octave = 0] = curve({ 'rack.eq.highpass': '200' }, [200, 25, 12.5]);
    expectNear(corner, 10 * Math.log10(0.5), HUNDREDTH);
    expectNear(octave - far, -12.04, 0.05);
  });

  test('the middle band reaches its gain at its frequency: −9.5 dB at 2 kHz, next to nothing at 40 Hz', () => {
    const [middle, low] = curve(
      { 'rack.eq.mid': -9.5, 'rack.eq.mid-frequency': '2000' },
      [2000, 40],
    );
    expectNear(middle, -9.5, HUNDREDTH);
    expectNear(low, 0, HUNDREDTH);
  });

  test('a shelf reaches its gain at its end and half of it, in dB, at its corner', () => {
    const [end, corner, far] = curve({ 'rack.eq.low': 8 }, [10, 120, 5000]);
    expectNear(end, 8, HUNDREDTH);
    expectNear(corner, 4, HUNDREDTH);
    expectNear(far, 0, HUNDREDTH);
    const [top, high, below] = curve({ 'rack.eq.high': -5 }, [23_900, 8000, 300]);
    expectNear(top, -5, HUNDREDTH);
    expectNear(high, -2.5, HUNDREDTH);
    expectNear(below, 0, HUNDREDTH);
  });
});
