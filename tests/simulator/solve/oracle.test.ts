import * as fc from 'fast-check';
import { lup, lusolve } from 'mathjs';
import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import { expect, test } from 'vitest';
import type { Setup } from '../../../simulator/board/board.ts';
import type { Circuit } from '../../../simulator/circuit/circuit.ts';
import { levelOf } from '../../../simulator/solve/levels.ts';
import { spectralRadius } from '../../../simulator/solve/matrix.ts';
import { simulate } from '../../../simulator/solve/simulate.ts';
import { dbu } from '../../../simulator/units/level.ts';
import { arbitrarySetup, LINEAR } from '../arbitrary-setup.ts';
import { expectNear } from './near-levels.ts';

/** Another engine on the same equations: x = A x + b, solved as (I − A) x = b by the LU of mathjs. */

/** The stages that some open wire leads to from a source, in any order. */
function stagesReached({ wires, signals }: Circuit): number[] {
  const reached = new Set(signals.map(({ stage }) => stage));
  for (let grown = 0; grown < reached.size; ) {
    grown = reached.size;
    wires.forEach((into, to) => {
      if (into.some(({ from, ratio }) => ratio !== 0 && reached.has(from))) reached.add(to);
    });
  }
  return [...reached];
}

/** Voltage of each signal at each stage reached, relative to that signal where it is born. */
function solveElsewhere(circuit: Circuit): Map<string, number> {
  const reached = stagesReached(circuit);
  const position = new Map(reached.map((stage, index) => [stage, index]));
  const matrix = reached.map(() => new Array<number>(reached.length).fill(0));
  reached.forEach((stage, line) => {
    const row = matrix[line] as number[];
    row[line] = 1;
    for (const { from, ratio } of circuit.wires[stage] ?? []) {
      const column = position.get(from);
      if (column !== undefined) row[column] = (row[column] ?? 0) - ratio;
    }
  });
  const decomposed = lup(matrix);
  const voltages = new Map<string, number>();
  for (const { id, stage } of circuit.signals) {
    const side = reached.map((one) => [one === stage ? 1 : 0]);
    const solved = lusolve(decomposed, side).valueOf() as number[][];
    reached.forEach((one, line) => {
      voltages.set(`${id} at ${circuit.stages[one]?.id}`, solved[line]?.[0] ?? Number.NaN);
    });
  }
  return voltages;
}

/** Compares the level of every signal at every stage. */
function compare(setup: Setup): void {
  const solution = simulate(setup);
  const { circuit } = solution;
  const voltages = solveElsewhere(circuit);
  for (const { id: place } of circuit.stages) {
    for (const { id, level } of circuit.signals) {
      const voltage = voltages.get(`${id} at ${place}`) ?? 0;
      const wanted = dbu(level + 20 * Math.log10(Math.abs(voltage)));
      expectNear(levelOf(solution, id, place), wanted, 1e-4, `${id} at ${place}`);
    }
  }
}

test('levels agree with mathjs lusolve on 200 random linear setups with stable loops, to 1e-4 dB', {
  timeout: 120_000,
}, () => {
  const wanted = 200;
  const setups = fc.sample(arbitrarySetup({ ...LINEAR, loops: true }), {
    seed: 717,
    numRuns: 1_400,
  });
  let compared = 0;
  for (const setup of setups) {
    const { loops } = simulate(setup);
    if (loops.length === 0 || !loops.every(({ stable }) => stable)) continue;
    compare(setup);
    compared += 1;
    if (compared === wanted) break;
  }
  expect(compared).toBe(wanted);
});

test('levels agree with mathjs lusolve on 60 random linear setups without a loop, to 1e-4 dB', {
  timeout: 60_000,
}, () => {
  const setups = fc.sample(arbitrarySetup(LINEAR), { seed: 718, numRuns: 120 });
  const open = setups.filter((setup) => simulate(setup).loops.length === 0).slice(0, 60);
  expect(open).toHaveLength(60);
  for (const setup of open) compare(setup);
});

test('spectralRadius() agrees with the eigenvalues of ml-matrix on random matrices, to 1e-6 of it', () => {
  const entry = fc.oneof(
    { weight: 2, arbitrary: fc.constant(0) },
    {
      weight: 3,
      arbitrary: fc
        .double({ min: -2, max: 2, noNaN: true })
        .filter((value) => value === 0 || Math.abs(value) > 1e-6),
    },
  );
  const square = fc.integer({ min: 1, max: 7 }).chain((size) =>
    fc.array(fc.array(entry, { minLength: size, maxLength: size }), {
      minLength: size,
      maxLength: size,
    }),
  );
  fc.assert(
    fc.property(square, (rows) => {
      const { realEigenvalues: real, imaginaryEigenvalues: imaginary } =
        new EigenvalueDecomposition(new Matrix(rows));
      const wanted = Math.max(
        ...real.map((value, index) => Math.hypot(value, imaginary[index] ?? 0)),
      );
      const found = spectralRadius(rows.map((row) => Float64Array.from(row)));
      // Eigenvalues of defective matrices are sensitive: theirs is off by the root of the rounding.
      const tolerance = wanted < 0.01 ? 0.01 : 1e-6 * Math.max(1, wanted);
      expect(Math.abs(found - wanted)).toBeLessThan(tolerance);
    }),
    { seed: 719, numRuns: 400 },
  );
});
