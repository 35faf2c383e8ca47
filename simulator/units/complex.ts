/** A complex number. */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

export const ONE: Complex = { re: 1, im: 0 };

export const multiply = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
});

/** @returns infinite or NaN parts where `b` is 0. */
export function divide(a: Complex, b: Complex): Complex {
  const size = b.re ** 2 + b.im ** 2;
  return { re: (a.re * b.re + a.im * b.im) / size, im: (a.im * b.re - a.re * b.im) / size };
}

/** A turn by an angle in radians: e^(jφ). */
export const turn = (angle: number): Complex => ({ re: Math.cos(angle), im: Math.sin(angle) });

export const magnitude = ({ re, im }: Complex): number => Math.hypot(re, im);
