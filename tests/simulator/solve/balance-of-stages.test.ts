import * as fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { simulate } from '../../../simulator/solve/simulate.ts';
import type { Solution } from '../../../simulator/solve/solution.ts';
import { compressionGain } from '../../../simulator/units/compression.ts';
import { dbu } from '../../../simulator/units/level.ts';
import { arbitrarySetup } from '../arbitrary-setup.ts';

// Properties take their time on a machine that is busy.
vi.setConfig({ testTimeout: 30_000 });

/**
 * Whatever the way to a solution, at every stage of it the books balance: what stands there is what its
 * wires bring, through what it does to it.
 */

const setups = fc.oneof(arbitrarySetup(), arbitrarySetup({ loops: true }));

/** What the wires of a stage bring, by column. */
function incomingAt({ circuit, rows }: Solution, stage: number): Map<number, number> {
  const sums = new Map<number, number>();
  for (const { from, ratio } of circuit.wires[stage] ?? []) {
    const row = rows[from];
    row?.columns.forEach((column, index) => {
      sums.set(column, (sums.get(column) ?? 0) + ratio * flat(row.transfers[index]));
    });
  }
  return sums;
}

/** These rigs have neither filter nor delay: every transfer is a plain number. */
const flat = (transfer: unknown = 0): number => {
  if (typeof transfer !== 'number') throw new TypeError('Expected a flat transfer.');
  return transfer;
};

const powerOf = (solution: Solution, stage: number): number => {
  const row = solution.rows[stage];
  return row ? solution.columns.powerOf(row) : Number.NaN;
};

test('every stage that has a level holds its gain times the sum of its wires, to 1e-6 of it', () => {
  let compressing = 0;
  let reverberating = 0;
  fc.assert(
    fc.property(setups, (setup) => {
      const solution = simulate(setup);
      const { circuit, rows, columns, compression } = solution;
      circuit.stages.forEach(({ id, law }, stage) => {
        const row = rows[stage];
        if (!row || law.kind === 'source') return;
        const incoming = incomingAt(solution, stage);
        if (law.kind === 'decorrelator') {
          const wanted = columns.powersOf({
            columns: [...incoming.keys()],
            transfers: [...incoming.values()],
          });
          const found = columns.powersOf(row);
          wanted.forEach((power, signal) => {
            expect(flat(found.get(signal)), `${id}, signal ${signal}`).toBeCloseTo(flat(power), 6);
            if (flat(power) > 0) reverberating += 1;
          });
          return;
        }
        const gain = 10 ** ((compression.get(stage) ?? 0) / 20);
        if (gain < 1) compressing += 1;
        const largest = Math.max(1e-12, ...[...incoming.values()].map(Math.abs));
        row.columns.forEach((column, index) => {
          const wanted = gain * (incoming.get(column) ?? 0);
          const off = Math.abs(flat(row.transfers[index]) - wanted) / largest;
          expect(off, `${id}, column ${column}`).toBeLessThan(1e-6);
        });
      });
    }),
    { seed: 909, numRuns: 250 },
  );
  expect(compressing).toBeGreaterThan(20);
  expect(reverberating).toBeGreaterThan(20);
});

test('every compressor turns down what its curve asks for at the level it hears, to 1e-6 dB', () => {
  fc.assert(
    fc.property(setups, (setup) => {
      const solution = simulate(setup);
      solution.circuit.stages.forEach(({ id, law }, stage) => {
        if (law.kind !== 'compressor' || !solution.rows[stage]) return;
        const heard = law.listensTo.reduce((sum, one) => sum + powerOf(solution, one), 0);
        const wanted = compressionGain(law.curve, dbu(10 * Math.log10(heard)));
        expect(solution.compression.get(stage), id).toBeCloseTo(wanted, 6);
      });
    }),
    { seed: 910, numRuns: 250 },
  );
});
