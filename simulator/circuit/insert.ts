import { type Owner, part } from '../rig/address.ts';
import { deskStages } from './active-stages.ts';
import type { Legs } from './circuit.ts';
import { addInput } from './input.ts';
import type { Wiring } from './wiring.ts';

/**
 * An insert: the signal goes out at the send jack, and comes back at the return jack. Without cords the return is
 * fed by its normal: from the send, unless the patchbay has it otherwise.
 */
export function addInsert(wiring: Wiring, owner: Owner, from: Legs): Legs {
  wiring.through(part(owner, 'insert.send'), from, 1);
  const back = addInput(wiring, part(owner, 'insert.return'), from.length);
  const insert = wiring.through(part(owner, 'insert'), back, 1);
  wiring.activate(insert, deskStages(wiring.rig).insert);
  return insert;
}
