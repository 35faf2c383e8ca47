import type { Level } from '../../../simulator/index.ts';
import { type MeterAxis, shareOnMeter } from '../../plot/meter-axis.ts';
import type { MeterReading } from '../../text/index.ts';

/** The length of a meter and its height, in units of the drawing. */
export const METER_LENGTH = 600;
const HEIGHT = 24;
const TICK = 4;

/** One meter as a bar; its figures stand beside it as text. */
export function MeterBar({ reading, axis }: { reading: MeterReading; axis: MeterAxis }) {
  const { rms, peak, noise, limit } = reading;
  const lengthTo = (level: Level) =>
    level === undefined ? 0 : METER_LENGTH * shareOnMeter(axis, level);
  const clip = limit ? lengthTo(limit.clip) : METER_LENGTH;
  const [body, tip] = [lengthTo(rms), lengthTo(peak)];
  const over = limit && limit.headroom < 0 ? tip - clip : 0;
  return (
    <svg
      class="meter"
      viewBox={`0 0 ${METER_LENGTH} ${HEIGHT}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <rect class="meter-beyond" x={clip} width={METER_LENGTH - clip} height={HEIGHT} />
      <rect class="meter-noise" width={lengthTo(noise)} height={HEIGHT} />
      <rect class="meter-level" y={4} width={body} height={HEIGHT - 8} />
      <rect class="meter-level" x={body} y={10} width={Math.max(0, tip - body)} height={4} />
      <rect class="meter-over" x={clip} y={2} width={over} height={HEIGHT - 4} />
      {limit && <rect class="meter-clip" x={clip} width={TICK} height={HEIGHT} />}
    </svg>
  );
}
