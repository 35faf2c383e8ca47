import { useMemo, useState } from 'preact/hooks';
import { outputPlace, paths, workingCompressors } from '../../../simulator/index.ts';
import { sourceName } from '../../text/index.ts';
import { CompressorPlot } from './CompressorPlot.tsx';
import { ResponsePlot } from './ResponsePlot.tsx';
import type { Scene } from './scene.ts';
import { WayPlot } from './WayPlot.tsx';

/** What the followed source does on its way to one output, and what compressors do, as drawings with their numbers. */
export function Plots({ scene }: { scene: Scene }) {
  const { id, setup, solution, follow } = scene;
  const { outputs } = setup.rig;
  const [wantedOutput, setOutput] = useState('');
  const [wantedWay, setWay] = useState(0);
  const output = outputs.find((one) => one.id === wantedOutput) ?? outputs[0];
  const place = outputPlace(output?.id ?? '');
  const ways = useMemo(() => paths(solution, follow, place), [solution, follow, place]);
  const way = Math.min(wantedWay, ways.length - 1);
  const path = ways[way];
  return (
    <section class="plots" aria-label="Plots">
      <h4>Plots</h4>
      <p class="plots-choice">
        <label for={`${id}-plot-output`}>{sourceName(setup.rig, follow)} to</label>
        <select
          id={`${id}-plot-output`}
          value={output?.id}
          onChange={({ currentTarget }) => setOutput(currentTarget.value)}
        >
          {outputs.map((one) => (
            <option key={one.id} value={one.id}>
              {one.label}
            </option>
          ))}
        </select>
        {ways.length > 1 && (
          <>
            <label for={`${id}-plot-way`}>by way</label>
            <select
              id={`${id}-plot-way`}
              value={way}
              onChange={({ currentTarget }) => setWay(Number(currentTarget.value))}
            >
              {ways.map(({ signal }, index) => (
                <option key={`${signal} ${index}`} value={index}>
                  {index + 1} of {ways.length} ({sourceName(setup.rig, signal)})
                </option>
              ))}
            </select>
          </>
        )}
      </p>
      {path ? <WayPlot scene={scene} path={path} /> : <p>It does not arrive there.</p>}
      <ResponsePlot scene={scene} place={place} />
      {workingCompressors(solution).map((compressor) => (
        <CompressorPlot key={compressor.place} scene={scene} compressor={compressor} />
      ))}
    </section>
  );
}
