import { gainOf, type Transfer } from './transfer.ts';

/**
 * Power relative to that of 0 dBu: one figure where it lies over the bands as all signals are born, else a
 * density by point of the grid, relative to that, whose weighted mean is the power.
 */
export type Power = number | Float64Array;

/** How signals are born over a grid, by point: weights with a mean of 1. Nothing stands for evenly. */
export type Spread = Float64Array | undefined;

/** A power as one figure. */
export function totalOf(power: Power, spread?: Spread): number {
  if (typeof power === 'number') return power;
  return power.reduce((sum, one, point) => sum + one * (spread?.[point] ?? 1), 0) / power.length;
}

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
