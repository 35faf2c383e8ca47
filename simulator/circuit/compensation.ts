import { isOn, numberAt, pickAt, type Setup } from '../board/board.ts';
import { type Address, BOX_MAIN, boxOwner, lineOutsOf, type Owner, part } from '../rig/address.ts';
import { type BoxChannel, boxChannels, pluginAddress, takesSends } from '../rig/box-channels.ts';
import type { Seconds } from '../units/frequency.ts';

/** Where things come together that left the box: all outputs of the converter as one. */
export const CONVERTER = 'converter';

/** How long the box holds back what an owner gives to a bus, to the main mix or to the {@link CONVERTER}. */
export type Compensation = (from: Owner, to: Owner | typeof CONVERTER) => Seconds;

export const NOT_AT_ALL = 0 as Seconds;

/**
 * The delays by which the box makes up for the latency of its plug-ins, as the board stands: whatever
 * meets at a bus, in the main mix or at the converter has been as long on its way as the slowest of it.
 * A way counts that is assigned or sent, be its fader down or its mute on; a plug-in that is out of the
 * way does not, nor a bus that nothing comes into. Each way is held back behind the channel, so that one
 * channel may feed a slow bus and an output at once. Nothing is held back where the rig does not compensate.
 */
export function compensationOf(setup: Setup): Compensation {
  const { rig } = setup;
  if (!rig.box.compensates) return () => NOT_AT_ALL;
  const arrives = new Map<Owner, number>(rig.box.tracks.map(({ id }) => [boxOwner(id), 0]));
  const leaves = new Map<Owner, number>();
  const bring = (goal: Owner, time: number) => {
    arrives.set(goal, Math.max(arrives.get(goal) ?? 0, time));
  };

  for (const channel of boxChannels(rig)) {
    const arrived = arrives.get(channel.owner);
    if (arrived === undefined) continue;
    const time = arrived + latencyOf(setup, channel);
    leaves.set(channel.owner, time);
    for (const goal of goalsOf(setup, channel)) bring(goal, time);
  }
  const mix = arrives.get(BOX_MAIN);
  if (mix !== undefined) {
    leaves.set(BOX_MAIN, mix);
    if (pickAt(setup, part(BOX_MAIN, 'to')) !== undefined) bring(CONVERTER, mix);
  }

  return (from, to) => {
    const [left, arrived] = [leaves.get(from), arrives.get(to)];
    if (left === undefined || arrived === undefined) return NOT_AT_ALL;
    return Math.max(0, arrived - left) as Seconds;
  };
}

/** How long a channel takes, in seconds: its plug-ins that are on. */
const latencyOf = (setup: Setup, channel: BoxChannel): number =>
  channel.plugins.reduce((sum, plugin) => {
    const on = isOn(setup, part(pluginAddress(channel, plugin), 'on'));
    return on ? sum + plugin.latencyMs / 1000 : sum;
  }, 0);

/** What a channel feeds as the board stands. */
function goalsOf(setup: Setup, { owner, buses }: BoxChannel): Address[] {
  const sent = buses
    .filter(takesSends)
    .filter(({ id }) => numberAt(setup, part(owner, id)) > -Infinity);
  const to = pickAt(setup, part(owner, 'to'));
  return [
    ...sent.map(({ id }) => boxOwner(id)),
    ...(isOn(setup, part(owner, 'main')) ? [BOX_MAIN] : []),
    ...(to === undefined ? [] : [goalOf(to)]),
  ];
}

/** What an assignment leads to: a bus, or the converter. */
export const goalOf = (to: string): Owner | typeof CONVERTER =>
  lineOutsOf(to).length > 0 ? CONVERTER : boxOwner(to);
