import type { Setup } from '../board/board.ts';
import { part, rackOwner } from '../rig/address.ts';
import { addDeviceStages } from './device.ts';
import type { Wiring } from './wiring.ts';

/** The devices of the rack, each from its inputs to its outputs. */
export function addRack(wiring: Wiring, setup: Setup): void {
  for (const { id, kind, inputs, outputs } of setup.rig.rack) {
    const owner = rackOwner(id);
    const input = wiring.place(part(owner, 'in'), inputs);
    const treated = addDeviceStages(wiring, setup, owner, kind, input, outputs);
    wiring.through(part(owner, 'out'), treated, 1);
  }
}
