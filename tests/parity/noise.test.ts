import { expect, test } from 'vitest';
import { noiseAt, parseSetup, simulate } from '../../simulator/index.ts';
import { holdAgainstFile, RUNS } from './agreement.ts';
import { levelElsewhere, Tally } from './comparison.ts';
import { solveWithMathjs } from './engines.ts';
import { randomSetup } from './random-setup.ts';
import { settle } from './settle.ts';
import { networkToMatrix } from './setup-to-matrix.ts';
import { setupToNetwork } from './setup-to-network.ts';
import { solveElsewhere } from './solve-elsewhere.ts';

/** Below this, in dBu, both count as no noise. */
const NO_NOISE = -250;

/** The noise of every active stage is a source of its own, with the compressors where the music left them. */
test('noiseAt() agrees with mathjs on 60 random rigs, to 0.0001 dB', { timeout: 120_000 }, () => {
  const tally = new Tally(RUNS['mathjs-noise']);
  for (let seed = 7001; tally.rigs < 60; seed += 1) {
    const setup = randomSetup(seed, {
      strips: [2, 12],
      devices: ['compressor', 'gain', 'reverb'],
      loops: seed % 2 > 0,
    });
    const network = setupToNetwork(setup);
    const played = settle(network);
    const noisy = { ...network, sources: network.noises };
    const alone =
      played && solveElsewhere(networkToMatrix(noisy, 1000, played.gains), solveWithMathjs);
    if (!alone) {
      tally.undecided += 1;
      continue;
    }
    tally.rigs += 1;
    if (alone.loops > 0) tally.looped += 1;
    const solution = simulate(parseSetup('random.json', JSON.stringify(setup)));
    for (const [place, nodes] of network.places) {
      const wanted = levelElsewhere(alone, nodes);
      tally.compare(`setup ${seed}, ${place}`, noiseAt(solution, place), wanted, NO_NOISE);
    }
  }
  holdAgainstFile('mathjs-noise', tally);
  expect(tally.looped).toBeGreaterThanOrEqual(5);
});
