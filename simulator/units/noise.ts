import type { Hz } from './frequency.ts';
import { type Db, gainOf, type Volts } from './level.ts';

/** Boltzmann's constant in joules per kelvin, exact by the definition of the kelvin (SI, 2019). */
export const BOLTZMANN = 1.380649e-23;

/** Bandwidth that every noise is given in: up to 20 kHz. */
export const NOISE_BANDWIDTH = 20_000 as Hz;

/**
 * Thermal noise of a resistance, √(4kTRΔf), in volts RMS. Nothing at 0 Ω.
 *
 * Source: J. B. Johnson and H. Nyquist, 1928.
 *
 * @param resistance in ohms, 0 or more.
 * @param temperature in kelvins, 0 or more.
 */
export const thermalNoise = (
  resistance: number,
  temperature: number,
  bandwidth: Hz = NOISE_BANDWIDTH,
): Volts => Math.sqrt(4 * BOLTZMANN * temperature * resistance * bandwidth) as Volts;

/**
 * By how much a summing amplifier raises its own noise, in dB: by N + 1 where N equal resistors are on its bus.
 * With none it is 0.
 *
 * Source: textbook noise gain of an inverting adder, 1 + R/(R/N).
 */
export const summingNoiseGain = (resistors: number): Db => gainOf(resistors + 1);
