import { complex } from 'mathjs';
import { expect, test } from 'vitest';
import { type Hz, parseSetup, response, simulate } from '../../simulator/index.ts';
import { holdAgainstFile, RUNS } from './agreement.ts';
import { boxFeaturesOf, LATE_BOX_FEATURES } from './box-features.ts';
import { Census } from './census.ts';
import { gainElsewhere, placesToCompare, SILENT_BELOW, Tally } from './comparison.ts';
import { largestEigenvalue, solveWithMathjs } from './engines.ts';
import { FILTER_FEATURES, filterFeaturesOf } from './filter-features.ts';
import type { Network } from './network.ts';
import type { Kinds } from './random-kinds.ts';
import { randomSetup } from './random-setup.ts';
import { type LinearSystem, networkToMatrix, setupToMatrix } from './setup-to-matrix.ts';
import { setupToNetwork } from './setup-to-network.ts';
import { type Judge, solveElsewhere } from './solve-elsewhere.ts';
import { condensed, ringsOf, type Stability } from './stability.ts';

/** Setups with filters and delays, solved elsewhere one frequency at a time. */

const FREQUENCIES = [31.5, 240, 1013, 2750, 9400, 17_800];

/** Centres of the third-octave bands: loops are looked at there. */
const LOOP_FREQUENCIES = Array.from({ length: 31 }, (_, index) => 1000 * 10 ** ((index - 17) / 10));

/** How far from unity a loop has to stay to be judged: between two frequencies it may be a little stronger. */
const CLEAR = 0.02;

/**
 * Judges the loops of a network once for all frequencies. One that dies away with the largest magnitude of
 * everything is stable. A plain ring that grows at some frequency is unstable. The rest is undecided:
 * there it depends on how the rings meet, and between which frequencies one looks.
 */
function judgeOverFrequencies(network: Network): Judge {
  let systems: readonly LinearSystem[] | undefined;
  return (_, ring): Stability => {
    systems ??= LOOP_FREQUENCIES.map((frequency) => networkToMatrix(network, frequency));
    const bounds = systems.map((system) =>
      condensed(system, ring, ({ re, im }) => complex(Math.hypot(re, im), 0)),
    );
    const most = bounds[0]?.map((row, to) =>
      row.map((_ratio, from) =>
        complex(Math.max(...bounds.map((bound) => bound[to]?.[from]?.re ?? Infinity)), 0),
      ),
    );
    if (!most) return 'undecided';
    const largest = largestEigenvalue(most);
    if (largest < 1 - CLEAR) return 'stable';
    return most.length === 1 && largest > 1 + CLEAR ? 'unstable' : 'undecided';
  };
}

function compareResponses(tally: Tally, census: Census, seed: number, kinds: Kinds): void {
  const setup = randomSetup(seed, kinds);
  const network = setupToNetwork(setup);
  const judge = judgeOverFrequencies(network);
  const solved = FREQUENCIES.map((frequency) =>
    solveElsewhere(setupToMatrix(setup, frequency), solveWithMathjs, judge),
  );
  const [first] = solved;
  if (!first) {
    tally.undecided += 1;
    return;
  }
  tally.rigs += 1;
  census.add([...boxFeaturesOf(setup), ...filterFeaturesOf(network)]);
  if (ringsOf(first.system).length > 0) tally.looped += 1;
  const solution = simulate(parseSetup('random.json', JSON.stringify(setup)));
  const places = placesToCompare(setup, first, seed).slice(0, PLACES);
  for (const place of places) {
    for (const { id, stereo } of setup.rig.box.tracks.slice(0, TRACKS)) {
      const found = response(solution, id, place, FREQUENCIES as Hz[]);
      solved.forEach((one, index) => {
        const gain = one && gainElsewhere(one, id, place);
        // A response is by how much a source is raised, however many sides it has.
        const wanted = gain === undefined ? undefined : gain - (stereo ? 10 * Math.log10(2) : 0);
        const where = `setup ${seed}, ${id} at ${place}, ${FREQUENCIES[index]} Hz`;
        tally.compare(where, found?.[index], wanted, -SILENT_BELOW);
      });
    }
  }
}

/** `response()` solves anew at each call, so that only some places and tracks are asked for. */
const PLACES = 7;
const TRACKS = 5;

test('response() agrees with mathjs on 80 random rigs with filters and delays, to 0.0001 dB', {
  timeout: 120_000,
}, () => {
  const tally = new Tally(RUNS['mathjs-spectra']);
  const census = new Census();
  for (let seed = 2001; tally.rigs < 80; seed += 1) {
    compareResponses(tally, census, seed, {
      strips: seed % 10 === 0 ? [10, 24] : [2, 9],
      devices: ['gain', 'equaliser', 'equaliser', 'delay', 'delay', 'reverb'],
      loops: seed % 2 > 0,
      feedback: seed % 4 > 1,
      latency: seed % 5 > 0,
    });
  }
  holdAgainstFile('mathjs-spectra', tally);
  census.expectAll([...LATE_BOX_FEATURES, ...FILTER_FEATURES]);
  expect(tally.looped).toBeGreaterThanOrEqual(25);
  expect(tally.undecided).toBeLessThan(20);
});
