import { useMemo } from 'preact/hooks';
import type { Address } from '../../../simulator/index.ts';
import { responseCurve, shareOfFrequency } from '../../plot/response-curve.ts';
import { frequencyText, responseSentence, signed } from '../../text/index.ts';
import { PlotNumbers } from './PlotNumbers.tsx';
import type { Scene } from './scene.ts';

const [TOP_DB, BOTTOM_DB] = [12, -36];
const [WIDTH, HEIGHT] = [600, 200];
const MARKED_DB = [12, 0, -12, -24, -36];
const MARKED_HZ = [100, 1000, 10_000];

const acrossAt = (frequency: number) => WIDTH * shareOfFrequency(frequency);
const downAt = (gain: number) =>
  (HEIGHT * (TOP_DB - Math.max(BOTTOM_DB, Math.min(TOP_DB, gain)))) / (TOP_DB - BOTTOM_DB);

/** How the followed source arrives at a place, by frequency. Nothing where all frequencies are alike. */
export function ResponsePlot({ scene, place }: { scene: Scene; place: Address }) {
  const { setup, solution, follow } = scene;
  const curve = useMemo(() => responseCurve(solution, follow, place), [solution, follow, place]);
  if (!curve) return null;
  const caption = responseSentence(setup.rig, follow, place, curve);
  const line = curve.line.map(
    ({ frequency, gain }) => `${acrossAt(frequency).toFixed(1)},${downAt(gain).toFixed(1)}`,
  );
  return (
    <figure class="plot response">
      <svg viewBox={`-44 -12 ${WIDTH + 66} ${HEIGHT + 42}`} role="img" aria-label={caption}>
        {MARKED_DB.map((gain) => (
          <g key={gain}>
            <line class="plot-grid" x1={0} x2={WIDTH} y1={downAt(gain)} y2={downAt(gain)} />
            <text x={-8} y={downAt(gain) + 5} text-anchor="end">
              {signed(gain, 0)}
            </text>
          </g>
        ))}
        {MARKED_HZ.map((frequency) => (
          <g key={frequency}>
            <line
              class="plot-grid"
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
        <polyline class="plot-line" points={line.join(' ')} />
      </svg>
      <figcaption>{caption}</figcaption>
      <PlotNumbers
        of="The response"
        head={['Frequency', 'Gain']}
        rows={curve.thirds.map(({ frequency, gain }) => [
          frequencyText(frequency),
          `${signed(gain)} dB`,
        ])}
      />
    </figure>
  );
}
