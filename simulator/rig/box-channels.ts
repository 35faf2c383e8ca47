import { type Address, boxOwner, type Owner, part } from './address.ts';
import type { BoxBus, Plugin, Rig } from './schema.ts';

/** A track or a bus of the box, seen as what both are: plug-ins, fader, mute, pan, sends, assignments. */
export interface BoxChannel {
  readonly id: string;
  readonly owner: Owner;
  readonly plugins: readonly Plugin[];
  /** The buses that it may feed: only later ones, so that the box has no loops. */
  readonly buses: readonly BoxBus[];
}

const known = new WeakMap<Rig, readonly BoxChannel[]>();

/** All tracks, then all buses: none feeds one that stands before it. The same rig gives the same list. */
export function boxChannels(rig: Rig): readonly BoxChannel[] {
  const listed = known.get(rig) ?? list(rig);
  known.set(rig, listed);
  return listed;
}

const list = ({ box: { tracks, buses } }: Rig): BoxChannel[] => [
  ...tracks.map(({ id, plugins }) => ({ id, owner: boxOwner(id), plugins, buses })),
  ...buses.map(({ id, plugins }, index) => ({
    id,
    owner: boxOwner(id),
    plugins,
    buses: buses.slice(index + 1),
  })),
];

/** A bus that takes sends, and where they are taken. */
export type SendBus = BoxBus & { readonly tap: NonNullable<BoxBus['tap']> };

export const takesSends = (bus: BoxBus): bus is SendBus => bus.tap !== undefined;

/** The address of a plug-in: `box.cello.comp`. Its controls and places are parts of it. */
export const pluginAddress = ({ owner }: BoxChannel, { id }: Plugin): Address => part(owner, id);
