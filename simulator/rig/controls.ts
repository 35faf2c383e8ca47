import {
  type Address,
  DESK_MAIN,
  deskOwner,
  type Owner,
  ownerOf,
  rackOwner,
  stripTypeOf,
} from './address.ts';
import { boxControls } from './box-controls.ts';
import { type Control, type ControlValue, NONE } from './control.ts';
import { fader, pan, tapSwitch, toggle, trim } from './control-makers.ts';
import { deviceControls } from './device-controls.ts';
import { jacks } from './jacks.ts';
import { fullLabel, ownerLabel, partLabel } from './labels.ts';
import type { Rig, Strip } from './schema.ts';

/** Every control of a rig by its address, owner by owner, in signal order. */
export type Controls = ReadonlyMap<Address, Control>;

const known = new WeakMap<Rig, Controls>();

/**
 * Lists all controls of a rig. This is the only list of them: drawing, undo, recall, diff and grading
 * all read it. The same rig gives the same list. A default of the rig that fits no control is passed
 * over here; reading a rig refuses it.
 */
export function controls(rig: Rig): Controls {
  const before = known.get(rig);
  if (before) return before;
  const listed = list(rig);
  known.set(rig, listed);
  return listed;
}

function list(rig: Rig): Controls {
  const every = [
    ...boxControls(rig),
    ...rig.desk.strips.flatMap((strip) => deskStrip(rig, strip)),
    ...rig.desk.auxes.flatMap(({ id }) => [fader(rig, deskOwner(id), 'level')]),
    ...rig.desk.subgroups.flatMap(({ id }) => subgroup(rig, deskOwner(id))),
    fader(rig, DESK_MAIN, 'fader'),
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

function deskStrip(rig: Rig, strip: Strip): Control[] {
  const owner = deskOwner(strip.id);
  const ofStage = {
    trim: () => [trim(rig, owner, 'trim')],
    polarity: () => [toggle(rig, owner, 'polarity')],
    insert: () => [],
    fader: () => [fader(rig, owner, 'fader')],
    mute: () => [toggle(rig, owner, 'mute')],
    pan: () => [pan(rig, owner)],
  };
  return [
    ...stripTypeOf(rig, strip).stages.flatMap((stage) => ofStage[stage]()),
    ...rig.desk.auxes.flatMap(({ id, tap }) => [
      fader(rig, owner, id, -Infinity),
      ...(tap === 'switchable' ? [tapSwitch(rig, owner, id)] : []),
    ]),
    ...rig.desk.subgroups.map(({ id }) => toggle(rig, owner, id)),
    toggle(rig, owner, 'main', true),
  ];
}

const subgroup = (rig: Rig, owner: Owner): Control[] => [
  fader(rig, owner, 'fader'),
  toggle(rig, owner, 'mute'),
  toggle(rig, owner, 'main', true),
];

function cords(rig: Rig): Control[] {
  const { inputs, outputs } = jacks(rig);
  const options = [
    { value: NONE, label: 'nothing' },
    ...outputs.map((jack) => ({ value: jack, label: fullLabel(rig, jack) })),
  ];
  return inputs.map((jack) => ({
    kind: 'cord',
    address: jack,
    owner: ownerOf(jack),
    ownerLabel: ownerLabel(rig, ownerOf(jack)),
    label: partLabel(rig, jack),
    options,
    default: NONE,
  }));
}
