import { type Complex, multiply, ONE, turn } from '../units/complex.ts';
import type { Hz, Seconds } from '../units/frequency.ts';

/** The frequencies that a computation is made at. */
export type Grid = readonly Hz[];

/** Complex ratios by point of a grid. */
export interface Spectrum {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** A flat ratio with its sign, or one by frequency. */
export type Gain = number | Spectrum;

/**
 * What becomes of a signal from one point to another. A plain number where it is only turned up or down;
 * the delay is kept apart, since the same delay of everything changes no level.
 */
export type Transfer = number | SpreadTransfer;

/** A transfer by frequency, or one that comes later. All of one computation have the same grid. */
export interface SpreadTransfer {
  readonly gain: Gain;
  readonly delay: Seconds;
  readonly grid: Grid;
}

/** Two arrivals that leave less than this share of one of them cancel: the rest is rounding, at −240 dB. */
const CANCELLED = 1e-12;
/** Delays that differ by less than this, in seconds, are the same: a fiftieth of a turn at 20 kHz is 1 µs. */
const SAME_DELAY = 1e-9;

export const gainOf = (transfer: Transfer): Gain =>
  typeof transfer === 'number' ? transfer : transfer.gain;

export const delayOf = (transfer: Transfer): Seconds =>
  typeof transfer === 'number' ? (0 as Seconds) : transfer.delay;

/** A gain and a delay as a transfer. */
export const transferOf = (gain: Gain, delay: Seconds, grid: Grid): Transfer =>
  typeof gain === 'number' && (delay === 0 || gain === 0) ? gain : { gain, delay, grid };

const gridOf = (one: Transfer, other: Transfer): Grid => {
  if (typeof one !== 'number') return one.grid;
  return typeof other === 'number' ? [] : other.grid;
};

export const isFlat = (transfer: Transfer): boolean => typeof gainOf(transfer) === 'number';

/** One transfer after the other. */
export function cascade(one: Transfer, other: Transfer): Transfer {
  if (typeof one === 'number' && typeof other === 'number') return one * other;
  const delay = (delayOf(one) + delayOf(other)) as Seconds;
  const grid = gridOf(one, other);
  return transferOf(multiplyGains(gainOf(one), gainOf(other), grid), delay, grid);
}

/** Both transfers of the same signal together: voltages add, point by point where they come at different times. */
export function addTransfers(one: Transfer, other: Transfer): Transfer {
  if (typeof one === 'number' && typeof other === 'number') return addNumbers(one, other);
  if (one === 0) return other;
  if (other === 0) return one;
  const delay = Math.min(delayOf(one), delayOf(other)) as Seconds;
  const grid = gridOf(one, other);
  const late = (transfer: Transfer) => delayed(gainOf(transfer), delayOf(transfer) - delay, grid);
  return transferOf(addGains(late(one), late(other), grid), delay, grid);
}

function addNumbers(one: number, other: number): number {
  const sum = one + other;
  return Math.abs(sum) < CANCELLED * Math.abs(other) ? 0 : sum;
}

function addGains(one: Gain, other: Gain, grid: Grid): Gain {
  if (typeof one === 'number' && typeof other === 'number') return addNumbers(one, other);
  return spectrumOf(grid, (point) => {
    const [a, b] = [gainAt(one, point), gainAt(other, point)];
    return { re: a.re + b.re, im: a.im + b.im };
  });
}

function multiplyGains(one: Gain, other: Gain, grid: Grid): Gain {
  if (typeof one === 'number' && typeof other === 'number') return one * other;
  return spectrumOf(grid, (point) => multiply(gainAt(one, point), gainAt(other, point)));
}

function delayed(gain: Gain, by: number, grid: Grid): Gain {
  if (by < SAME_DELAY) return gain;
  return spectrumOf(grid, (point) =>
    multiply(gainAt(gain, point), turn(-2 * Math.PI * (grid[point] ?? 0) * by)),
  );
}

/** A spectrum made point by point. */
export function spectrumOf(grid: Grid, at: (point: number) => Complex): Spectrum {
  const re = new Float64Array(grid.length);
  const im = new Float64Array(grid.length);
  for (let point = 0; point < grid.length; point += 1) {
    const value = at(point);
    re[point] = value.re;
    im[point] = value.im;
  }
  return { re, im };
}

/** A gain at one point of the grid. */
export function gainAt(gain: Gain, point: number): Complex {
  if (typeof gain !== 'number') return { re: gain.re[point] ?? 0, im: gain.im[point] ?? 0 };
  return gain === 1 ? ONE : { re: gain, im: 0 };
}

/** A transfer at one point of the grid, its delay as a turn. */
export function transferAt(transfer: Transfer, point: number): Complex {
  const gain = gainAt(gainOf(transfer), point);
  if (typeof transfer === 'number' || transfer.delay === 0) return gain;
  return multiply(gain, turn(-2 * Math.PI * (transfer.grid[point] ?? 0) * transfer.delay));
}

/** Whether nothing passes. */
export function isSilent(transfer: Transfer): boolean {
  const gain = gainOf(transfer);
  if (typeof gain === 'number') return gain === 0;
  return gain.re.every((re, point) => re === 0 && gain.im[point] === 0);
}
