import { FADER_FLOOR, FADER_TOP } from '../units/fader.ts';
import { db, dbu, UNITY } from '../units/level.ts';
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
import { jacks } from './jacks.ts';
import { fullLabel, ownerLabel, partLabel } from './labels.ts';
import type { Device, Rig, Strip } from './schema.ts';

/** Every control of a rig by its address, owner by owner, in signal order. */
export type Controls = ReadonlyMap<Address, Control>;

const known = new WeakMap<Rig, Controls>();

/**
 * Lists all controls of a rig. This is the only list of them: drawing, undo, recall, diff and grading
 * all read it. The same rig gives the same list. A default of the rig that fits no control is passed
 * over here; reading a rig refuses it.
 */
export function controls(rig: Rig): Controls {
  const listed = known.get(rig) ?? list(rig);
  known.set(rig, listed);
  return listed;
}

/** Positions of a compressor's ratio switch. `inf` limits. */
export const RATIOS = ['1.5', '2', '3', '4', '6', '10', 'inf'] as const;

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
    ...rig.rack.flatMap((device) => rackDevice(rig, device)),
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

/** What all controls have: the owner, the address and the names. */
const named = (rig: Rig, owner: Owner, name: string) => ({
  owner,
  address: part(owner, name),
  ownerLabel: ownerLabel(rig, owner),
  label: partLabel(rig, part(owner, name)),
});

const toggle = (rig: Rig, owner: Owner, name: string, initial = false): Control => ({
  kind: 'switch',
  ...named(rig, owner, name),
  default: initial,
});

const fader = (rig: Rig, owner: Owner, name: string, initial: number = UNITY): Control => ({
  kind: 'gain',
  ...named(rig, owner, name),
  unit: 'dB',
  min: FADER_FLOOR,
  max: FADER_TOP,
  closes: true,
  default: initial,
});

/** A gain that does not close, in dB, `reach` to either side of unity. */
const trim = (rig: Rig, owner: Owner, name: string, reach = 20): Control => ({
  kind: 'gain',
  ...named(rig, owner, name),
  unit: 'dB',
  min: db(-reach),
  max: db(reach),
  closes: false,
  default: UNITY,
});

const pan = (rig: Rig, owner: Owner): Control => ({
  kind: 'pan',
  ...named(rig, owner, 'pan'),
  default: 0,
});

const choice = (
  rig: Rig,
  owner: Owner,
  name: string,
  options: readonly Option[],
  initial: string,
): Control => ({ kind: 'choice', ...named(rig, owner, name), options, default: initial });

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

function rackDevice(rig: Rig, device: Device): Control[] {
  const owner = rackOwner(device.id);
  switch (device.kind) {
    case 'gain':
      return [trim(rig, owner, 'gain')];
    case 'reverb':
      return [trim(rig, owner, 'level')];
    case 'compressor':
      return [
        {
          kind: 'gain',
          ...named(rig, owner, 'threshold'),
          unit: 'dBu',
          min: dbu(-40),
          max: dbu(20),
          closes: false,
          default: 0,
        },
        choice(
          rig,
          owner,
          'ratio',
          RATIOS.map((ratio) => ({
            value: ratio,
            label: ratio === 'inf' ? '∞ : 1' : `${ratio} : 1`,
          })),
          '4',
        ),
        { ...trim(rig, owner, 'knee'), min: db(0), max: db(24) } as Control,
        trim(rig, owner, 'makeup'),
      ];
  }
}

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
