import { expect, test } from 'vitest';
import { levelOf, parseSetup, simulate } from '../../simulator/index.ts';
import { holdAgainstFile, RUNS } from './agreement.ts';
import { gainElsewhere, placesToCompare, SILENT_BELOW, Tally } from './comparison.ts';
import { solveWithMathjs } from './engines.ts';
import type { Network, Part } from './network.ts';
import { randomSetup } from './random-setup.ts';
import { networkToMatrix } from './setup-to-matrix.ts';
import { setupToNetwork } from './setup-to-network.ts';
import { type Elsewhere, solveElsewhere } from './solve-elsewhere.ts';

/** Setups with compressors and without loops: solved again and again, until no gain changes any more. */

const MOST_ROUNDS = 30;

function settleElsewhere(network: Network): Elsewhere | undefined {
  let gains = new Map<Part, number>();
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const solved = solveElsewhere(networkToMatrix(network, 1000, gains), solveWithMathjs);
    if (!solved) return undefined;
    const next = new Map<Part, number>();
    for (const part of network.parts) {
      if (part.kind !== 'compressor') continue;
      next.set(part, gainReduction(part, levelHeard(solved, part.from)));
    }
    const moved = [...next].some(([part, gain]) => Math.abs(gain - (gains.get(part) ?? 0)) > 1e-11);
    if (!moved) return solved;
    gains = next;
  }
  return undefined;
}

/** Level of all sources together at some nodes, in dBu. */
function levelHeard({ system, powers }: Elsewhere, nodes: readonly string[]): number {
  let power = 0;
  system.network.sources.forEach(({ levelDbu }, source) => {
    for (const node of nodes) {
      power += 10 ** (levelDbu / 10) * (powers[source]?.[system.indexOf.get(node) ?? -1] ?? 0);
    }
  });
  return 10 * Math.log10(power);
}

/**
 * Gain of a compressor at a level, from the piecewise curve of Giannoulis, Massberg and Reiss (2012):
 * x; x + (1/R − 1)(x − T + W/2)²/(2W) within the knee; T + (x − T)/R.
 */
function gainReduction(part: Part & { kind: 'compressor' }, x: number): number {
  const { threshold: t, ratio: r, knee: w } = part;
  if (x === -Infinity || x - t <= -w / 2) return 0;
  if (x - t < w / 2) return ((1 / r - 1) * (x - t + w / 2) ** 2) / (2 * w);
  return t + (x - t) / r - x;
}

test('levels agree with mathjs on 40 random rigs with compressors, to 0.0001 dB', {
  timeout: 120_000,
}, () => {
  const tally = new Tally(RUNS['mathjs-compressors']);
  let working = 0;
  for (let seed = 3001; tally.rigs < 40; seed += 1) {
    const setup = randomSetup(seed, {
      strips: [2, 12],
      devices: ['compressor', 'compressor', 'gain', 'reverb'],
      loops: false,
    });
    const elsewhere = settleElsewhere(setupToNetwork(setup));
    if (!elsewhere) {
      tally.undecided += 1;
      continue;
    }
    tally.rigs += 1;
    const solution = simulate(parseSetup('random.json', JSON.stringify(setup)));
    if ([...solution.compression.values()].some((gain) => gain < -1)) working += 1;
    for (const place of placesToCompare(setup, elsewhere, seed)) {
      for (const { id, levelDbfs } of setup.rig.box.tracks) {
        const born = levelDbfs + setup.rig.converter.fullScaleDbu;
        const gain = gainElsewhere(elsewhere, id, place) ?? Number.NaN;
        const where = `setup ${seed}, ${id} at ${place}`;
        tally.compare(where, levelOf(solution, id, place), gain + born, born - SILENT_BELOW);
      }
    }
  }
  holdAgainstFile('mathjs-compressors', tally);
  expect(working).toBeGreaterThanOrEqual(15);
  expect(tally.undecided).toBe(0);
});
