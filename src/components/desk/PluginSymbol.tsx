import { isOn, ownerOf, part } from '../../../simulator/index.ts';
import { ROOM_FOR, shortened } from '../../drawing/names.ts';
import type { PluginMark } from '../../drawing/room-drawing.ts';
import type { Hands, Scene } from './scene.ts';

const WIDTH = 66;
const HEIGHT = 20;

interface Props {
  mark: PluginMark;
  scene: Scene;
  hands: Hands | undefined;
}

/** A plug-in as a box on the wire of its channel; the box is broken while it is passed by. */
export function PluginSymbol({ mark: { address, label, at }, scene, hands }: Props) {
  const on = part(address, 'on');
  const box = { x: at.x - WIDTH / 2, y: at.y - HEIGHT / 2, width: WIDTH, height: HEIGHT };
  return (
    <g>
      <rect class={isOn(scene.setup, on) ? 'device' : 'device device-loose'} {...box} rx={3} />
      <text class="device-name" x={at.x} y={at.y + 3.5}>
        {shortened(label, ROOM_FOR.device)}
      </text>
      {hands && <rect class="hit" {...box} onClick={() => hands.open(ownerOf(address), on)} />}
    </g>
  );
}
