import { type MeterAxis, marksOnMeter, shareOnMeter } from '../../plot/meter-axis.ts';
import { type LevelScale, markText } from '../../text/index.ts';
import { METER_LENGTH } from './MeterBar.tsx';

/** The marks under the meters: those of IEC 60268-18, read in the unit that was chosen. The lowest stand too close for words. */
export function MeterScale({ axis, scale }: { axis: MeterAxis; scale: LevelScale }) {
  const marks = marksOnMeter(axis);
  return (
    <svg class="meter-scale" viewBox={`0 0 ${METER_LENGTH} 40`} aria-hidden="true">
      {marks.map((mark, index) => {
        const across = METER_LENGTH * shareOnMeter(axis, mark);
        return (
          <g key={mark}>
            <line class="plot-grid" x1={across} x2={across} y1={0} y2={10} />
            {index >= 2 && (
              <text x={across} y={32} text-anchor="middle">
                {markText(mark, scale)}
                {mark === axis.fullScale && scale.unit !== 'V' && ` ${scale.unit}`}
              </text>
            )}
          </g>
        );
      })}
    </svg>
  );
}
