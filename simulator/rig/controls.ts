import { type Address, ownerOf, rackOwner } from './address.ts';
import { boxControls } from './box-controls.ts';
import { type Control, type ControlValue, NONE, OPEN } from './control.ts';
import { deskControls } from './desk-controls.ts';
import { deviceControls } from './device-controls.ts';
import { jacks } from './jacks.ts';
import { fullLabel, ownerLabel, partLabel } from './labels.ts';
import { normals } from './normals.ts';
import { onceARig } from './once-a-rig.ts';
import type { Rig } from './schema.ts';

/** Every control of a rig by its address, owner by owner, in signal order. */
export type Controls = ReadonlyMap<Address, Control>;

/**
 * Lists all controls of a rig. This is the only list of them: drawing, undo, recall, diff and grading
 * all read it. The same rig gives the same list. A default of the rig that fits no control is passed
 * over here; reading a rig refuses it.
 */
export const controls = onceARig(list);

function list(rig: Rig): Controls {
  const every = [
    ...boxControls(rig),
    ...deskControls(rig),
    ...rig.rack.flatMap(({ id, kind }) => deviceControls(rig, rackOwner(id), kind)),
    ...cords(rig),
  ];
  return new Map(
    every.map((control) => [
      control.address,
      { ...control, default: rigDefault(rig, control) } as Control,
    ]),
  );
}

/** The default of the rig for this control, where it names one, else the usual one. */
function rigDefault(rig: Rig, control: Control): ControlValue {
  const value = rig.defaults[control.address];
  if (value === undefined) return control.default;
  return value === '-inf' && control.kind === 'gain' ? -Infinity : value;
}

function cords(rig: Rig): Control[] {
  const { inputs, outputs } = jacks(rig);
  const ends = outputs.map((jack) => ({ value: jack, label: fullLabel(rig, jack) }));
  const options = [{ value: NONE, label: 'nothing' }, ...ends];
  const withOpen = [...options, { value: OPEN, label: 'an open plug' }];
  return inputs.map((jack) => ({
    kind: 'cord',
    address: jack,
    owner: ownerOf(jack),
    ownerLabel: ownerLabel(rig, ownerOf(jack)),
    label: partLabel(rig, jack),
    options: normals(rig).into.has(jack) ? withOpen : options,
    default: NONE,
  }));
}
