import { part, type Setup } from '../../../simulator/index.ts';
import type { InsertMark, Point, WireLine, WireRole } from '../../drawing/drawing.ts';
import { ROOM_FOR, shortened, shortOwner } from '../../drawing/names.ts';
import { insertPatch, type Joint, jointName, ownerAt } from '../../drawing/patch.ts';
import type { Hands, Scene } from './scene.ts';

const WIDTH = 58;
const HEIGHT = 20;

interface Props {
  insert: InsertMark;
  scene: Scene;
  hands: Hands | undefined;
}

/** What is plugged between the send and the return of an insert, over its wires; a mark where nothing is. */
export function InsertSymbol({ insert, scene, hands }: Props) {
  const { owner, top, bottom, device } = insert;
  const { sent, returned } = insertPatch(scene.setup, owner);
  const joint = returned ?? sent;
  return (
    <g>
      {joint ? (
        <>
          <rect
            class={ownerAt(sent) === ownerAt(returned) ? 'device' : 'device device-loose'}
            x={device.x - WIDTH / 2}
            y={device.y - HEIGHT / 2}
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

/**
 * The wires of an insert as one sees it: straight through; a detour through what is plugged between send and return;
 * a branch that goes out and does not come back; or a wire that starts anew from the return. What is only normalled
 * is dashed.
 *
 * @param role what the wire is that the insert lies in.
 */
export function insertWires(setup: Setup, insert: InsertMark, role: WireRole): WireLine[] {
  const { owner, top, bottom, device } = insert;
  const { sent, returned, isStraight } = insertPatch(setup, owner);
  const half = HEIGHT / 2;
  const wire = (name: string, points: Point[], joint?: Joint): WireLine => ({
    place: part(owner, name),
    role,
    points,
    isNormal: joint?.by === 'normal',
  });
  const [over, under] = [
    { x: device.x, y: device.y - half },
    { x: device.x, y: device.y + half },
  ];
  return [
    ...(isStraight ? [wire('insert', [top, bottom])] : []),
    ...(sent ? [wire('insert.send', [top, { x: device.x, y: top.y }, over], sent)] : []),
    ...(returned
      ? [wire('insert.return', [under, { x: device.x, y: bottom.y }, bottom], returned)]
      : []),
  ];
}
