import { magnitude } from '../units/complex.ts';
import type { Seconds } from '../units/frequency.ts';
import { solveFeedback, spectralRadius, zeros } from './matrix.ts';
import type { Row } from './row.ts';
import {
  type Grid,
  gainAt,
  gainOf,
  type Spectrum,
  type Transfer,
  transferAt,
  transferOf,
} from './transfer.ts';

/** Transfers by target and source; what is absent is closed. */
export type TransferMatrix = readonly ReadonlyMap<number, Transfer>[];

/**
 * Whether what circulates dies away at every frequency.
 *
 * First by the largest magnitude of each transfer: a loop that is stable with all of them is stable. Only
 * where that does not decide it are the frequencies gone through one by one.
 */
export function isStableOverGrid(matrix: TransferMatrix, limit: number, grid: Grid): boolean {
  const largest = zeros(matrix.length);
  matrix.forEach((row, target) => {
    for (const [source, transfer] of row) {
      (largest[target] as Float64Array)[source] = largestMagnitude(transfer);
    }
  });
  if (spectralRadius(largest, limit) < limit) return true;
  return grid.every((_, point) => spectralRadius(blockAt(matrix, point), limit) < limit);
}

/** The largest magnitude of a transfer over the grid. */
export function largestMagnitude(transfer: Transfer): number {
  const gain = gainOf(transfer);
  if (typeof gain === 'number') return Math.abs(gain);
  return gain.re.reduce((most, _, point) => Math.max(most, magnitude(gainAt(gain, point))), 0);
}

/** What stands at each stage of a loop, solved frequency by frequency. */
export function solveFeedbackOverGrid(
  matrix: TransferMatrix,
  sides: readonly Row[],
  grid: Grid,
): Row[] {
  const columns = [...new Set(sides.flatMap((side) => side.columns))];
  const size = matrix.length;
  const solved: Spectrum[][] = sides.map(() =>
    columns.map(() => ({ re: new Float64Array(grid.length), im: new Float64Array(grid.length) })),
  );
  for (let point = 0; point < grid.length; point += 1) {
    const right = Array.from({ length: 2 * size }, () => new Float64Array(columns.length));
    sides.forEach((side, position) => {
      side.columns.forEach((column, index) => {
        const { re, im } = transferAt(side.transfers[index] ?? 0, point);
        const lane = columns.indexOf(column);
        (right[position] as Float64Array)[lane] = re;
        (right[position + size] as Float64Array)[lane] = im;
      });
    });
    const values = solveFeedback(blockAt(matrix, point), right);
    solved.forEach((row, position) => {
      row.forEach(({ re, im }, lane) => {
        re[point] = values[position]?.[lane] ?? 0;
        im[point] = values[position + size]?.[lane] ?? 0;
      });
    });
  }
  return solved.map((row) => ({
    columns,
    transfers: row.map((gain) => transferOf(gain, 0 as Seconds, grid)),
  }));
}

/** The matrix at one frequency as a real one of twice the size: [[re, −im], [im, re]]. */
function blockAt(matrix: TransferMatrix, point: number): Float64Array[] {
  const size = matrix.length;
  const block = zeros(2 * size);
  matrix.forEach((row, target) => {
    for (const [source, transfer] of row) {
      const { re, im } = transferAt(transfer, point);
      const [upper, lower] = [block[target] as Float64Array, block[target + size] as Float64Array];
      upper[source] = re;
      upper[source + size] = -im;
      lower[source] = im;
      lower[source + size] = re;
    }
  });
  return block;
}
