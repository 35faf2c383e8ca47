import { lup, lusolve, type Matrix as MathMatrix, slu, sparse } from 'mathjs';
import { LuDecomposition, Matrix } from 'ml-matrix';
import type { Circuit } from '../../simulator/index.ts';

/** The matrix I − A of a circuit's wires, and the stages that its signals enter at. */
export interface Equations {
  readonly size: number;
  readonly entries: readonly (readonly [row: number, column: number, value: number])[];
  readonly inputs: readonly number[];
}

export function equationsOf({ stages, wires, signals }: Circuit): Equations {
  const entries = new Map<string, readonly [number, number, number]>();
  const add = (row: number, column: number, value: number) => {
    const before = entries.get(`${row} ${column}`)?.[2] ?? 0;
    entries.set(`${row} ${column}`, [row, column, before + value]);
  };
  stages.forEach((_, stage) => {
    add(stage, stage, 1);
    for (const { from, ratio } of wires[stage] ?? []) if (ratio !== 0) add(stage, from, -ratio);
  });
  return {
    size: stages.length,
    entries: [...entries.values()],
    inputs: signals.map(({ stage }) => stage),
  };
}

/** How mathjs factors a sparse matrix: its `lup`, or its `slu` with a fill-reducing order. */
export type Factoring = 'lup' | 'slu';

/** A run of mathjs over ready equations: factor once, then `lusolve` for every source. The matrix is built beforehand. */
export function mathjsRun({ size, entries, inputs }: Equations, factoring: Factoring): () => void {
  const matrix = sparse() as MathMatrix<number>;
  matrix.resize([size, size]);
  for (const [row, column, value] of entries) matrix.set([row, column], value);
  const sides = inputs.map((input) =>
    Array.from({ length: size }, (_, row) => [row === input ? 1 : 0]),
  );
  return () => {
    if (factoring === 'lup') {
      const factored = lup(matrix);
      for (const side of sides) lusolve(factored, side);
    } else {
      const factored = slu(matrix, 1, 0.1);
      for (const side of sides) lusolve(factored, side);
    }
  };
}

/** A run of ml-matrix over ready equations: dense LU, all sources at once. */
export function mlMatrixRun({ size, entries, inputs }: Equations): () => void {
  const matrix = Matrix.zeros(size, size);
  for (const [row, column, value] of entries) matrix.set(row, column, value);
  const sides = Matrix.zeros(size, inputs.length);
  inputs.forEach((input, column) => {
    sides.set(input, column, 1);
  });
  return () => {
    new LuDecomposition(matrix).solve(sides);
  };
}
