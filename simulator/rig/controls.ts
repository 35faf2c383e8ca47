import {
  type Address,
  BOX_MAIN,
  boxOwner,
  DESK_MAIN,
  deskOwner,
  lineOut,
  linePair,
  type Owner,
  ownerOf,
  part,
  rackOwner,
  stripTypeOf,
} from './address.ts';
import { type Control, type ControlValue, NONE, type Option } from './control.ts';
import { choice, fader, pan, toggle, trim } from './control-makers.ts';
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
    ...rig.box.tracks.flatMap(({ id }) => boxChannel(rig, boxOwner(id), busesAfter(rig, -1))),
    ...rig.box.buses.flatMap(({ id }, index) =>
      boxChannel(rig, boxOwner(id), busesAfter(rig, index)),
    ),
    ...boxMain(rig),
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

const nowhere: Option = { value: NONE, label: 'nowhere' };

const numbers = (count: number) => Array.from({ length: count }, (_, index) => index + 1);

const pairOptions = (rig: Rig): Option[] =>
  numbers(rig.converter.outputs - 1).map((first) => ({
    value: linePair(first),
    label: `outputs ${first}–${first + 1}`,
  }));

const outputOptions = (rig: Rig): Option[] =>
  numbers(rig.converter.outputs).map((number) => ({
    value: lineOut(number),
    label: `output ${number}`,
  }));

/** The buses that a channel of the box may feed: only later ones, so that the box has no loops. */
const busesAfter = (rig: Rig, index: number): Option[] =>
  rig.box.buses.slice(index + 1).map(({ id, label }) => ({ value: id, label }));

function boxChannel(rig: Rig, owner: Owner, buses: readonly Option[]): Control[] {
  const goals = [nowhere, ...outputOptions(rig), ...pairOptions(rig), ...buses];
  return [
    fader(rig, owner, 'fader'),
    toggle(rig, owner, 'mute'),
    pan(rig, owner),
    choice(rig, owner, 'to', goals, NONE),
    toggle(rig, owner, 'main'),
  ];
}

function boxMain(rig: Rig): Control[] {
  const goals = [nowhere, ...pairOptions(rig)];
  return [fader(rig, BOX_MAIN, 'fader'), choice(rig, BOX_MAIN, 'to', goals, NONE)];
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

const tapSwitch = (rig: Rig, owner: Owner, aux: string): Control =>
  choice(
    rig,
    owner,
    part(aux, 'tap'),
    [
      { value: 'pre', label: 'before the fader' },
      { value: 'post', label: 'after the fader' },
    ],
    'post',
  );

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
