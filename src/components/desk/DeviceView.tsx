import { ROOM_FOR, shortened } from '../../drawing/names.ts';
import { DEVICE_BOTTOM, DEVICE_TOP } from '../../drawing/rack.ts';
import type { DeviceMark } from '../../drawing/room-drawing.ts';
import { feedName } from './ColumnBack.tsx';
import { drawnWhenChanged } from './drawn-when-changed.ts';
import { LitWires } from './LitWires.tsx';
import type { Hands, Scene } from './scene.ts';

const WIDTH = 84;

interface Props {
  device: DeviceMark;
  scene: Scene;
  hands: Hands | undefined;
}

/** A device of the rack, with the wires that come to it from below and leave it above. */
export const DeviceView = drawnWhenChanged<Props>(Device, ({ device }) => device);

function Device({ device: { owner, label, x, wires, input }, scene, hands }: Props) {
  const box = {
    x: x - WIDTH / 2,
    y: DEVICE_TOP,
    width: WIDTH,
    height: DEVICE_BOTTOM - DEVICE_TOP,
  };
  const words = label.split(' ');
  const lines = words.length > 1 ? [words[0] ?? '', words.slice(1).join(' ')] : [label];
  return (
    <g>
      <LitWires wires={wires} scene={scene} />
      <rect class="device" {...box} rx={4} />
      {scene.selected === owner && <rect class="selected" {...box} rx={4} />}
      {lines.map((line, index) => (
        <text
          key={line}
          class="name"
          x={x}
          y={(DEVICE_TOP + DEVICE_BOTTOM) / 2 + 4 + (index - (lines.length - 1) / 2) * 15}
        >
          {shortened(line, ROOM_FOR.column)}
        </text>
      ))}
      {input && (
        <text class="from" x={x} y={DEVICE_BOTTOM + 18}>
          {shortened(feedName(input, scene), ROOM_FOR.feed)}
        </text>
      )}
      {hands && <rect class="hit" {...box} onClick={() => hands.open(owner)} />}
    </g>
  );
}
