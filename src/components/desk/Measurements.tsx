import {
  clippingStages,
  firstToClip,
  noiseAt,
  noiseShares,
  outputPlace,
  type Solution,
} from '../../../simulator/index.ts';
import {
  clippingSentence,
  compressionSentence,
  firstToClipSentence,
  loopSentence,
  noiseSentence,
} from '../../text/index.ts';
import { ResponsePlot } from './ResponsePlot.tsx';
import type { Scene } from './scene.ts';

/** What is read beside levels: noise, headroom, compressors, loops, and the response where it is not flat. */
export function Measurements({ scene }: { scene: Scene }) {
  const { setup, solution } = scene;
  const { rig } = setup;
  const noises = rig.outputs.map(({ id }) => {
    const place = outputPlace(id);
    return noiseSentence(rig, place, noiseAt(solution, place), noiseShares(solution, place));
  });
  const clipping = clippingSentence(rig, clippingStages(solution));
  const compressors = compressorsIn(solution).map(({ place, gain }) =>
    compressionSentence(rig, place, gain),
  );
  const loops = solution.loops.map(({ ring, gain, stable }) => {
    const places = ring.map((stage) => solution.circuit.stages[stage]?.place ?? '');
    return loopSentence(rig, { places, gain, stable });
  });
  const sentences = [
    ...noises,
    firstToClipSentence(rig, firstToClip(solution)),
    ...(clipping ? [clipping] : []),
    ...compressors,
    ...loops,
  ];
  return (
    <section class="measurements" aria-label="Measurements">
      <h4>Measurements</h4>
      <ul>
        {sentences.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      <ResponsePlot scene={scene} />
    </section>
  );
}

/** The compressors that something comes to, with their gains. Legs that listen to one another have one gain. */
function compressorsIn({ circuit, compression, rows, columns }: Solution) {
  const byPlace = new Map<string, number>();
  for (const [stage, gain] of compression) {
    const row = rows[stage];
    const place = circuit.stages[stage]?.place;
    if (row && place !== undefined && columns.powerOf(row) > 0) byPlace.set(place, gain);
  }
  return [...byPlace].map(([place, gain]) => ({ place, gain }));
}
