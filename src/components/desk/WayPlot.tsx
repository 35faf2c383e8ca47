import type { Path } from '../../../simulator/index.ts';
import { levelAxis, shareAlong } from '../../plot/level-axis.ts';
import { type Point, staircase } from '../../plot/staircase.ts';
import { tightestOf, wayLevels } from '../../plot/way-levels.ts';
import { headroomFigure, levelText, pathRows, waySentence, zeroOf } from '../../text/index.ts';
import { LevelGrid } from './LevelGrid.tsx';
import { PlotNumbers } from './PlotNumbers.tsx';
import type { Scene } from './scene.ts';

const [WIDTH, ROW] = [600, 40];
const STEP_DB = 20;

/** The level of a signal along one way as a staircase, place under place, between the noise and the clip levels. */
export function WayPlot({ scene, path }: { scene: Scene; path: Path }) {
  const { setup, solution, scale } = scene;
  const names = new Map(
    pathRows(setup, path, { every: true, scale }).map((row) => [row.place, row.name]),
  );
  const telling = new Set(pathRows(setup, path).map(({ place }) => place));
  const levels = wayLevels(solution, path, telling);
  const axis = levelAxis(
    levels.flatMap(({ level, noise, headroom }) => [
      level,
      noise ?? level,
      ...(headroom ? [headroom.peak, headroom.clip] : []),
    ]),
    zeroOf(scale),
    STEP_DB,
  );
  const size = { width: WIDTH, row: ROW };
  const height = levels.length * ROW;
  const acrossAt = (level: number) => WIDTH * shareAlong(axis, level);
  const caption = waySentence(setup.rig, path, tightestOf(levels), scale);
  const text = (level: number | undefined) => levelText(level, 1, scale);
  return (
    <figure class="plot">
      <svg viewBox={`-30 -30 ${WIDTH + 60} ${height + 66}`} role="img" aria-label={caption}>
        <LevelGrid axis={axis} scale={scale} width={WIDTH} height={height} />
        {staircase(
          levels.map(({ noise }) => noise),
          axis,
          size,
        ).map((piece) => (
          <polyline key={piece[0]?.join()} class="plot-noise" points={pointsText(piece)} />
        ))}
        {levels.map(({ place, headroom }, index) => {
          if (!headroom) return null;
          const down = (index + 0.5) * ROW;
          const [peak, clip] = [acrossAt(headroom.peak), acrossAt(headroom.clip)];
          return (
            <g key={place} class={headroom.headroom < 0 ? 'plot-room plot-clips' : 'plot-room'}>
              {headroom.peak > -Infinity && <line x1={peak} x2={clip} y1={down} y2={down} />}
              <line class="plot-clip" x1={clip} x2={clip} y1={down - 12} y2={down + 12} />
            </g>
          );
        })}
        {staircase(
          levels.map(({ level }) => level),
          axis,
          size,
        ).map((piece) => (
          <polyline key={piece[0]?.join()} class="plot-line" points={pointsText(piece)} />
        ))}
        {levels.map(({ place }, index) => (
          <text key={place} class="plot-name" x={-24} y={index * ROW + 26}>
            {names.get(place)}
          </text>
        ))}
      </svg>
      <figcaption>
        {caption} Thick: the level of this way. Dashed: the noise of all stages before. Thin: from
        the peaks of all that comes there up to where it clips.
      </figcaption>
      <PlotNumbers
        of="The way"
        head={['Place', 'This way', 'Noise', 'Peaks of all', 'Clips at', 'Headroom']}
        rows={levels.map(({ place, level, noise, headroom }) => [
          names.get(place) ?? place,
          text(level),
          text(noise),
          headroom ? text(headroom.peak) : '',
          headroom ? text(headroom.clip) : '',
          headroom ? `${headroomFigure(headroom.headroom)} dB` : '',
        ])}
      />
    </figure>
  );
}

const pointsText = (points: readonly Point[]): string =>
  points.map(([across, down]) => `${across.toFixed(1)},${down}`).join(' ');
