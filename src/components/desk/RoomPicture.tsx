import { useMemo } from 'preact/hooks';
import { deskParts, openOwners } from '../../drawing/desk-parts.ts';
import type { Drawing, Point } from '../../drawing/drawing.ts';
import { drawRoom } from '../../drawing/room.ts';
import type { RoomDrawing } from '../../drawing/room-drawing.ts';
import type { Sections } from '../../drawing/room-rows.ts';
import { ColumnView } from './ColumnView.tsx';
import { CordSymbol } from './CordSymbol.tsx';
import { DeskPicture } from './DeskPicture.tsx';
import { DeviceView } from './DeviceView.tsx';
import { FoldedOwners } from './FoldedOwners.tsx';
import { GoalSymbol } from './GoalSymbol.tsx';
import { LitWires } from './LitWires.tsx';
import { Pane } from './Pane.tsx';
import { PluginSymbol } from './PluginSymbol.tsx';
import type { Hands, Scene } from './scene.ts';
import { useRouted } from './use-routed.ts';

export interface RoomProps {
  desk: Drawing;
  sections: Sections;
  scene: Scene;
  hands: Hands | undefined;
  marks?: readonly Point[] | undefined;
}

/** A desk with the box above it and the rack beside it, so that a source can be followed from its track. */
export function RoomPicture({ desk, sections, scene, hands, marks }: RoomProps) {
  const { setup } = scene;
  // Where things hang is up to cords and switches; a level that is turned leaves it as it is.
  const routed = useRouted(setup);
  const room = useMemo(() => drawRoom(routed, desk, sections), [routed, desk, sections]);
  const open = openOwners(setup.rig, sections.folded);
  const folded = deskParts(setup.rig)
    .flatMap(({ owners }) => owners)
    .filter((owner) => sections.folded.length > 0 && !open.includes(owner));
  const columns = [...room.desk.columns, ...room.box.map(({ column }) => column), ...room.devices];
  return (
    <>
      <DeskPicture drawing={room.desk} scene={scene} hands={hands} marks={marks} columns={columns}>
        <RoomParts room={room} scene={scene} hands={hands} />
      </DeskPicture>
      <FoldedOwners owners={folded} scene={scene} hands={hands} />
    </>
  );
}

/** What is drawn around a desk: cords, the box, the rack. */
export function RoomParts({
  room,
  scene,
  hands,
}: Pick<RoomProps, 'scene' | 'hands'> & { room: RoomDrawing }) {
  const routed = useRouted(scene.setup);
  return (
    <>
      <Pane drawing={room.desk}>
        <LitWires wires={room.home} scene={scene} />
        {room.cords.map((cord) => (
          <CordSymbol key={cord.input} cord={cord} scene={scene} hands={hands} />
        ))}
      </Pane>
      {room.box.map(({ column }) => (
        <ColumnView
          key={column.owner}
          drawing={room.desk}
          column={column}
          routed={routed}
          scene={scene}
          hands={hands}
        />
      ))}
      <Pane drawing={room.desk}>
        {room.box.map(({ column, plugins, goal }) => (
          <g key={column.owner}>
            {plugins.map((mark) => (
              <PluginSymbol key={mark.address} mark={mark} scene={scene} hands={hands} />
            ))}
            <GoalSymbol goal={goal} hands={hands} />
          </g>
        ))}
        {room.devices.map((device) => (
          <DeviceView key={device.owner} device={device} scene={scene} hands={hands} />
        ))}
      </Pane>
    </>
  );
}
