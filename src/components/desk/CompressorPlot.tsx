import type { WorkingCompressor } from '../../../simulator/index.ts';
import { curvePoints, pointAt } from '../../plot/compressor-curve.ts';
import { levelAxis, shareAlong } from '../../plot/level-axis.ts';
import { curveSentence, levelText, markText, zeroOf } from '../../text/index.ts';
import { LevelGrid } from './LevelGrid.tsx';
import { PlotNumbers } from './PlotNumbers.tsx';
import type { Scene } from './scene.ts';

const SIDE = 300;
const STEP_DB = 10;
/** How far around the threshold the curve is drawn, in dB, even where nothing so loud or quiet comes. */
const AROUND = 20;

/** The static curve of a compressor, with the point where it works now. */
export function CompressorPlot({
  scene,
  compressor,
}: {
  scene: Scene;
  compressor: WorkingCompressor;
}) {
  const { setup, scale } = scene;
  const { curve, heard } = compressor;
  const { threshold } = curve;
  const axis = levelAxis([threshold - AROUND, threshold + AROUND, heard], zeroOf(scale), STEP_DB);
  const acrossAt = (level: number) => SIDE * shareAlong(axis, level);
  const downAt = (level: number) => SIDE - acrossAt(level);
  const now = pointAt(curve, heard);
  const caption = curveSentence(setup.rig, compressor, scale);
  const line = curvePoints(curve, axis.lowest, axis.highest).map(
    ({ into, out }) => `${acrossAt(into).toFixed(1)},${downAt(out).toFixed(1)}`,
  );
  const rows = [
    ...axis.marks.map((mark) => ({ name: '', ...pointAt(curve, mark) })),
    { name: ' (threshold)', ...pointAt(curve, threshold) },
    { name: ' (now)', ...now },
  ].sort((one, other) => one.into - other.into);
  return (
    <figure class="plot plot-square">
      <svg viewBox={`-50 -26 ${SIDE + 68} ${SIDE + 62}`} role="img" aria-label={caption}>
        <LevelGrid axis={axis} scale={scale} width={SIDE} height={SIDE} />
        {axis.marks.map((mark) => (
          <g key={mark}>
            <line class="plot-grid" x1={0} x2={SIDE} y1={downAt(mark)} y2={downAt(mark)} />
            <text x={-6} y={downAt(mark) + 5} text-anchor="end">
              {markText(mark, scale)}
            </text>
          </g>
        ))}
        <line class="plot-unity" x1={0} x2={SIDE} y1={SIDE} y2={0} />
        <line
          class="plot-threshold"
          x1={acrossAt(threshold)}
          x2={acrossAt(threshold)}
          y1={0}
          y2={SIDE}
        />
        <polyline class="plot-line" points={line.join(' ')} />
        <circle class="plot-now" cx={acrossAt(now.into)} cy={downAt(now.out)} r={6} />
      </svg>
      <figcaption>
        {caption} Across: what comes in; up: what leaves before make-up. Dashed: nothing turned
        down.
      </figcaption>
      <PlotNumbers
        of="The curve"
        head={['Comes in', 'Leaves before make-up']}
        rows={rows.map(({ name, into, out }) => [
          `${levelText(into, 1, scale)}${name}`,
          levelText(out, 1, scale),
        ])}
      />
    </figure>
  );
}
