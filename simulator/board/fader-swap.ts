import { type Address, deskOwner, part } from '../rig/address.ts';
import type { Strip } from '../rig/schema.ts';
import { firstPathOf, secondPathOf } from '../rig/strip-routes.ts';
import { isOn, type Setup } from './board.ts';

/** The fader that turns a strip up and down: its own, or on an in-line strip with swapped faders that of the other path. */
export function faderOf(setup: Setup, strip: Strip): Address {
  const own = part(deskOwner(strip.id), 'fader');
  const first = firstPathOf(setup.rig, strip);
  const other = first ?? secondPathOf(setup.rig, strip);
  if (!other) return own;
  const swap = part(deskOwner((first ?? strip).id), 'swap');
  return isOn(setup, swap) ? part(deskOwner(other.id), 'fader') : own;
}
