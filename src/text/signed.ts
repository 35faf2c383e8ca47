export const MINUS = '−';

/** Places after which a number is the same but for how it was computed. */
const EXACT = 9;

/** A number without its sign: `3.0`. What lies halfway is rounded the same way, however it was computed. */
export const unsigned = (value: number, digits = 1): string =>
  Number(Math.abs(value).toFixed(EXACT)).toFixed(digits);

/** A number with its true sign: `+3.0`, `−6.0`, `0.0`. What rounds to zero has no sign. */
export function signed(value: number, digits = 1): string {
  if (value === -Infinity) return `${MINUS}∞`;
  const figures = unsigned(value, digits);
  if (Number(figures) === 0) return figures;
  return `${value < 0 ? MINUS : '+'}${figures}`;
}
