import { controls, levelAt, part, pickAt, soloingOf } from '../../../simulator/index.ts';
import type { Column as ColumnMark, Drawing } from '../../drawing/drawing.ts';
import { ROOM_FOR, shortened, shortOwner } from '../../drawing/names.ts';
import { feedInto, goalFrom, jointName } from '../../drawing/patch.ts';
import { levelText } from '../../text/index.ts';
import { ChoiceSymbol } from './ChoiceSymbol.tsx';
import { ColumnMarks } from './ColumnMarks.tsx';
import { drawnWhenChanged } from './drawn-when-changed.ts';
import { FaderSymbol } from './FaderSymbol.tsx';
import { InsertSymbol } from './InsertSymbol.tsx';
import { LitWire } from './LitWire.tsx';
import { Pane } from './Pane.tsx';
import { PathSwitchSymbol } from './PathSwitchSymbol.tsx';
import { SideJackSymbol } from './SideJackSymbol.tsx';
import type { Hands, Scene } from './scene.ts';

interface Props {
  drawing: Drawing;
  column: ColumnMark;
  scene: Scene;
  hands: Hands | undefined;
}

/** Something that runs down, on a pane of its own: its name, its wire, and all that sits on it. */
export const ColumnView = drawnWhenChanged<Props>(Column, ({ column }) => column);

function Column({ drawing, column, scene, hands }: Props) {
  const { owner, x, top, mark, label, input } = column;
  const isSelected = scene.selected === owner;
  const isCut = soloingOf(scene.setup).cut.has(owner);
  return (
    <Pane drawing={drawing}>
      {isSelected && <rect class="selected" x={x - 38} y={top + 2} width={76} height={48} rx={5} />}
      {mark && (
        <text class="mark" x={x} y={top + 22}>
          {mark}
        </text>
      )}
      {isCut && <path class="cut-slash" d={`M${x - 20} ${top + 24}L${x + 20} ${top + 8}`} />}
      <text class="name" x={x} y={top + (mark ? 40 : 32)}>
        {shortened(label, ROOM_FOR.column)}
      </text>
      {input && (
        <text class="from" x={x} y={top + 64}>
          {shortened(feedName(input, scene), ROOM_FOR.feed)}
        </text>
      )}
      {/* As one list, which is held against the one before in one go. */}
      {[
        ...column.wires.map((wire) => (
          <LitWire key={`${wire.role} ${wire.place}`} wire={wire} scene={scene} />
        )),
        ...column.inserts.map((insert) => (
          <InsertSymbol
            key={insert.owner}
            insert={insert}
            role={column.kind}
            scene={scene}
            hands={hands}
          />
        )),
        ...column.faders.map((slot) => (
          <FaderSymbol
            key={slot.address}
            slot={slot}
            role={column.kind}
            scene={scene}
            hands={hands}
          />
        )),
      ]}
      <ColumnMarks column={column} scene={scene} hands={hands} />
      {[
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
      {hands && (
        <rect
          class="hit"
          x={x - 38}
          y={top + 2}
          width={76}
          height={66}
          onClick={() => hands.open(owner)}
        />
      )}
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

/** What feeds an input, in few letters: a line input by its jack, a capture track by the inputs that it stands at. */
export function feedName(input: string, { setup }: Scene): string {
  if (controls(setup.rig).get(input)?.kind === 'choice') {
    return pickAt(setup, input)?.replace('in', 'in ').replace('-', '–') ?? 'nothing';
  }
  const feed = feedInto(setup, input);
  if (!feed) return 'no cord';
  return jointName(shortOwner(setup.rig, feed.jack), feed);
}
