import { type Address, boxOwner, type Owner, part } from './address.ts';
import { onceARig } from './once-a-rig.ts';
import type { BoxBus, Plugin, Rig } from './schema.ts';

/** A track or a bus of the box, seen as what both are: plug-ins, fader, mute, pan, sends, assignments. */
export interface BoxChannel {
  readonly id: string;
  readonly owner: Owner;
  readonly plugins: readonly Plugin[];
  /** The buses that it may feed: only later ones, so that the box has no loops. */
  readonly buses: readonly BoxBus[];
}

/** All tracks, then all buses: none feeds one that stands before it. The same rig gives the same list. */
export const boxChannels = onceARig(({ box: { tracks, buses } }): readonly BoxChannel[] => [
  ...tracks.map(({ id, plugins }) => ({ id, owner: boxOwner(id), plugins, buses })),
  ...buses.map(({ id, plugins }, index) => ({
    id,
    owner: boxOwner(id),
    plugins,
    buses: buses.slice(index + 1),
  })),
]);

/** A bus that takes sends, and where they are taken. */
export type SendBus = BoxBus & { readonly tap: NonNullable<BoxBus['tap']> };

export const takesSends = (bus: BoxBus): bus is SendBus => bus.tap !== undefined;

/** The address of a plug-in: `box.cello.comp`. Its controls and places are parts of it. */
export const pluginAddress = ({ owner }: BoxChannel, { id }: Plugin): Address => part(owner, id);

/** A plug-in and its address. */
export interface PluginAt {
  readonly address: Address;
  readonly plugin: Plugin;
}

/** The plug-in that a place or control is a part of, if it is one: `box.cello.comp.threshold`. */
export function pluginAt(rig: Rig, place: Address): PluginAt | undefined {
  const [section, id, name] = place.split('.');
  if (section !== 'box') return undefined;
  const channel = boxChannels(rig).find((one) => one.id === id);
  const plugin = channel?.plugins.find((one) => one.id === name);
  return channel && plugin ? { plugin, address: pluginAddress(channel, plugin) } : undefined;
}

/** The bus that a place or control of a track or bus in the box is a send to, or the tap of one. */
export function sendBusAt(rig: Rig, place: Address): SendBus | undefined {
  const [section, id, name] = place.split('.');
  if (section !== 'box') return undefined;
  const channel = boxChannels(rig).find((one) => one.id === id);
  return channel?.buses.filter(takesSends).find((one) => one.id === name);
}
