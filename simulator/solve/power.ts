import { gainOf, type Transfer } from './transfer.ts';

/**
 * Power relative to that of 0 dBu: one figure where it lies evenly over the bands, else a density by point of
 * the grid whose mean is the power.
 */
export type Power = number | Float64Array;

/** A power as one figure. */
export const totalOf = (power: Power): number =>
  typeof power === 'number' ? power : power.reduce((sum, one) => sum + one, 0) / power.length;

export function addPowers(one: Power, other: Power): Power {
  if (typeof one === 'number' && typeof other === 'number') return one + other;
  return pointByPoint(one, other, (a, b) => a + b);
}

export function multiplyPowers(one: Power, other: Power): Power {
  if (typeof one === 'number' && typeof other === 'number') return one * other;
  return pointByPoint(one, other, (a, b) => a * b);
}

/** Share of the power that comes through a transfer: its squared magnitude. */
export function powerThrough(transfer: Transfer): Power {
  const gain = gainOf(transfer);
  if (typeof gain === 'number') return gain ** 2;
  return gain.re.map((re, point) => re ** 2 + (gain.im[point] ?? 0) ** 2);
}

/** Power at one point of the grid. */
export const powerAt = (power: Power, point: number): number =>
  typeof power === 'number' ? power : (power[point] ?? 0);

function pointByPoint(one: Power, other: Power, combine: (a: number, b: number) => number): Power {
  const shape = typeof one === 'number' ? other : one;
  if (typeof shape === 'number') return combine(totalOf(one), totalOf(other));
  return shape.map((_, point) => combine(powerAt(one, point), powerAt(other, point)));
}
