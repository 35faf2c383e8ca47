import { dbu } from '../../../simulator/index.ts';
import { brightnessOf } from '../../drawing/light.ts';
import { signed } from '../../text/index.ts';
import { lightWidth } from './LitWires.tsx';

/** Levels that the scale shows, in dBu. */
const LEVELS = [-30, -20, -10, 0, 10];
const STEP = 46;
const LENGTH = 26;

/** How wide the light is at which level, under a drawing. */
export const LightScale = () => (
  <svg
    class="light-scale"
    width={LEVELS.length * STEP + 40}
    height={30}
    role="img"
    aria-label="Light is wider where the level is higher: from −30 to +10 dBu."
  >
    {LEVELS.map((level, index) => {
      const brightness = Number(brightnessOf(dbu(level)));
      const d = `M${index * STEP + 4} 9h${LENGTH}`;
      return (
        <g key={level}>
          <path class="light-casing" d={d} stroke-width={lightWidth(brightness) + 2} />
          <path class="light" d={d} stroke-width={lightWidth(brightness)} />
          <text class="scale-figure" x={index * STEP + 4 + LENGTH / 2} y={27}>
            {signed(level, 0)}
          </text>
        </g>
      );
    })}
    <text class="scale-unit" x={LEVELS.length * STEP + 2} y={27}>
      dBu
    </text>
  </svg>
);
