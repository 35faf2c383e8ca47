import { pickAt, type Setup } from '../board/board.ts';
import { BOX_MAIN, lineOutsOf, type Owner, part } from '../rig/address.ts';
import type { Legs } from './circuit.ts';
import { type Compensation, goalOf, NOT_AT_ALL } from './compensation.ts';
import type { Wiring } from './wiring.ts';

/**
 * Where a channel or the main mix waits on its way to where it is assigned: a place of its own in a box that
 * compensates. It is stereo; what leaves a mono channel by one output passes its left side.
 */
export function addAssignment(
  wiring: Wiring,
  setup: Setup,
  owner: Owner,
  compensation: () => Compensation,
): void {
  if (!wiring.rig.box.compensates) return;
  const to = pickAt(setup, part(owner, 'to'));
  const time = to === undefined ? NOT_AT_ALL : compensation()(owner, goalOf(to));
  const waiting = wiring.place(part(owner, 'to'), 2, { kind: 'delay', time });
  if (to === undefined) return;
  const from = legsTowards(wiring, owner, to);
  if (from.length === 2) wiring.join(from, waiting, 1);
  else wiring.wire(from[0], waiting[0], 1);
}

/** What a channel or the main mix gives to where it is assigned. */
export const assignedLegs = (wiring: Wiring, owner: Owner, to: string): Legs =>
  wiring.rig.box.compensates ? wiring.legsAt(part(owner, 'to')) : legsTowards(wiring, owner, to);

/** A channel that is assigned to one output leaves before its pan. */
function legsTowards(wiring: Wiring, owner: Owner, to: string): Legs {
  if (owner === BOX_MAIN) return wiring.legsAt(part(owner, 'fader'));
  return wiring.legsAt(part(owner, lineOutsOf(to).length === 1 ? 'mute' : 'pan'));
}
