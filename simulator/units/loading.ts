import type { Ratio } from './level.ts';

declare const unit: unique symbol;

/** Impedance, in ohms; taken as resistive. */
export type Ohms = number & { readonly [unit]: 'ohm' };

/**
 * What is left of a source's voltage at a load: they divide it, load ÷ (source + load).
 *
 * 100 Ω into 10 kΩ loses 0.0864 dB; 600 Ω into 600 Ω loses half.
 */
export const loadedRatio = (source: Ohms, load: Ohms): Ratio => (load / (source + load)) as Ratio;

/** So many equal loads side by side, as one. */
export const inParallel = (load: Ohms, count: number): Ohms => (load / count) as Ohms;
