import { controls, pickAt, soloingOf } from '../../../simulator/index.ts';
import type { Column } from '../../drawing/drawing.ts';
import { ROOM_FOR, shortened, shortOwner } from '../../drawing/names.ts';
import { feedInto, jointName } from '../../drawing/patch.ts';
import { setWhenChanged } from './drawn-when-changed.ts';
import { FaderSlotSymbol } from './FaderSymbol.tsx';
import type { Scene } from './scene.ts';

interface Props {
  column: Column;
  scene: Scene;
  isSelected: boolean;
}

/** What of a column lies below its light: its name, what feeds it, the slots of its faders. */
export const ColumnBack = setWhenChanged<Props>(Back, () => []);

function Back({ column, scene, isSelected }: Props) {
  const { owner, x, top, mark, label, input, faders } = column;
  const isCut = soloingOf(scene.setup).cut.has(owner);
  return (
    <>
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
      {faders.map((slot) => (
        <FaderSlotSymbol key={slot.address} slot={slot} />
      ))}
    </>
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
