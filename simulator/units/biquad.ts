import { type Complex, divide, turn } from './complex.ts';
import type { Hz } from './frequency.ts';
import type { Db } from './level.ts';

/** Sampling rate that filters are reckoned at. */
export const SAMPLE_RATE = 48_000;

/** A second-order section: (b0 + b1·z⁻¹ + b2·z⁻²) / (1 + a1·z⁻¹ + a2·z⁻²). */
export interface Biquad {
  readonly b: readonly [number, number, number];
  readonly a: readonly [number, number];
}

/** Shapes of a section, and what each is set by. */
export type FilterShape =
  /** Cuts below a frequency. `q` in dB, as the standard has it for this shape. */
  | { readonly kind: 'highpass'; readonly frequency: Hz; readonly q: number }
  /** Lifts or lowers around a frequency. */
  | { readonly kind: 'peaking'; readonly frequency: Hz; readonly q: number; readonly gain: Db }
  | { readonly kind: 'lowshelf'; readonly frequency: Hz; readonly gain: Db }
  | { readonly kind: 'highshelf'; readonly frequency: Hz; readonly gain: Db };

/**
 * Coefficients of a section at {@link SAMPLE_RATE}.
 *
 * Source: W3C Web Audio API, “Filters Characteristics” of BiquadFilterNode. Shelves have slope 1 there.
 * Frequencies are held below half the sampling rate, as the standard does.
 */
export function biquad(shape: FilterShape): Biquad {
  const omega = (2 * Math.PI * Math.min(shape.frequency, SAMPLE_RATE / 2)) / SAMPLE_RATE;
  const [sin, cos] = [Math.sin(omega), Math.cos(omega)];
  switch (shape.kind) {
    case 'highpass': {
      const alpha = sin / (2 * 10 ** (shape.q / 20));
      const b0 = (1 + cos) / 2;
      return section([b0, -(1 + cos), b0], [1 + alpha, -2 * cos, 1 - alpha]);
    }
    case 'peaking': {
      const alpha = sin / (2 * shape.q);
      const a = 10 ** (shape.gain / 40);
      return section(
        [1 + alpha * a, -2 * cos, 1 - alpha * a],
        [1 + alpha / a, -2 * cos, 1 - alpha / a],
      );
    }
    case 'lowshelf':
    case 'highshelf': {
      const a = 10 ** (shape.gain / 40);
      const root = 2 * (sin / 2) * Math.SQRT2 * Math.sqrt(a);
      // A high shelf is the low one with the cosine turned round.
      const c = shape.kind === 'lowshelf' ? cos : -cos;
      const side = shape.kind === 'lowshelf' ? 1 : -1;
      return section(
        [
          a * (a + 1 - (a - 1) * c + root),
          side * 2 * a * (a - 1 - (a + 1) * c),
          a * (a + 1 - (a - 1) * c - root),
        ],
        [a + 1 + (a - 1) * c + root, side * -2 * (a - 1 + (a + 1) * c), a + 1 + (a - 1) * c - root],
      );
    }
  }
}

/** A section divided by its first denominator coefficient. */
function section(
  [b0, b1, b2]: readonly [number, number, number],
  [a0, a1, a2]: readonly [number, number, number],
): Biquad {
  return { b: [b0 / a0, b1 / a0, b2 / a0], a: [a1 / a0, a2 / a0] };
}

/** Response of a section at a frequency. */
export function responseAt({ b, a }: Biquad, frequency: Hz): Complex {
  const omega = (-2 * Math.PI * frequency) / SAMPLE_RATE;
  const [z1, z2] = [turn(omega), turn(2 * omega)];
  return divide(
    { re: b[0] + b[1] * z1.re + b[2] * z2.re, im: b[1] * z1.im + b[2] * z2.im },
    { re: 1 + a[0] * z1.re + a[1] * z2.re, im: a[0] * z1.im + a[1] * z2.im },
  );
}
