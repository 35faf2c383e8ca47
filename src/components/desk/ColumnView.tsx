import { useMemo } from 'preact/hooks';
import { levelAt, part, type Setup } from '../../../simulator/index.ts';
import type { Column as ColumnMark, Drawing } from '../../drawing/drawing.ts';
import { ROOM_FOR, shortened, shortOwner } from '../../drawing/names.ts';
import { goalFrom, jointName } from '../../drawing/patch.ts';
import { levelText } from '../../text/index.ts';
import { ChoiceSymbol } from './ChoiceSymbol.tsx';
import { ColumnBack } from './ColumnBack.tsx';
import { ColumnMarks } from './ColumnMarks.tsx';
import { drawnWhenChanged } from './drawn-when-changed.ts';
import { FaderSymbol, ledWires, slotLines } from './FaderSymbol.tsx';
import { insertWires } from './InsertSymbol.tsx';
import { LitWires } from './LitWires.tsx';
import { Pane } from './Pane.tsx';
import { PathSwitchSymbol } from './PathSwitchSymbol.tsx';
import { SideJackSymbol } from './SideJackSymbol.tsx';
import type { Hands, Scene } from './scene.ts';

interface Props {
  drawing: Drawing;
  column: ColumnMark;
  /** The setup of the scene, as it was when a cord or a switch moved last. */
  routed: Setup;
  scene: Scene;
  hands: Hands | undefined;
}

/**
 * Something that runs down, on a pane of its own: its name, its wires, and all that sits on them. It is made of what
 * stays as it is while levels move, and of the light between.
 */
export const ColumnView = drawnWhenChanged<Props>(Column, ({ column }) => column);

function Column({ drawing, column, routed, scene, hands }: Props) {
  const { faders } = column;
  const wires = useMemo(
    () => [
      ...column.wires,
      ...column.inserts.flatMap((insert) => insertWires(routed, insert, column.kind)),
      ...column.faders.flatMap((slot) => ledWires(routed, slot, column.kind)),
    ],
    [column, routed],
  );
  const isSelected = scene.selected === column.owner;
  return (
    <Pane drawing={drawing}>
      <ColumnBack column={column} scene={scene} isSelected={isSelected} />
      <LitWires
        wires={wires}
        lines={faders.flatMap((slot) => slotLines(scene.setup, slot))}
        scene={scene}
      />
      <ColumnMarks column={column} scene={scene} hands={hands} />
      {/* As one list, which is held against the one before in one go. */}
      {[
        ...faders.map((slot) => (
          <FaderSymbol
            key={slot.address}
            slot={slot}
            isSelected={isSelected}
            scene={scene}
            hands={hands}
          />
        )),
        ...column.choices.map((choice) => (
          <ChoiceSymbol key={choice.address} mark={choice} scene={scene} hands={hands} />
        )),
        ...column.sideJacks.map((sideJack) => (
          <SideJackSymbol key={sideJack.jack} sideJack={sideJack} scene={scene} hands={hands} />
        )),
      ]}
      {column.pathSwitch && (
        <PathSwitchSymbol pathSwitch={column.pathSwitch} scene={scene} hands={hands} />
      )}
      {column.foot && <Foot column={column} scene={scene} />}
    </Pane>
  );
}

/** What the jacks at the end of a bus feed, and the level of all sources there. */
function Foot({
  column: { owner, foot },
  scene: { setup, solution, scale, hidesLevels },
}: Pick<Props, 'column' | 'scene'>) {
  if (!foot) return null;
  const out = part(owner, 'out');
  const goal = goalFrom(setup, out);
  return (
    <g>
      <path class="stage" d={`M${foot.x - 7} ${foot.y}h14l-7 10z`} />
      <text class="goal" x={foot.x - 24} y={foot.y + 24}>
        {goal
          ? shortened(jointName(shortOwner(setup.rig, goal.jack), goal), ROOM_FOR.foot)
          : 'not plugged'}
      </text>
      {!hidesLevels && (
        <text class="foot-level" x={foot.x - 24} y={foot.y + 38}>
          {levelText(levelAt(solution, out), 1, scale)}
        </text>
      )}
    </g>
  );
}
