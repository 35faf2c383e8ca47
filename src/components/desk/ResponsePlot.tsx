import { useMemo } from 'preact/hooks';
import {
  type Address,
  type Hz,
  outputPlace,
  response,
  type Solution,
} from '../../../simulator/index.ts';
import { frequencyText, type ResponsePoint, responseSentence, signed } from '../../text/index.ts';
import type { Scene } from './scene.ts';

const [LOWEST, HIGHEST] = [20, 20_000];
/** Steps of the frequency axis: two for each unit of the drawing. */
const STEPS = 1200;
const FREQUENCIES: readonly Hz[] = Array.from(
  { length: STEPS + 1 },
  (_, step) => (LOWEST * (HIGHEST / LOWEST) ** (step / STEPS)) as Hz,
);
/** A response that moves by less, in dB, is flat: nothing to draw. */
const FLAT_DB = 0.05;

const [TOP_DB, BOTTOM_DB] = [12, -36];
const [WIDTH, HEIGHT] = [600, 200];
const MARKED_DB = [12, 0, -12, -24, -36];
const MARKED_HZ = [100, 1000, 10_000];

const acrossAt = (frequency: number) =>
  (WIDTH * Math.log(frequency / LOWEST)) / Math.log(HIGHEST / LOWEST);
const downAt = (gain: number) =>
  (HEIGHT * (TOP_DB - Math.max(BOTTOM_DB, Math.min(TOP_DB, gain)))) / (TOP_DB - BOTTOM_DB);

/** How the followed source arrives at the first output, by frequency. Nothing where all frequencies are alike. */
export function ResponsePlot({ scene }: { scene: Scene }) {
  const { setup, solution, follow } = scene;
  const place = outputPlace(setup.rig.outputs[0]?.id ?? '');
  const points = useMemo(() => pointsOf(solution, follow, place), [solution, follow, place]);
  if (!points) return null;
  const ends = {
    most: points.reduce((most, point) => (point.gain > most.gain ? point : most)),
    least: points.reduce((least, point) => (point.gain < least.gain ? point : least)),
  };
  const caption = responseSentence(setup.rig, follow, place, ends);
  const line = points.map(
    ({ frequency, gain }) => `${acrossAt(frequency).toFixed(1)},${downAt(gain).toFixed(1)}`,
  );
  return (
    <figure class="response">
      <svg viewBox={`-44 -12 ${WIDTH + 66} ${HEIGHT + 42}`} role="img" aria-label={caption}>
        {MARKED_DB.map((gain) => (
          <g key={gain}>
            <line class="response-grid" x1={0} x2={WIDTH} y1={downAt(gain)} y2={downAt(gain)} />
            <text x={-8} y={downAt(gain) + 5} text-anchor="end">
              {signed(gain, 0)}
            </text>
          </g>
        ))}
        {MARKED_HZ.map((frequency) => (
          <g key={frequency}>
            <line
              class="response-grid"
              x1={acrossAt(frequency)}
              x2={acrossAt(frequency)}
              y1={0}
              y2={HEIGHT}
            />
            <text x={acrossAt(frequency)} y={HEIGHT + 24} text-anchor="middle">
              {frequencyText(frequency)}
            </text>
          </g>
        ))}
        <polyline class="response-line" points={line.join(' ')} />
      </svg>
      <figcaption>{caption}</figcaption>
    </figure>
  );
}

/** The response in points; nothing where there is no level, nothing arrives, or all of it is flat. */
function pointsOf(
  solution: Solution,
  source: string,
  place: Address,
): readonly ResponsePoint[] | undefined {
  const gains = response(solution, source, place, FREQUENCIES);
  if (!gains) return undefined;
  const [most, least] = [Math.max(...gains), Math.min(...gains)];
  if (most === -Infinity || most - least < FLAT_DB) return undefined;
  return gains.map((gain, index) => ({ frequency: FREQUENCIES[index] ?? LOWEST, gain }));
}
