import { numberAt, part } from '../../../simulator/index.ts';
import type { Rail } from '../../drawing/drawing.ts';
import { ROOM_FOR, shortened, shortOwner } from '../../drawing/names.ts';
import { goalFrom, jointName } from '../../drawing/patch.ts';
import { signed } from '../../text/index.ts';
import { drawnWhenChanged } from './drawn-when-changed.ts';
import { LitWires } from './LitWires.tsx';
import type { Hands, Scene } from './scene.ts';
import { ToggleSymbol } from './ToggleSymbol.tsx';

interface Props {
  rail: Rail;
  scene: Scene;
  hands: Hands | undefined;
}

/** A bus that runs across, with its master level and the name of what it feeds. */
export const RailView = drawnWhenChanged<Props>(Across, ({ rail }) => rail);

function Across({ rail, scene, hands }: Props) {
  const { owner, y, wires, end, master, solo } = rail;
  const goal = end && goalFrom(scene.setup, part(owner, 'out'));
  return (
    <g>
      <LitWires wires={wires} scene={scene} />
      {master && (
        <>
          <path class="stage" d={`M${master.at.x - 8} ${y - 9}v18l16 -9z`} />
          <MasterFigure gain={numberAt(scene.setup, master.address)} x={master.at.x} y={y} />
        </>
      )}
      {end && (
        <text class="goal" x={end.x} y={y + 4}>
          {goal
            ? shortened(jointName(shortOwner(scene.setup.rig, goal.jack), goal), ROOM_FOR.goal)
            : 'not plugged'}
        </text>
      )}
      {hands && master && (
        <rect
          class="hit"
          x={master.at.x - 16}
          y={y - 14}
          width={130}
          height={28}
          onClick={() => hands.open(owner, master.address)}
        />
      )}
      {solo && <ToggleSymbol mark={solo} scene={scene} hands={hands} />}
    </g>
  );
}

function MasterFigure({ gain, x, y }: { gain: number; x: number; y: number }) {
  if (gain === 0) return null;
  return (
    <text class="figure" x={x - 8} y={y - 12}>
      {gain === -Infinity ? 'closed' : signed(gain)}
    </text>
  );
}
