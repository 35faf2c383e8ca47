/**
 * J. B. Johnson, "Thermal Agitation of Electricity in Conductors", and H. Nyquist, "Thermal Agitation of
 * Electric Charge in Conductors", Physical Review 32 (1928): the noise of a resistance R is √(4kTRΔf).
 *
 * NOI-1: 150 Ω over 20 kHz, published as −130.9 ± 0.1 dBu without its temperature; with it, computed from the
 * formula. NOI-2: other resistances, computed from it.
 */
import { describe, expect, test } from 'vitest';
import { dbuOfVolts, type Hz, thermalNoise } from '../../simulator/index.ts';
import { expectNear, THREE_DECIMALS } from './tolerance.ts';

const ROWS = [
  { row: 'NOI-1', ohms: 150, kelvin: 290, level: -130.965 },
  { row: 'NOI-1', ohms: 150, kelvin: 300, level: -130.818 },
  { row: 'NOI-2', ohms: 200, kelvin: 290, level: -129.715 },
  { row: 'NOI-2', ohms: 1000, kelvin: 290, level: -122.726 },
  { row: 'NOI-2', ohms: 10_000, kelvin: 290, level: -112.726 },
];

describe('NOI-1 and NOI-2, thermal noise over 20 kHz', () => {
  test.each(ROWS)('thermalNoise() of $ohms Ω at $kelvin K: $level dBu', (row) => {
    const { ohms, kelvin, level } = row;
    const volts = thermalNoise(ohms, kelvin);
    expectNear(dbuOfVolts(volts), level, THREE_DECIMALS);
    const square = 4 * 1.380649e-23 * kelvin * ohms * 20_000;
    expectNear(dbuOfVolts(volts), 10 * Math.log10(square / 0.6));
  });

  test('thermalNoise() of 150 Ω is −130.9 ± 0.1 dBu at any temperature of a room', () => {
    for (const kelvin of [290, 293, 297, 300]) {
      expectNear(dbuOfVolts(thermalNoise(150, kelvin)), -130.9, 0.1);
    }
  });

  test('thermalNoise() grows with the root of the bandwidth: 4 times as wide, twice the volts', () => {
    const narrow = thermalNoise(600, 295, 5000 as Hz);
    expect(thermalNoise(600, 295) / narrow).toBeCloseTo(2, 12);
  });
});
