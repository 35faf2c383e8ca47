import { CONTROL_ROOM, DESK_MAIN, deskOwner, type Owner, stripTypeOf } from './address.ts';
import { type Control, NONE } from './control.ts';
import { choice, fader, pan, tapSwitch, toggle, trim } from './control-makers.ts';
import type { Rig, SoloMode, Strip, Subgroup } from './schema.ts';
import {
  auxesOf,
  busesOf,
  firstPathOf,
  isStereoSubgroup,
  listens,
  secondPathOf,
} from './strip-routes.ts';

/** All controls of the desk: strips, auxes, subgroups, the main bus, and the control room. */
export const deskControls = (rig: Rig): Control[] => [
  ...rig.desk.strips.flatMap((strip) => stripControls(rig, strip)),
  ...rig.desk.auxes.flatMap(({ id }) => [
    fader(rig, deskOwner(id), 'level'),
    ...busSolo(rig, deskOwner(id)),
  ]),
  ...rig.desk.subgroups.flatMap((subgroup) => subgroupControls(rig, subgroup)),
  fader(rig, DESK_MAIN, 'fader'),
  ...controlRoomControls(rig),
];

function stripControls(rig: Rig, strip: Strip): Control[] {
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
    ...(firstPathOf(rig, strip) ? [pathSwitch(rig, owner)] : []),
    ...stripTypeOf(rig, strip).stages.flatMap((stage) => ofStage[stage]()),
    ...(secondPathOf(rig, strip) ? [toggle(rig, owner, 'swap')] : []),
    ...auxesOf(rig, strip).flatMap(({ id, tap }) => [
      fader(rig, owner, id, -Infinity),
      ...(tap === 'switchable' ? [tapSwitch(rig, owner, id)] : []),
    ]),
    ...busesOf(rig, strip).map((bus) => toggle(rig, owner, bus, bus === 'main')),
    ...(rig.desk.solo ? [toggle(rig, owner, 'solo')] : []),
    ...(rig.desk.solo?.includes('in-place') ? [toggle(rig, owner, 'safe')] : []),
  ];
}

/** What the second path of an in-line strip is fed from. */
const pathSwitch = (rig: Rig, owner: Owner): Control =>
  choice(
    rig,
    owner,
    'path',
    [
      { value: 'jack', label: 'its own input' },
      { value: 'first', label: 'the first path, after its fader' },
    ],
    'jack',
  );

/** An aux or subgroup is soloed to be listened to; it closes nothing. */
const busSolo = (rig: Rig, owner: Owner): Control[] =>
  listens(rig) ? [toggle(rig, owner, 'solo')] : [];

function subgroupControls(rig: Rig, subgroup: Subgroup): Control[] {
  const owner = deskOwner(subgroup.id);
  return [
    fader(rig, owner, 'fader'),
    toggle(rig, owner, 'mute'),
    ...busSolo(rig, owner),
    ...(subgroup.main ? [mainAssign(rig, owner, isStereoSubgroup(subgroup))] : []),
  ];
}

/** A stereo subgroup is assigned to the main bus or not; a mono one to its left, its right or both. */
const mainAssign = (rig: Rig, owner: Owner, isStereo: boolean): Control =>
  isStereo
    ? toggle(rig, owner, 'main', true)
    : choice(
        rig,
        owner,
        'main',
        [
          { value: NONE, label: 'nowhere' },
          { value: 'left', label: 'left' },
          { value: 'right', label: 'right' },
          { value: 'both', label: 'left and right' },
        ],
        'both',
      );

const MODE_LABELS: Readonly<Record<SoloMode, string>> = {
  'in-place': 'in place',
  pfl: 'before the fader (PFL)',
  afl: 'after the fader (AFL)',
};

function controlRoomControls(rig: Rig): Control[] {
  const { controlRoom, solo = [] } = rig.desk;
  const [first] = solo;
  const mode =
    first && solo.length > 1
      ? [
          choice(
            rig,
            CONTROL_ROOM,
            'mode',
            solo.map((value) => ({ value, label: MODE_LABELS[value] })),
            first,
          ),
        ]
      : [];
  if (!controlRoom) return mode;
  const sources = [
    { value: 'main', label: 'the main bus' },
    ...controlRoom.inputs.map(({ id, label }) => ({ value: id, label })),
  ];
  return [
    choice(rig, CONTROL_ROOM, 'listen', sources, 'main'),
    ...mode,
    toggle(rig, CONTROL_ROOM, 'mono'),
    fader(rig, CONTROL_ROOM, 'level'),
  ];
}
