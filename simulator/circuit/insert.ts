import { pickAt, type Setup } from '../board/board.ts';
import { LEGS, type Owner, part } from '../rig/address.ts';
import { deskStages } from './active-stages.ts';
import type { Legs } from './circuit.ts';
import { addInput } from './input.ts';
import type { Wiring } from './wiring.ts';

/**
 * An insert: the signal goes out at the send jack, and comes back at the return jack. A cord in the
 * return takes the place of the direct connection; a cord in the send alone only splits the signal off.
 */
export function addInsert(wiring: Wiring, setup: Setup, owner: Owner, from: Legs): Legs {
  const width = from.length;
  const send = wiring.through(part(owner, 'insert.send'), from, 1);
  const place = part(owner, 'insert.return');
  const back = addInput(wiring, setup, place, width);
  const insert = wiring.place(part(owner, 'insert'), width);
  insert.forEach((joined, side) => {
    const jack = width === 2 ? part(place, LEGS[side] ?? 'l') : place;
    const comes = pickAt(setup, jack) === undefined ? send[side] : back[side];
    if (comes !== undefined) wiring.wire(comes, joined, 1);
  });
  wiring.activate(insert, deskStages(wiring.rig).insert);
  return insert;
}
