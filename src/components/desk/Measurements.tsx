import {
  clippingStages,
  firstToClip,
  noiseAt,
  noiseShares,
  outputPlace,
  workingCompressors,
} from '../../../simulator/index.ts';
import {
  clippingSentence,
  compressionSentence,
  firstToClipSentence,
  loopSentence,
  noiseSentence,
} from '../../text/index.ts';
import { Meters } from './Meters.tsx';
import { Plots } from './Plots.tsx';
import type { Scene } from './scene.ts';
import { shownAtRest } from './shown-at-rest.tsx';

/**
 * What is read beside levels: meters, noise, headroom, compressors, loops, and plots. The meters follow the hand,
 * the rest as soon as it rests.
 */
export const Measurements = ({ scene }: { scene: Scene }) => (
  <div class="measurements">
    <Meters scene={scene} />
    <Readings scene={scene} />
  </div>
);

const Readings = shownAtRest(({ scene }: { scene: Scene }) => (
  <>
    <section aria-label="Measurements">
      <h4>Measurements</h4>
      <Sentences scene={scene} />
    </section>
    <Plots scene={scene} />
  </>
));

/** Noise, headroom, compressors and loops in words. */
function Sentences({ scene }: { scene: Scene }) {
  const { setup, solution, scale } = scene;
  const { rig } = setup;
  const noises = rig.outputs.map(({ id }) => {
    const place = outputPlace(id);
    return noiseSentence(rig, place, noiseAt(solution, place), noiseShares(solution, place), scale);
  });
  const clipping = clippingSentence(rig, clippingStages(solution));
  const compressors = workingCompressors(solution).map(({ place, gain }) =>
    compressionSentence(rig, place, gain),
  );
  const loops = solution.loops.map(({ ring, gain, stable }) => {
    const places = ring.map((stage) => solution.circuit.stages[stage]?.place ?? '');
    return loopSentence(rig, { places, gain, stable });
  });
  const sentences = [
    ...noises,
    firstToClipSentence(rig, firstToClip(solution), scale),
    ...(clipping ? [clipping] : []),
    ...compressors,
    ...loops,
  ];
  return (
    <ul>
      {sentences.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  );
}
