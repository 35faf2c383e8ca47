import { type Browser, chromium } from '@playwright/test';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Hz, levelOf, parseSetup, response, simulate } from '../../simulator/index.ts';
import { findBrowser } from '../config/find-browser.ts';
import { holdAgainstFile, RUNS } from './agreement.ts';
import { Tally } from './comparison.ts';
import { randomSetup } from './random-setup.ts';
import { renderGraphs } from './render-graphs.ts';
import type { SetupData } from './setup-file.ts';
import { setupToMatrix } from './setup-to-matrix.ts';
import { type AudioGraph, setupToWebAudio } from './setup-to-web-audio.ts';
import { ringsOf } from './stability.ts';

/** Setups without loops, rendered by a browser's Web Audio: impulses in, impulse responses out. */

const found = await findBrowser().catch((error: Error) => error);
if (found instanceof Error) console.warn(`SKIPPED: Web Audio needs a browser.\n${found.message}`);

/** Samples are single floats: what lies this far below a source, in dB, is silence or rounding. */
const FLOAT_SILENT_BELOW = 90;
/** As many channels as a buffer may have. */
const MOST_CHANNELS = 32;

/** Frames in which a response dies away: 0.34 s. */
const RESPONSE_FRAMES = 16_384;
/**
 * None lower: at 31.5 Hz a BiquadFilterNode renders up to 0.02 dB beside what its own
 * `getFrequencyResponse()` says, for a high-pass at 300 Hz, by the rounding of its samples.
 */
const FREQUENCIES = [160, 240, 1013, 2750, 9400, 17_800];

interface Rendered {
  readonly seed: number;
  readonly setup: SetupData;
  readonly graph: AudioGraph;
  /** By recorded node, input and frequency. */
  readonly powers: readonly (readonly (readonly number[])[])[];
}

