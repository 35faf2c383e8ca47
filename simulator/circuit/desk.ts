import { isOn, type Setup } from '../board/board.ts';
import { DESK_MAIN, deskOwner, type Owner, part } from '../rig/address.ts';
import { deskStages } from './active-stages.ts';
import type { Legs } from './circuit.ts';
import { addInsert } from './insert.ts';
import { gainRatio, muteRatio } from './ratios.ts';
import { addAssign, addStrip } from './strip.ts';
import type { Wiring } from './wiring.ts';

/** The desk: strips down to their sends and assigns, aux masters, subgroups, and the main bus. */
export function addDesk(wiring: Wiring): void {
  const { strips, auxes, subgroups } = wiring.rig.desk;
  const feeders = strips.map(({ id }) => deskOwner(id));
  for (const strip of strips) wiring.section((setup) => addStrip(wiring, setup, strip));
  for (const { id } of auxes) {
    wiring.section((setup) => addAux(wiring, setup, id, feeders));
  }
  for (const { id } of subgroups) {
    wiring.section((setup) => {
      const owner = deskOwner(id);
      const fader = addBus(wiring, setup, owner, id, feeders);
      const at = part(owner, 'mute');
      const mute = wiring.through(at, fader, muteRatio(setup, at));
      wiring.through(part(owner, 'out'), mute, 1);
      addAssign(wiring, setup, owner, 'main', mute);
    });
  }
  wiring.section((setup) => {
    const all = [...feeders, ...subgroups.map(({ id }) => deskOwner(id))];
    const main = addBus(wiring, setup, DESK_MAIN, 'main', all);
    wiring.through(part(DESK_MAIN, 'out'), main, 1);
  });
}

/** An aux: the sum of its sends, and its master. */
function addAux(wiring: Wiring, setup: Setup, id: string, strips: readonly Owner[]): void {
  const active = deskStages(setup.rig);
  const owner = deskOwner(id);
  const sum = wiring.place(part(owner, 'sum'), 1);
  for (const strip of strips) wiring.join(wiring.legsAt(part(strip, id)), sum, 1);
  // A send that is closed is still a resistor on the bus.
  wiring.activate(sum, active.sum(strips.length));
  const level = wiring.through(part(owner, 'level'), sum, gainRatio(setup, part(owner, 'level')));
  wiring.activate(wiring.through(part(owner, 'out'), level, 1), active.fader);
}

/** The sum of what is assigned to a bus, its insert and its fader. @param bus what the assigns to it are called. */
function addBus(
  wiring: Wiring,
  setup: Setup,
  owner: Owner,
  bus: string,
  feeders: readonly Owner[],
): Legs {
  const active = deskStages(setup.rig);
  const sum = wiring.place(part(owner, 'sum'), 2);
  for (const feeder of feeders) wiring.join(wiring.legsAt(part(feeder, bus)), sum, 1);
  // What is muted is still assigned, and its resistor still on the bus.
  const assigned = feeders.filter((feeder) => isOn(setup, part(feeder, bus)));
  wiring.activate(sum, active.sum(assigned.length));
  const insert = addInsert(wiring, setup, owner, sum);
  const fader = part(owner, 'fader');
  const end = wiring.through(fader, insert, gainRatio(setup, fader));
  wiring.activate(end, active.fader);
  return end;
}
