import { type LevelAxis, shareAlong } from '../../plot/level-axis.ts';
import { type LevelScale, markText } from '../../text/index.ts';

interface Props {
  axis: LevelAxis;
  scale: LevelScale;
  width: number;
  height: number;
}

/** The marks of an axis of levels that runs across, with the unit at its right end. */
export function LevelGrid({ axis, scale, width, height }: Props) {
  return (
    <>
      {axis.marks.map((mark) => {
        const across = width * shareAlong(axis, mark);
        const isLast = mark === axis.marks.at(-1);
        return (
          <g key={mark}>
            <line class="plot-grid" x1={across} x2={across} y1={0} y2={height} />
            <text x={across} y={height + 26} text-anchor={isLast ? 'end' : 'middle'}>
              {markText(mark, scale)}
              {isLast && scale.unit !== 'V' && ` ${scale.unit}`}
            </text>
          </g>
        );
      })}
    </>
  );
}
