import { useState } from 'preact/hooks';
import { meterAxis } from '../../plot/meter-axis.ts';
import { readMeters } from '../../plot/read-meters.ts';
import { levelText, meterName, meterText } from '../../text/index.ts';
import { MeterBar } from './MeterBar.tsx';
import { MeterScale } from './MeterScale.tsx';
import type { Scene } from './scene.ts';

/** Meters at the outputs of the room and at what is open in the sheet. They can be frozen, and are never read out. */
export function Meters({ scene }: { scene: Scene }) {
  const [frozen, setFrozen] = useState<Scene>();
  const { setup, solution, selected } = frozen ?? scene;
  const { scale } = scene;
  const { rig } = setup;
  const readings = readMeters(solution, rig.outputs, selected);
  const axis = meterAxis(
    scale.fullScale,
    readings.flatMap(({ limit }) => (limit ? [limit.clip] : [])),
  );
  return (
    <section class="meters" aria-label="Meters">
      <div class="meters-head">
        <h4>Meters</h4>
        <button
          type="button"
          aria-pressed={frozen !== undefined}
          onClick={() => setFrozen(frozen ? undefined : scene)}
        >
          Freeze
        </button>
        {frozen && <span>Held as they stood. The desk goes on.</span>}
      </div>
      <ul>
        {readings.map((reading) => (
          <li key={reading.place}>
            <span class="meter-name">{meterName(rig, reading.place)}</span>
            <MeterBar reading={reading} axis={axis} />
            <span class="meter-figures">{meterText(reading, scale)}</span>
          </li>
        ))}
      </ul>
      <MeterScale axis={axis} scale={scale} />
      <p class="meters-note">
        Bar: RMS level. Thin part: up to the peaks, by the crest of the recordings. Beyond the tick:
        clipping. Shaded at the foot: noise, where it is high enough to show. The marks are those of
        IEC 60268-18, with full scale at {levelText(scale.fullScale, 1, scale)}. All is computed at
        once for steady sound, so the bars need no time to rise or fall.
      </p>
    </section>
  );
}
