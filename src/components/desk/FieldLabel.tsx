import { type Control, valueAt } from '../../../simulator/index.ts';
import { capitalised } from '../../text/index.ts';
import type { Hands, Scene } from './scene.ts';

interface Props {
  id: string;
  control: Control;
  scene: Scene;
  /** For a control that is reset by a button of its own while it is off where it stood at first. */
  hands?: Hands;
}

/** The name of a control beside its field, which says so when it is locked. */
export function FieldLabel({ id, control, scene, hands }: Props) {
  const { address, label } = control;
  const isOff = scene.start && valueAt(scene.setup, address) !== valueAt(scene.start, address);
  return (
    <span class="field-head">
      <label class="field-label" for={id}>
        {capitalised(label)}
        {scene.locked.has(address) && <span class="lock"> (locked)</span>}
      </label>
      {hands && isOff && (
        <button
          type="button"
          class="reset-one"
          aria-label={`Reset ${label}`}
          onClick={() => hands.send({ type: 'control.reset', address })}
        >
          reset
        </button>
      )}
    </span>
  );
}
