import { part } from '../../../simulator/index.ts';
import type { InsertMark, Point, WireRole } from '../../drawing/drawing.ts';
import { ROOM_FOR, shortened, shortOwner } from '../../drawing/names.ts';
import { insertPatch, type Joint, jointName, ownerAt } from '../../drawing/patch.ts';
import { drawnWhenChanged } from './drawn-when-changed.ts';
import { LitWire } from './LitWire.tsx';
import type { Hands, Scene } from './scene.ts';

const WIDTH = 58;
const HEIGHT = 20;

interface Props {
  insert: InsertMark;
  /** What the wire is that it lies in. */
  role: WireRole;
  scene: Scene;
  hands: Hands | undefined;
}

/**
 * An insert as one sees it: a wire straight through; a detour through what is plugged between send and
 * return; a branch that goes out and does not come back; or a wire that starts anew from the return. What is
 * only normalled is dashed.
 */
export const InsertSymbol = drawnWhenChanged<Props>(Insert, ({ insert }) => insert);

function Insert({ insert, role, scene, hands }: Props) {
  const { owner, top, bottom, device } = insert;
  const { sent, returned, isStraight } = insertPatch(scene.setup, owner);
  const half = HEIGHT / 2;
  const wire = (name: string, points: Point[], joint?: Joint) => (
    <LitWire
      wire={{ place: part(owner, name), role, points, isNormal: joint?.by === 'normal' }}
      scene={scene}
    />
  );
  const joint = returned ?? sent;
  return (
    <g>
      {isStraight && wire('insert', [top, bottom])}
      {sent &&
        wire(
          'insert.send',
          [top, { x: device.x, y: top.y }, { x: device.x, y: device.y - half }],
          sent,
        )}
      {returned &&
        wire(
          'insert.return',
          [{ x: device.x, y: device.y + half }, { x: device.x, y: bottom.y }, bottom],
          returned,
        )}
      {joint ? (
        <>
          <rect
            class={ownerAt(sent) === ownerAt(returned) ? 'device' : 'device device-loose'}
            x={device.x - WIDTH / 2}
            y={device.y - half}
            width={WIDTH}
            height={HEIGHT}
            rx={3}
          />
          <text class="device-name" x={device.x} y={device.y + 3.5}>
            {shortened(
              jointName(shortOwner(scene.setup.rig, joint.jack), joint),
              joint.by === 'normal' ? ROOM_FOR.normalledDevice : ROOM_FOR.device,
            )}
          </text>
        </>
      ) : (
        <path class="insert-free" d={`M${top.x - 5} ${device.y}l5 -5l5 5l-5 5z`} />
      )}
      {hands && (
        <rect
          class="hit"
          x={device.x - WIDTH / 2}
          y={top.y}
          width={WIDTH}
          height={bottom.y - top.y}
          onClick={() => hands.open(owner, part(owner, 'insert.return'))}
        />
      )}
    </g>
  );
}
