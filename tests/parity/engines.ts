import {
  abs,
  type Complex,
  complex,
  lusolve,
  type Matrix as MathMatrix,
  slu,
  sparse,
} from 'mathjs';
import { EigenvalueDecomposition, LuDecomposition, Matrix } from 'ml-matrix';
import type { Entry } from './setup-to-matrix.ts';

/** Voltage ratios from some inputs to every node: by input, then by node. */
export type Solved = readonly (readonly Complex[])[];

/** Solves (I − A) x = b for a unit at each of these inputs in turn. */
export type Engine = (
  size: number,
  entries: readonly Entry[],
  inputs: readonly number[],
  isReal: boolean,
) => Solved;

/** Columns of the sparse I − A: rows and values of each. */
function columnsOf(size: number, entries: readonly Entry[]): Map<number, Complex>[] {
  const columns = Array.from(
    { length: size },
    (_, index) => new Map<number, Complex>([[index, complex(1, 0)]]),
  );
  for (const { from, to, ratio } of entries) {
    const column = columns[from];
    const before = column?.get(to) ?? complex(0, 0);
    column?.set(to, complex(before.re - ratio.re, before.im - ratio.im));
  }
  return columns;
}

/** mathjs: sparse LU with partial pivoting, and `lusolve`; complex where the entries are. */
export const solveWithMathjs: Engine = (size, entries, inputs, isReal) => {
  const matrix = sparse() as MathMatrix<number | Complex>;
  matrix.resize([size, size]);
  columnsOf(size, entries).forEach((column, from) => {
    for (const [to, value] of column) matrix.set([to, from], isReal ? value.re : value);
  });
  const decomposed = slu(matrix, 1, 0.1);
  return inputs.map((input) => {
    const side = Array.from({ length: size }, (_, row) => [row === input ? 1 : 0]);
    const solved = lusolve(decomposed, side).valueOf() as (number | Complex)[][];
    return solved.map(([value = Number.NaN]) =>
      typeof value === 'number' ? complex(value, 0) : value,
    );
  });
};

/** ml-matrix: dense LU, all inputs at once. For real entries. */
export const solveWithMlMatrix: Engine = (size, entries, inputs, isReal) => {
  if (!isReal) throw new RangeError('Expected real entries.');
  const matrix = Matrix.eye(size, size);
  for (const { from, to, ratio } of entries) {
    matrix.set(to, from, matrix.get(to, from) - ratio.re);
  }
  const sides = Matrix.zeros(size, inputs.length);
  inputs.forEach((input, column) => {
    sides.set(input, column, 1);
  });
  const solved = new LuDecomposition(matrix).solve(sides);
  return inputs.map((_, column) => solved.getColumn(column).map((value) => complex(value, 0)));
};

/** Largest magnitude of an eigenvalue, by ml-matrix. A complex matrix is taken as a real one of twice the size. */
export function largestEigenvalue(matrix: readonly (readonly Complex[])[]): number {
  const size = matrix.length;
  if (size === 0) return 0;
  if (size === 1) return Number(abs(matrix[0]?.[0] ?? complex(0, 0)));
  const block = Matrix.zeros(2 * size, 2 * size);
  matrix.forEach((row, to) => {
    row.forEach(({ re, im }, from) => {
      block.set(to, from, re);
      block.set(to, from + size, -im);
      block.set(to + size, from, im);
      block.set(to + size, from + size, re);
    });
  });
  const { realEigenvalues, imaginaryEigenvalues } = new EigenvalueDecomposition(block);
  return Math.max(
    ...realEigenvalues.map((real, index) => Math.hypot(real, imaginaryEigenvalues[index] ?? 0)),
  );
}
