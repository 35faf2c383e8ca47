import { expect, test } from 'vitest';
import { levelOf, parseSetup, simulate } from '../../simulator/index.ts';
import { holdAgainstFile, RUNS } from './agreement.ts';
import { Census } from './census.ts';
import { gainElsewhere, placesToCompare, SILENT_BELOW, Tally } from './comparison.ts';
import type { Network } from './network.ts';
import { randomSetup } from './random-setup.ts';
import { type Settled, settle } from './settle.ts';
import type { SetupData } from './setup-file.ts';
import { networkToMatrix } from './setup-to-matrix.ts';
import { setupToNetwork } from './setup-to-network.ts';
import { ringsOf, stabilityOf } from './stability.ts';
import { COMPRESSOR_FEATURES, workingCompressors } from './working-compressors.ts';

/** Setups with compressors: solved again and again, until no gain changes any more. */

function compareLevels(
  tally: Tally,
  census: Census,
  seed: number,
  setup: SetupData,
  settled: Settled,
): void {
  const { elsewhere } = settled;
  tally.rigs += 1;
  if (elsewhere.loops > 0) tally.looped += 1;
  census.add(workingCompressors(settled));
  const solution = simulate(parseSetup('random.json', JSON.stringify(setup)));
  for (const place of placesToCompare(setup, elsewhere, seed)) {
    for (const { id, levelDbfs } of setup.rig.box.tracks) {
      const born = levelDbfs + setup.rig.converter.fullScaleDbu;
      const gain = gainElsewhere(elsewhere, id, place);
      const wanted = gain === undefined ? undefined : gain + born;
      const where = `setup ${seed}, ${id} at ${place}`;
      tally.compare(where, levelOf(solution, id, place), wanted, born - SILENT_BELOW);
    }
  }
}

const DEVICES = ['compressor', 'compressor', 'gain', 'reverb'] as const;

test('levels agree with mathjs on 90 random rigs with compressors, to 0.0001 dB', {
  timeout: 120_000,
}, () => {
  const tally = new Tally(RUNS['mathjs-compressors']);
  const census = new Census();
  for (let seed = 3001; tally.rigs < 90; seed += 1) {
    const setup = randomSetup(seed, { strips: [2, 12], devices: DEVICES, loops: false });
    const settled = settle(setupToNetwork(setup));
    if (settled) compareLevels(tally, census, seed, setup, settled);
    else tally.undecided += 1;
  }
  holdAgainstFile('mathjs-compressors', tally);
  census.expectAll([
    COMPRESSOR_FEATURES.works,
    COMPRESSOR_FEATURES.knee,
    COMPRESSOR_FEATURES.linked,
  ]);
  expect(tally.undecided).toBe(0);
});

/** Whether a loop that dies away leads through a compressor at rest. */
function loopsThroughCompressor(network: Network): boolean {
  const system = networkToMatrix(network, 1000);
  return ringsOf(system).some(
    (ring) =>
      network.parts.some(
        ({ kind, from }) =>
          kind === 'compressor' &&
          [from].flat().some((node) => ring.has(system.indexOf.get(node) ?? -1)),
      ) && stabilityOf(system, ring) === 'stable',
  );
}

test('levels agree with mathjs on 60 random rigs with compressors in loops, to 0.0001 dB', {
  timeout: 120_000,
}, () => {
  const tally = new Tally(RUNS['mathjs-compressors-in-loops']);
  const census = new Census();
  for (let seed = 3601; tally.rigs < 60; seed += 1) {
    const setup = randomSetup(seed, { strips: [2, 10], devices: DEVICES, loops: true });
    const network = setupToNetwork(setup);
    if (!loopsThroughCompressor(network)) continue;
    const settled = settle(network);
    if (settled) compareLevels(tally, census, seed, setup, settled);
    else tally.undecided += 1;
  }
  holdAgainstFile('mathjs-compressors-in-loops', tally);
  census.expectAll([COMPRESSOR_FEATURES.inLoop]);
  expect(tally.undecided).toBeLessThan(5);
});
