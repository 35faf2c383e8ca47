import { BOX_MAIN, boxOwner, lineIn, lineOut, linePair, linePairIn } from './address.ts';
import { type BoxChannel, boxChannels, pluginAddress, takesSends } from './box-channels.ts';
import { type Control, NONE, type Option } from './control.ts';
import { choice, fader, pan, tapSwitch, toggle } from './control-makers.ts';
import { deviceControls } from './device-controls.ts';
import type { Capture, Rig } from './schema.ts';

/** All controls of the box: tracks and buses, the main mix, and capture tracks. */
export const boxControls = (rig: Rig): Control[] => [
  ...boxChannels(rig).flatMap((channel) => channelControls(rig, channel)),
  fader(rig, BOX_MAIN, 'fader'),
  choice(rig, BOX_MAIN, 'to', [nowhere, ...pairOptions(rig)], NONE),
  ...rig.box.captures.flatMap((capture) => captureControls(rig, capture)),
];

const nowhere: Option = { value: NONE, label: 'nowhere' };
const nothing: Option = { value: NONE, label: 'nothing' };

const numbers = (count: number) =>
  Array.from({ length: Math.max(0, count) }, (_, index) => index + 1);

const pairOptions = ({ converter }: Rig): Option[] =>
  numbers(converter.outputs - 1).map((first) => ({
    value: linePair(first),
    label: `outputs ${first}–${first + 1}`,
  }));

const outputOptions = ({ converter }: Rig): Option[] =>
  numbers(converter.outputs).map((number) => ({
    value: lineOut(number),
    label: `output ${number}`,
  }));

const pairInOptions = ({ converter }: Rig): Option[] =>
  numbers(converter.inputs - 1).map((first) => ({
    value: linePairIn(first),
    label: `inputs ${first}–${first + 1}`,
  }));

const inputOptions = ({ converter }: Rig): Option[] =>
  numbers(converter.inputs).map((number) => ({ value: lineIn(number), label: `input ${number}` }));

function channelControls(rig: Rig, channel: BoxChannel): Control[] {
  const { owner, plugins, buses } = channel;
  const goals = [
    nowhere,
    ...outputOptions(rig),
    ...pairOptions(rig),
    ...buses.map(({ id, label }) => ({ value: id, label })),
  ];
  return [
    ...plugins.flatMap((plugin) => {
      const at = pluginAddress(channel, plugin);
      return [toggle(rig, at, 'on', true), ...deviceControls(rig, at, plugin.kind)];
    }),
    fader(rig, owner, 'fader'),
    toggle(rig, owner, 'mute'),
    pan(rig, owner),
    ...buses
      .filter(takesSends)
      .flatMap(({ id, tap }) => [
        fader(rig, owner, id, -Infinity),
        ...(tap === 'switchable' ? [tapSwitch(rig, owner, id)] : []),
      ]),
    choice(rig, owner, 'to', goals, NONE),
    toggle(rig, owner, 'main'),
  ];
}

/** What a capture track records, and where it plays back to: as wide as it is. */
function captureControls(rig: Rig, { id, stereo }: Capture): Control[] {
  const owner = boxOwner(id);
  const ins = stereo ? pairInOptions(rig) : inputOptions(rig);
  const outs = stereo ? pairOptions(rig) : outputOptions(rig);
  return [
    choice(rig, owner, 'in', [nothing, ...ins], NONE),
    choice(rig, owner, 'to', [nowhere, ...outs], NONE),
  ];
}
