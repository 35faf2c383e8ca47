import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  CONTROL_ROOM,
  controls,
  levelAt,
  levelOf,
  misfitOf,
  outputPlace,
  part,
  type Solution,
  signalsOf,
  simulate,
} from '../../simulator/index.ts';
import type { AudioGraph } from '../../src/audition/audio-graph.ts';
import { FULL_VOLUME_RATIO } from '../../src/audition/calibration.ts';
import { listenAt } from '../../src/audition/listening.ts';
import { findBrowser } from '../config/find-browser.ts';
import { type AudioPage, openAudioPage } from './audio-page.ts';
import type { ResponseOrder } from './render-responses.ts';
import { SETUPS } from './setups.ts';

/** What is heard of every source at every output, rendered by a browser and held against the simulator. */

const found = await findBrowser().catch((error: Error) => error);
if (found instanceof Error) console.warn(`SKIPPED: hearing needs a browser.\n${found.message}`);

/** In dB. */
const TOLERANCE = 0.1;
/** What lies this far below a source, in dB, is rounding of single floats. */
const SILENT_BELOW = 90;

describe.skipIf(found instanceof Error)('rendered levels', () => {
  let page: AudioPage | undefined;
  beforeAll(async () => {
    if (found instanceof Error) return;
    page = await openAudioPage(found);
  }, 60_000);
  afterAll(() => page?.close());

  for (const [title, setup] of Object.entries(SETUPS)) {
    test(`${title}: every source at every output agrees with levelOf(), to ${TOLERANCE} dB`, {
      timeout: 120_000,
    }, async () => {
      const { rig, board } = setup;
      for (const [address, value] of Object.entries(board)) {
        const control = controls(rig).get(address);
        expect(control ? misfitOf(control, value) : 'no control', address).toBeUndefined();
      }
      const solution = simulate(setup);
      const places = [
        ...rig.outputs.map(({ id }) => outputPlace(id)),
        ...(rig.desk.controlRoom ? [part(CONTROL_ROOM, 'out')] : []),
      ];
      const listenings = places.map((place) => listenAt(solution, place));
      const orders = listenings.map(({ graph }) => orderOf(solution, graph));
      const powers = await page?.call<ResponseOrder[], number[][][]>(
        'tests/audition/render-responses.ts',
        'renderResponses',
        orders,
      );
      let compared = 0;
      let worst = 0;
      places.forEach((place, index) => {
        // What is mono is the same in both ears.
        const ears = solution.circuit.stagesAt.get(place)?.length === 2 ? [0, 1] : [0];
        for (const track of rig.box.tracks) {
          let power = 0;
          for (const signal of signalsOf(track)) {
            const order = orders[index]?.signals.indexOf(signal) ?? -1;
            for (const ear of ears) power += powers?.[index]?.[order]?.[ear] ?? 0;
          }
          const guard = listenings[index]?.guard ?? 0;
          const heard = 10 * Math.log10(power / FULL_VOLUME_RATIO ** 2) - guard;
          const wanted = levelOf(solution, track.id, place) ?? Number.NaN;
          const born = track.levelDbfs + rig.converter.fullScaleDbu;
          const where = `${track.id} at ${place}`;
          if (wanted < born - SILENT_BELOW) expect(heard, where).toBeLessThan(born - SILENT_BELOW);
          else {
            compared += 1;
            worst = Math.max(worst, Math.abs(heard - wanted));
            expect(Math.abs(heard - wanted), `${where}: ${heard}, ${wanted}`).toBeLessThan(
              TOLERANCE,
            );
          }
        }
      });
      console.log(`${title}: ${compared} levels, worst ${worst.toFixed(4)} dB`);
      expect(compared).toBeGreaterThan(6);
    });
  }
});

/** Responses of all that plays, each as long as it takes to die away: long where a reverb has something to do. */
function orderOf(solution: Solution, graph: AudioGraph): ResponseOrder {
  const isLong = graph.parts.some(
    ({ action }) =>
      action.kind === 'reverberate' && levelAt(solution, action.stage) !== Number.NEGATIVE_INFINITY,
  );
  const signals = graph.parts.flatMap(({ action }) =>
    action.kind === 'play' ? [action.signal] : [],
  );
  return { graph, signals, frames: isLong ? 2 ** 18 : 2 ** 15 };
}
