export const MINUS = '−';

/** A number with its true sign: `+3.0`, `−6.0`, `0.0`. What rounds to zero has no sign. */
export function signed(value: number, digits = 1): string {
  if (value === -Infinity) return `${MINUS}∞`;
  const figures = Math.abs(value).toFixed(digits);
  if (Number(figures) === 0) return figures;
  return `${value < 0 ? MINUS : '+'}${figures}`;
}
