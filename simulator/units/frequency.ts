declare const unit: unique symbol;

/** Frequency, in hertz. */
export type Hz = number & { readonly [unit]: 'Hz' };

/** Time, in seconds. */
export type Seconds = number & { readonly [unit]: 's' };

/**
 * Centre of a third-octave band by its number, in hertz; band 0 is 1 kHz.
 * Source: ISO 266 and IEC 61260-1, 1000·10^(n/10).
 */
export const thirdOctaveCentre = (band: number): Hz => (1000 * 10 ** (band / 10)) as Hz;

/** Numbers of the bands from 20 Hz to 20 kHz. */
export const THIRD_OCTAVES: readonly number[] = Array.from(
  { length: 31 },
  (_, index) => index - 17,
);

/** Points in each band: enough between its edges for a comb to show. */
export const POINTS_PER_BAND = 16;

/**
 * The frequencies that everything is computed at when anything depends on frequency: evenly spaced
 * on a logarithmic axis, so that their plain mean is that of a sound with equal power in every band.
 */
export const GRID: readonly Hz[] = THIRD_OCTAVES.flatMap((band) =>
  Array.from({ length: POINTS_PER_BAND }, (_, point) =>
    thirdOctaveCentre(band + (point + 0.5) / POINTS_PER_BAND - 0.5),
  ),
);