describe.skipIf(found instanceof Error)('Web Audio', () => {
  let browser: Browser | undefined;

  beforeAll(async () => {
    if (found instanceof Error) return;
    const args = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
    const env = { ...(process.env as Record<string, string>), ...found.env };
    browser = await chromium.launch({ executablePath: found.executablePath, args, env });
  }, 60_000);
  afterAll(async () => {
    await browser?.close();
  });

  async function render(
    setups: readonly (readonly [number, SetupData])[],
    spacing: number,
    frequencies: readonly number[],
  ): Promise<Rendered[]> {
    const graphs = setups.map(([seed, setup]) => {
      if (ringsOf(setupToMatrix(setup, 1000)).length > 0)
        throw new Error(`A loop in setup ${seed}.`);
      return setupToWebAudio(setup, placesRecorded(setup), spacing);
    });
    if (browser === undefined) throw new Error('The browser did not start.');
    const page = await browser.newPage();
    const powers = await page.evaluate(renderGraphs, { graphs, frequencies });
    await page.close();
    return setups.map(([seed, setup], index) => ({
      seed,
      setup,
      graph: graphs[index] as AudioGraph,
      powers: powers[index] ?? [],
    }));
  }

  test('levels agree with GainNodes and StereoPannerNodes on 40 random rigs, to 0.01 dB', {
    timeout: 120_000,
  }, async () => {
    const tally = new Tally(RUNS['web-audio-flat']);
    const kinds = { devices: ['gain'], loops: false } as const;
    const setups = seedsFrom(5001, 40).map((seed) => {
      const strips = seed % 8 === 0 ? ([16, 48] as const) : ([2, 12] as const);
      return [seed, randomSetup(seed, { ...kinds, strips })] as const;
    });
    for (const { seed, setup, graph, powers } of await render(setups, 1, [1000])) {
      tally.rigs += 1;
      const solution = simulate(parseSetup('random.json', JSON.stringify(setup)));
      forEachPair(setup, graph, (track, place, inputs, outputs) => {
        let power = 0;
        for (const input of inputs) {
          for (const output of outputs) power += powers[output]?.[input]?.[0] ?? Number.NaN;
        }
        const born = track.levelDbfs + setup.rig.converter.fullScaleDbu;
        const where = `setup ${seed}, ${track.id} at ${place}`;
        const wanted = 10 * Math.log10(power) + born;
        tally.compare(where, levelOf(solution, track.id, place), wanted, born - FLOAT_SILENT_BELOW);
      });
    }
    holdAgainstFile('web-audio-flat', tally);
    expect(tally.comparisons - tally.silent).toBeGreaterThan(400);
  });

  test('response() agrees with BiquadFilterNodes and DelayNodes on 16 random rigs, to 0.01 dB', {
    timeout: 120_000,
  }, async () => {
    const tally = new Tally(RUNS['web-audio-spectra']);
    const setups = seedsFrom(6001, 16).map((seed) => {
      const kinds = {
        strips: [2, 6],
        devices: ['equaliser', 'delay', 'equaliser', 'gain'],
        loops: false,
        // Whole frames at 48 kHz: a DelayNode draws straight lines between frames.
        delays: ['0.5', '1', '2', '5', '8', '20'],
        latency: seed % 2 > 0,
      } as const;
      return [seed, randomSetup(seed, kinds)] as const;
    });
    for (const { seed, setup, graph, powers } of await render(
      setups,
      RESPONSE_FRAMES,
      FREQUENCIES,
    )) {
      tally.rigs += 1;
      const solution = simulate(parseSetup('random.json', JSON.stringify(setup)));
      forEachPair(setup, graph, (track, place, inputs, outputs) => {
        const heard = response(solution, track.id, place, FREQUENCIES as Hz[]);
        FREQUENCIES.forEach((frequency, index) => {
          let power = 0;
          for (const input of inputs) {
            for (const output of outputs) {
              power += powers[output]?.[input]?.[index] ?? Number.NaN;
            }
          }
          const wanted = 10 * Math.log10(power / inputs.length);
          const where = `setup ${seed}, ${track.id} at ${place}, ${frequency} Hz`;
          tally.compare(where, heard?.[index], wanted, -FLOAT_SILENT_BELOW);
        });
      });
    }
    holdAgainstFile('web-audio-spectra', tally);
    expect(tally.comparisons - tally.silent).toBeGreaterThan(400);
  });
});

const seedsFrom = (first: number, count: number) =>
  Array.from({ length: count }, (_, index) => first + index);

/** Outputs, buses and devices, as many as there are channels. */
function placesRecorded({ rig }: SetupData): string[] {
  const places = [
    ...rig.outputs.map(({ id }) => `out.${id}`),
    'desk.main.out',
    ...(rig.desk.controlRoom ? ['desk.control.out'] : []),
    ...rig.box.captures.map(({ id }) => `box.${id}.in`),
    ...rig.desk.auxes.map(({ id }) => `desk.${id}.out`),
    ...rig.desk.subgroups.map(({ id }) => `desk.${id}.out`),
    ...rig.rack.map(({ id }) => `rack.${id}.out`),
  ];
  return places.slice(0, MOST_CHANNELS / 2);
}

/** Visits each track at each recorded place, with the numbers of its impulses and of its channels. */
function forEachPair(
  setup: SetupData,
  graph: AudioGraph,
  visit: (
    track: SetupData['rig']['box']['tracks'][number],
    place: string,
    inputs: readonly number[],
    outputs: readonly number[],
  ) => void,
): void {
  const under = (names: readonly string[], place: string) =>
    names.flatMap((name, index) => (name.replace(/\.[lr]$/, '') === place ? [index] : []));
  for (const track of setup.rig.box.tracks) {
    const inputs = under(graph.inputs, `box.${track.id}.source`);
    for (const place of placesRecorded(setup)) {
      visit(track, place, inputs, under(graph.outputs, place));
    }
  }
}
