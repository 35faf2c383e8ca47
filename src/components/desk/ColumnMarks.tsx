import type { Column } from '../../drawing/drawing.ts';
import { AssignSymbol } from './AssignSymbol.tsx';
import { setWhenChanged } from './drawn-when-changed.ts';
import { InsertSymbol } from './InsertSymbol.tsx';
import { SendSymbol } from './SendSymbol.tsx';
import { StageSymbol } from './StageSymbol.tsx';
import type { Hands, Scene } from './scene.ts';
import { ToggleSymbol } from './ToggleSymbol.tsx';

interface Props {
  column: Column;
  scene: Scene;
  hands: Hands | undefined;
}

/** What sits on the wires of a column and shows how a control stands, whatever the level there; and what opens the column. */
export const ColumnMarks = setWhenChanged<Props>(Marks, ({ column: { stages, sends } }) => [
  // A fader is no mark, though it is a stage.
  ...stages.filter(({ stage }) => stage !== 'fader').map(({ place }) => place),
  ...sends.map(({ address }) => address),
]);

function Marks({ column, scene, hands }: Props) {
  const { owner, x, top } = column;
  return (
    <>
      {column.inserts.map((insert) => (
        <InsertSymbol key={insert.owner} insert={insert} scene={scene} hands={hands} />
      ))}
      {column.stages.map((stage) => (
        <StageSymbol key={stage.place} mark={stage} owner={owner} scene={scene} hands={hands} />
      ))}
      {column.sends.map((send) => (
        <SendSymbol key={send.address} send={send} scene={scene} hands={hands} />
      ))}
      {column.assigns.map((assign) => (
        <AssignSymbol key={assign.address} assign={assign} scene={scene} hands={hands} />
      ))}
      {column.toggles.map((toggle) => (
        <ToggleSymbol key={toggle.address} mark={toggle} scene={scene} hands={hands} />
      ))}
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
    </>
  );
}
