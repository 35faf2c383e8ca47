import { expect, test } from 'vitest';
import { noiseAt, parseSetup, simulate } from '../../simulator/index.ts';
import { holdAgainstFile, RUNS } from './agreement.ts';
import { levelElsewhere, Tally } from './comparison.ts';
import { solveWithMathjs } from './engines.ts';
import { filterFeaturesOf } from './filter-features.ts';
import { randomSetup } from './random-setup.ts';
import { networkToMatrix } from './setup-to-matrix.ts';
import { setupToNetwork } from './setup-to-network.ts';
import { solveElsewhere } from './solve-elsewhere.ts';

/** The documented points: 31 third-octave bands around 1 kHz, 16 points in each, evenly spaced on a logarithmic axis. */
const POINTS = Array.from(
  { length: 31 * 16 },
  (_, index) => 1000 * 10 ** ((-17 - 0.5 + (index + 0.5) / 16) / 10),
);
/** Points that are evenly spaced so stand for as many hertz each as their frequency says; white noise ends at 20 kHz. */
const HEARD = POINTS.filter((frequency) => frequency <= 20_000);
const WHOLE = HEARD.reduce((sum, frequency) => sum + frequency, 0);

/** Below this, in dBu, both count as no noise. */
const NO_NOISE = -250;

test('noiseAt() agrees with mathjs on 3 random rigs with filters and delays, to 0.0001 dB', {
  timeout: 120_000,
}, () => {
  const tally = new Tally(RUNS['mathjs-noise-spectra']);
  for (let seed = 8001; tally.rigs < 3; seed += 1) {
    const setup = randomSetup(seed, {
      strips: [2, 3],
      devices: ['equaliser', 'equaliser', 'delay', 'gain', 'reverb'],
      loops: false,
      latency: true,
    });
    const network = setupToNetwork(setup);
    if (!filterFeaturesOf(network).includes('an equaliser')) continue;
    tally.rigs += 1;
    const noisy = { ...network, sources: network.noises };
    const powers = new Map([...network.places.keys()].map((place) => [place, 0]));
    for (const frequency of HEARD) {
      const alone = solveElsewhere(networkToMatrix(noisy, frequency), solveWithMathjs);
      if (!alone) throw new Error(`A loop in setup ${seed}.`);
      for (const [place, nodes] of network.places) {
        const power = 10 ** ((levelElsewhere(alone, nodes) ?? Number.NaN) / 10);
        powers.set(place, (powers.get(place) ?? 0) + (power * frequency) / WHOLE);
      }
    }
    const solution = simulate(parseSetup('random.json', JSON.stringify(setup)));
    for (const [place, power] of powers) {
      const wanted = 10 * Math.log10(power);
      tally.compare(`setup ${seed}, ${place}`, noiseAt(solution, place), wanted, NO_NOISE);
    }
  }
  holdAgainstFile('mathjs-noise-spectra', tally);
  expect(tally.comparisons - tally.silent).toBeGreaterThan(100);
});
