import { type LevelAxis, shareAlong } from '../../plot/level-axis.ts';
import { type LevelScale, markText } from '../../text/index.ts';

interface Props {
  axis: LevelAxis;
  scale: LevelScale;
  width: number;
  height: number;
}

/** The marks of an axis of levels that runs across, with the unit above its right end. */
export function LevelGrid({ axis, scale, width, height }: Props) {
  return (
    <>
      {axis.marks.map((mark) => {
        const across = width * shareAlong(axis, mark);
        return (
          <g key={mark}>
            <line class="plot-grid" x1={across} x2={across} y1={0} y2={height} />
            <text x={across} y={height + 26} text-anchor="middle">
              {markText(mark, scale)}
            </text>
          </g>
        );
      })}
      {scale.unit !== 'V' && (
        <text x={width} y={-8} text-anchor="end">
          {scale.unit}
        </text>
      )}
    </>
  );
}
