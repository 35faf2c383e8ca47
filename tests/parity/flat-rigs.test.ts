import { expect, test } from 'vitest';
import { levelOf, parseSetup, type Solution, simulate } from '../../simulator/index.ts';
import { holdAgainstFile, RUNS } from './agreement.ts';
import { BAY_FEATURES, bayFeaturesOf } from './bay-features.ts';
import { BOX_FEATURES, boxFeaturesOf } from './box-features.ts';
import { Census } from './census.ts';
import { gainElsewhere, placesToCompare, SILENT_BELOW, Tally } from './comparison.ts';
import { DESK_FEATURES, deskFeaturesOf } from './desk-features.ts';
import { type Engine, solveWithMathjs, solveWithMlMatrix } from './engines.ts';
import type { Kinds } from './random-kinds.ts';
import { randomSetup } from './random-setup.ts';
import type { SetupData } from './setup-file.ts';
import { setupToMatrix } from './setup-to-matrix.ts';
import { type Elsewhere, solveElsewhere } from './solve-elsewhere.ts';

/** Setups in which nothing depends on frequency, solved elsewhere from the setup file alone. */

const DEVICES = ['gain', 'reverb'] as const;

/** Levels of every source at the places compared, in dBu. */
function compareLevels(
  tally: Tally,
  setup: SetupData,
  seed: number,
  solution: Solution,
  elsewhere: Elsewhere,
): void {
  tally.rigs += 1;
  if (elsewhere.loops > 0) tally.looped += 1;
  for (const place of placesToCompare(setup, elsewhere, seed)) {
    for (const { id, levelDbfs } of setup.rig.box.tracks) {
      const born = levelDbfs + setup.rig.converter.fullScaleDbu;
      const gain = gainElsewhere(elsewhere, id, place);
      // What is compared is one level: a track counts both its sides.
      const wanted = gain === undefined ? undefined : gain + born;
      const where = `setup ${seed}, ${id} at ${place}`;
      tally.compare(where, levelOf(solution, id, place), wanted, born - SILENT_BELOW);
    }
  }
}

function compareRigs(
  tally: Tally,
  engine: Engine,
  seeds: readonly number[],
  kindsOf: (seed: number) => Kinds,
): Census {
  const census = new Census();
  for (const seed of seeds) {
    const setup = randomSetup(seed, kindsOf(seed));
    const elsewhere = solveElsewhere(setupToMatrix(setup, 1000), engine);
    if (!elsewhere) {
      tally.undecided += 1;
      continue;
    }
    census.add([...boxFeaturesOf(setup), ...deskFeaturesOf(setup), ...bayFeaturesOf(setup)]);
    const solution = simulate(parseSetup('random.json', JSON.stringify(setup)));
    compareLevels(tally, setup, seed, solution, elsewhere);
  }
  return census;
}

const seedsFrom = (first: number, count: number) =>
  Array.from({ length: count }, (_, index) => first + index);

test('levels agree with mathjs on 210 random rigs of 2 to 48 strips, to 0.0001 dB', {
  timeout: 120_000,
}, () => {
  const tally = new Tally(RUNS['mathjs-flat']);
  const census = compareRigs(tally, solveWithMathjs, seedsFrom(1, 220), (seed) => ({
    strips: seed % 5 === 0 ? [16, 48] : [2, 15],
    devices: DEVICES,
    loops: seed % 3 > 0,
  }));
  holdAgainstFile('mathjs-flat', tally);
  census.expectAll([...BOX_FEATURES, ...DESK_FEATURES, ...BAY_FEATURES]);
  expect(tally.rigs).toBeGreaterThanOrEqual(210);
  expect(tally.looped).toBeGreaterThanOrEqual(60);
  expect(tally.unknown).toBeGreaterThan(0);
});

test('levels agree with ml-matrix on 60 random rigs of 2 to 6 strips, to 0.0001 dB', {
  timeout: 120_000,
}, () => {
  const tally = new Tally(RUNS['ml-matrix-flat']);
  compareRigs(tally, solveWithMlMatrix, seedsFrom(1001, 64), (seed) => ({
    strips: [2, 6],
    devices: DEVICES,
    loops: seed % 3 > 0,
  }));
  holdAgainstFile('ml-matrix-flat', tally);
  expect(tally.rigs).toBeGreaterThanOrEqual(60);
  expect(tally.looped).toBeGreaterThanOrEqual(10);
});
