import { isOn, numberAt, pickAt, type Setup } from '../board/board.ts';
import { BOX_MAIN, boxOwner, type Owner, part } from '../rig/address.ts';
import { type BoxChannel, pluginAddress, type SendBus, takesSends } from '../rig/box-channels.ts';
import type { Plugin } from '../rig/schema.ts';
import type { Seconds } from '../units/frequency.ts';
import type { Ratio } from '../units/level.ts';
import { panMono, panStereo } from '../units/pan.ts';
import type { Law, Legs } from './circuit.ts';
import type { Compensation } from './compensation.ts';
import { addDeviceStages } from './device.ts';
import { gainRatio, muteRatio, switchRatio } from './ratios.ts';
import type { Wiring } from './wiring.ts';

/**
 * Plug-ins, fader, mute and pan of a track or bus, its sends and its main feed. The pan of a stereo channel
 * folds the far side into the near one.
 */
export function addChannel(
  wiring: Wiring,
  setup: Setup,
  channel: BoxChannel,
  from: Legs,
  compensation: () => Compensation,
): void {
  const { owner, plugins, buses } = channel;
  const at = (name: string) => part(owner, name);
  const treated = plugins.reduce(
    (legs, plugin) => addPlugin(wiring, setup, pluginAddress(channel, plugin), plugin, legs),
    from,
  );
  const fader = wiring.through(at('fader'), treated, gainRatio(setup, at('fader')));
  const direct = wiring.through(at('mute'), fader, muteRatio(setup, at('mute')));
  const position = numberAt(setup, at('pan'));
  const panned =
    direct.length === 2
      ? wiring.folded(at('pan'), direct, panStereo(position))
      : wiring.panned(at('pan'), direct, panMono(setup.rig.box.panLaw, position));
  const heldBack = (goal: Owner): Law => ({ kind: 'delay', time: compensation()(owner, goal) });
  for (const bus of buses.filter(takesSends)) {
    const tapped = tapOf(setup, owner, bus) === 'pre' ? treated : direct;
    addSend(wiring, setup, at(bus.id), tapped, heldBack(boxOwner(bus.id)));
  }
  wiring.through(at('main'), panned, switchRatio(setup, at('main')), heldBack(BOX_MAIN));
}

/** Where a send is taken: before the fader and after the plug-ins, or after the mute. */
const tapOf = (setup: Setup, owner: Owner, { id, tap }: SendBus): string | undefined =>
  tap === 'switchable' ? pickAt(setup, part(part(owner, id), 'tap')) : tap;

/** A send to a stereo bus. It is taken before the pan: what is mono goes to the middle, by the pan law of the box. */
function addSend(wiring: Wiring, setup: Setup, at: string, from: Legs, law: Law): void {
  const ratio = gainRatio(setup, at);
  if (from.length === 2) {
    wiring.through(at, from, ratio, law);
    return;
  }
  const middle = panMono(setup.rig.box.panLaw, 0);
  const scaled = (side: Ratio) => (side * ratio) as Ratio;
  wiring.panned(at, from, { left: scaled(middle.left), right: scaled(middle.right) }, law);
}

/**
 * A plug-in, as wide as what comes in. One that is off is passed by, with its latency; its places stay,
 * with nothing in them.
 */
function addPlugin(
  wiring: Wiring,
  setup: Setup,
  at: string,
  { kind, latencyMs }: Plugin,
  from: Legs,
): Legs {
  const on = isOn(setup, part(at, 'on'));
  const time = (latencyMs / 1000) as Seconds;
  const input = wiring.through(part(at, 'in'), from, on ? 1 : 0, { kind: 'delay', time });
  const treated = addDeviceStages(wiring, setup, at, kind, input, from.length);
  return on ? treated : from;
}
