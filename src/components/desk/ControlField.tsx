import {
  type ChoiceControl,
  type Control,
  type CordControl,
  isOn,
  type PanControl,
  type SwitchControl,
  valueAt,
} from '../../../simulator/index.ts';
import { capitalised, normalText, plugText } from '../../text/index.ts';
import { setWhenChanged } from './drawn-when-changed.ts';
import { FieldLabel } from './FieldLabel.tsx';
import { GainField } from './GainField.tsx';
import { openByArrow } from './open-by-arrow.ts';
import { RangeField } from './RangeField.tsx';
import type { Hands, Scene } from './scene.ts';

interface Props<C extends Control> {
  control: C;
  scene: Scene;
  hands: Hands;
}

/** The field of a control, by its kind. */
export const ControlField = setWhenChanged<Props<Control>>(Field, ({ control }) => [
  control.address,
]);

function Field({ control, scene, hands }: Props<Control>) {
  switch (control.kind) {
    case 'gain':
      return <GainField control={control} scene={scene} hands={hands} />;
    case 'switch':
      return <SwitchField control={control} scene={scene} hands={hands} />;
    case 'pan':
      return <PanField control={control} scene={scene} hands={hands} />;
    case 'choice':
      return control.address.endsWith('.tap') ? (
        <TapField control={control} scene={scene} hands={hands} />
      ) : (
        <SelectField control={control} scene={scene} hands={hands} />
      );
    case 'cord':
      return <SelectField control={control} scene={scene} hands={hands} />;
  }
}

function SwitchField({ control, scene, hands }: Props<SwitchControl>) {
  const { address, label } = control;
  const on = isOn(scene.setup, address);
  const isLocked = scene.locked.has(address);
  return (
    <button
      type="button"
      class="toggle"
      aria-pressed={on}
      data-address={address}
      disabled={isLocked}
      onClick={() => hands.send({ type: 'control.set', address, value: !on })}
    >
      {capitalised(label)}
      {isLocked && <span class="lock"> (locked)</span>}
    </button>
  );
}

/** Steps of a pan, as shares of the way from the centre to an end. */
const PAN_STEP = 0.05;
const FINE_PAN_STEP = 0.01;

function PanField({ control, scene, hands }: Props<PanControl>) {
  const { label } = control;
  return (
    <RangeField
      control={control}
      scene={scene}
      hands={hands}
      stride={PAN_STEP}
      fine={FINE_PAN_STEP}
      down={[`Turn ${label} left`, '‹']}
      up={[`Turn ${label} right`, '›']}
      min={-1}
      max={1}
      step={FINE_PAN_STEP}
    />
  );
}

/** Where a send is taken: two words of which one holds. */
function TapField({ control, scene, hands }: Props<ChoiceControl>) {
  const { address, label, options } = control;
  const value = valueAt(scene.setup, address);
  const isLocked = scene.locked.has(address);
  return (
    <fieldset class="tap" disabled={isLocked}>
      <legend class="visually-hidden">
        {label}
        {isLocked && ' (locked)'}
      </legend>
      {options.map((option) => (
        <label key={option.value} class={`tap-choice tap-choice-${option.value}`}>
          <input
            type="radio"
            name={`${scene.id}-${address}`}
            value={option.value}
            checked={value === option.value}
            data-address={address}
            onChange={() => hands.send({ type: 'control.set', address, value: option.value })}
          />
          {option.label}
        </label>
      ))}
      {isLocked && (
        <span class="lock" aria-hidden="true">
          (locked)
        </span>
      )}
    </fieldset>
  );
}

function SelectField({ control, scene, hands }: Props<ChoiceControl | CordControl>) {
  const { address, options, kind } = control;
  const note = normalText(scene.setup, address);
  const isLocked = scene.locked.has(address);
  const id = `${scene.id}-${address}`;
  return (
    <div class="field">
      <FieldLabel id={id} control={control} scene={scene} />
      <select
        id={id}
        value={String(valueAt(scene.setup, address))}
        data-address={address}
        disabled={isLocked}
        aria-describedby={note && `${id}-normal`}
        onKeyDown={kind === 'cord' ? openByArrow : undefined}
        onChange={({ currentTarget }) => {
          hands.send({ type: 'control.set', address, value: currentTarget.value });
          // A refused choice leaves the field as it stands on the board.
          currentTarget.value = String(valueAt(scene.setup, address));
        }}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {kind === 'cord' ? plugText(option.value, option.label) : option.label}
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
