/**
 * A number that a person typed: with a true minus or a hyphen, a comma or a point, with or without its
 * unit. `closed`, `off` and `-inf` close a control. Nothing when it is no number.
 */
export function readNumber(typed: string): number | undefined {
  const plain = typed
    .trim()
    .toLowerCase()
    .replace(/[−–]/g, '-')
    .replace(',', '.')
    .replace(/\s*(dbu|db)$/, '');
  if (/^(closed|silent|off|-\s*(inf|∞))$/.test(plain)) return -Infinity;
  if (!/^[+-]?\s*(\d+\.?\d*|\.\d+)$/.test(plain)) return undefined;
  return Number(plain.replace(/\s/g, ''));
}
