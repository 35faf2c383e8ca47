/** A square matrix, row by row. */
export type Matrix = readonly Float64Array[];

export const zeros = (size: number): Float64Array[] =>
  Array.from({ length: size }, () => new Float64Array(size));

/**
 * Solves (I − A) x = b for several right-hand sides: what circulates in a loop once it has settled.
 * Gaussian elimination with partial pivoting.
 *
 * @param sides right-hand sides row by row: one row a row of A, one column a side. Not changed.
 * @returns the solutions, in the shape of `sides`. Infinite or NaN where I − A is singular.
 */
export function solveFeedback(a: Matrix, sides: readonly Float64Array[]): Float64Array[] {
  const size = a.length;
  const left = a.map((row, i) => row.map((value, j) => (i === j ? 1 : 0) - value));
  const right = sides.map((row) => Float64Array.from(row));
  const swap = (rows: Float64Array[], i: number, j: number) => {
    [rows[i], rows[j]] = [rows[j] as Float64Array, rows[i] as Float64Array];
  };
  const at = (row: number, column: number) => left[row]?.[column] ?? 0;

  for (let pivot = 0; pivot < size; pivot += 1) {
    let best = pivot;
    for (let row = pivot + 1; row < size; row += 1) {
      if (Math.abs(at(row, pivot)) > Math.abs(at(best, pivot))) best = row;
    }
    swap(left, pivot, best);
    swap(right, pivot, best);
    for (let row = pivot + 1; row < size; row += 1) {
      const factor = at(row, pivot) / at(pivot, pivot);
      if (factor === 0) continue;
      subtract(left[row], left[pivot], factor);
      subtract(right[row], right[pivot], factor);
    }
  }
  for (let row = size - 1; row >= 0; row -= 1) {
    for (let known = row + 1; known < size; known += 1) {
      subtract(right[row], right[known], at(row, known));
    }
    const target = right[row];
    if (target)
      for (let side = 0; side < target.length; side += 1)
        target[side] = (target[side] ?? 0) / at(row, row);
  }
  return right;
}

/** Takes `factor` times one row from another, in place. */
function subtract(from: Float64Array | undefined, row: Float64Array | undefined, factor: number) {
  if (!from || !row || factor === 0) return;
  for (let index = 0; index < from.length; index += 1) {
    from[index] = (from[index] ?? 0) - factor * (row[index] ?? 0);
  }
}

const SQUARINGS = 40;

/**
 * Spectral radius: the largest magnitude of an eigenvalue. What circulates in a loop dies away when it is below 1.
 *
 * By Gelfand's formula, ρ = lim ‖Aᵏ‖^(1/k), with k = 2⁴⁰ reached by squaring. Unlike power iteration it
 * needs no dominant eigenvalue, which a plain ring does not have.
 *
 * @param limit where it matters only on which side of this the radius lies: then it ends as soon as that is
 *   known, with a bound on the same side. For every k, (|tr Aᵏ| / n)^(1/k) ≤ ρ ≤ ‖Aᵏ‖^(1/k).
 */
export function spectralRadius(a: Matrix, limit?: number): number {
  let power: Matrix = a;
  let logScale = 0;
  for (let step = 0; step < SQUARINGS; step += 1) {
    const size = norm(power);
    if (size === 0) return 0;
    const most = Math.exp(logScale + Math.log(size) / 2 ** step);
    const least = Math.exp(logScale + Math.log(trace(power) / a.length) / 2 ** step);
    if (limit !== undefined && most < limit) return most;
    if (limit !== undefined && least > limit) return least;
    logScale += Math.log(size) / 2 ** step;
    power = square(power.map((row) => row.map((value) => value / size)));
  }
  return Math.exp(logScale);
}

/** Magnitude of the sum of what stands on the diagonal. */
const trace = (a: Matrix): number =>
  Math.abs(a.reduce((sum, row, index) => sum + (row[index] ?? 0), 0));

/** Largest sum of magnitudes in a row. */
const norm = (a: Matrix): number =>
  Math.max(0, ...a.map((row) => row.reduce((sum, value) => sum + Math.abs(value), 0)));

function square(a: Matrix): Float64Array[] {
  return a.map((row) => {
    const out = new Float64Array(row.length);
    for (let k = 0; k < row.length; k += 1) subtract(out, a[k], -(row[k] ?? 0));
    return out;
  });
}
