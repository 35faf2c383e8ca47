import {
  type Address,
  cordFrom,
  fullLabel,
  jacks,
  NONE,
  partLabel,
} from '../../../simulator/index.ts';
import { capitalised, normalText } from '../../text/index.ts';
import { setWhenChanged } from './drawn-when-changed.ts';
import { moveCord } from './move-cord.ts';
import { openByArrow } from './open-by-arrow.ts';
import type { Hands, Scene } from './scene.ts';

interface Props {
  jack: Address;
  scene: Scene;
  hands: Hands;
}

/** Where the cord from an output jack leads. Choosing another input moves the cord, in one step. */
export const JackField = setWhenChanged<Props>(Jack, ({ jack }) => [jack]);

function Jack({ jack, scene, hands }: Props) {
  const { rig } = scene.setup;
  const goal = cordFrom(scene.setup, jack);
  const note = normalText(scene.setup, jack);
  const id = `${scene.id}-${jack}`;
  const inputs = jacks(rig).inputs.filter((input) => !scene.locked.has(input) || input === goal);
  const isLocked = inputs.length === 0 || (goal !== undefined && scene.locked.has(goal));
  return (
    <div class="field">
      <label class="field-label" for={id}>
        {capitalised(partLabel(rig, jack) || fullLabel(rig, jack))}
        {isLocked && <span class="lock"> (locked)</span>}
      </label>
      <select
        id={id}
        value={goal ?? NONE}
        data-address={jack}
        disabled={isLocked}
        aria-describedby={note && `${id}-normal`}
        onKeyDown={openByArrow}
        onChange={({ currentTarget }) => {
          moveCord(scene, hands, jack, currentTarget.value);
          currentTarget.value = goal ?? NONE;
        }}
      >
        <option value={NONE}>not plugged</option>
        {inputs.map((input) => (
          <option key={input} value={input}>
            to {fullLabel(rig, input)}
          </option>
        ))}
      </select>
      {note && (
        <p class="normal-note" id={`${id}-normal`}>
          {note}
        </p>
      )}
    </div>
  );
}
