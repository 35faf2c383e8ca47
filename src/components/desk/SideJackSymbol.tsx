import { ownerOf } from '../../../simulator/index.ts';
import type { SideJack } from '../../drawing/drawing.ts';
import { ROOM_FOR, shortened, shortOwner } from '../../drawing/names.ts';
import { goalFrom } from '../../drawing/patch.ts';
import { Light, line } from './LitWires.tsx';
import type { Hands, Scene } from './scene.ts';

interface Props {
  sideJack: SideJack;
  scene: Scene;
  hands: Hands | undefined;
}

/** An output jack on the way down: faint while it feeds nothing, else with what it feeds. Its wire is dashed unless a cord is in it. */
export function SideJackSymbol({ sideJack: { jack, at, end }, scene, hands }: Props) {
  const { setup } = scene;
  const goal = goalFrom(setup, jack);
  const way = line(at, { x: end.x - 4, y: end.y });
  return (
    <g>
      <path class={`wire ${goal?.by === 'cord' ? '' : 'wire-normal'}`} d={way} />
      {goal && <Light lines={[{ d: way, place: jack }]} scene={scene} />}
      <path class={goal ? 'stage' : 'stage stage-off'} d={`M${end.x - 4} ${end.y - 5}v10l8 -5z`} />
      {goal && (
        <text class="figure jack-goal" x={end.x + 6} y={end.y + 4}>
          {shortened(shortOwner(setup.rig, goal.jack), ROOM_FOR.jack)}
        </text>
      )}
      {hands && (
        <rect
          class="hit"
          x={at.x + 6}
          y={at.y - 8}
          width={30}
          height={16}
          onClick={() => hands.open(ownerOf(jack), jack)}
        />
      )}
    </g>
  );
}
