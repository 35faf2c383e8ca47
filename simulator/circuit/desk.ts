import { isOn, pickAt, type Setup, valueAt } from '../board/board.ts';
import { type Address, DESK_MAIN, deskOwner, type Owner, part } from '../rig/address.ts';
import type { Subgroup } from '../rig/schema.ts';
import { assignableTo, isStereoSubgroup, listens, sendersTo } from '../rig/strip-routes.ts';
import { deskStages } from './active-stages.ts';
import type { Legs } from './circuit.ts';
import { addControlRoom } from './control-room.ts';
import { addInsert } from './insert.ts';
import { gainRatio, muteRatio, switchRatio } from './ratios.ts';
import { type Soloing, soloingOf } from './solo.ts';
import { addSolo, addStrip } from './strip.ts';
import type { Wiring } from './wiring.ts';

/** The desk: strips down to their sends and assigns, aux masters, subgroups, the main bus, and the control room. */
export function addDesk(wiring: Wiring): void {
  const { rig } = wiring;
  const { strips, auxes, subgroups } = rig.desk;
  const soloing = wiring.shared(soloingOf);
  for (const strip of strips) wiring.section((setup) => addStrip(wiring, setup, strip, soloing));
  for (const { id } of auxes) {
    const senders = sendersTo(rig, id).map(ownerOfStrip);
    wiring.section((setup) => addAux(wiring, setup, id, senders, soloing));
  }
  const assignable = (bus: string) => assignableTo(rig, bus).map(ownerOfStrip);
  for (const subgroup of subgroups) {
    wiring.section((setup) =>
      addSubgroup(wiring, setup, subgroup, assignable(subgroup.id), soloing),
    );
  }
  wiring.section((setup) => {
    const groups = subgroups.filter(({ main }) => main).map(ownerOfStrip);
    const main = addBus(wiring, setup, DESK_MAIN, 'main', [...assignable('main'), ...groups], 2);
    wiring.through(part(DESK_MAIN, 'out'), main, 1);
  });
  wiring.section((setup) => addControlRoom(wiring, setup, soloing()));
}

const ownerOfStrip = ({ id }: { readonly id: string }): Owner => deskOwner(id);

/** An aux: the sum of its sends, and its master. */
function addAux(
  wiring: Wiring,
  setup: Setup,
  id: string,
  strips: readonly Owner[],
  soloing: () => Soloing,
): void {
  const active = deskStages(setup.rig);
  const owner = deskOwner(id);
  const sum = wiring.place(part(owner, 'sum'), 1);
  for (const strip of strips) wiring.join(wiring.legsAt(part(strip, id)), sum, 1);
  // A send that is closed is still a resistor on the bus.
  wiring.activate(sum, active.sum(strips.length));
  const level = wiring.through(part(owner, 'level'), sum, gainRatio(setup, part(owner, 'level')));
  const out = wiring.through(part(owner, 'out'), level, 1);
  wiring.activate(out, active.fader);
  if (listens(setup.rig)) addSolo(wiring, owner, out, soloing().heard);
}

function addSubgroup(
  wiring: Wiring,
  setup: Setup,
  subgroup: Subgroup,
  strips: readonly Owner[],
  soloing: () => Soloing,
): void {
  const owner = deskOwner(subgroup.id);
  const width = isStereoSubgroup(subgroup) ? 2 : 1;
  const fader = addBus(wiring, setup, owner, subgroup.id, strips, width);
  const at = part(owner, 'mute');
  const mute = wiring.through(at, fader, muteRatio(setup, at));
  wiring.through(part(owner, 'out'), mute, 1);
  if (listens(setup.rig)) addSolo(wiring, owner, mute, soloing().heard);
  if (subgroup.main) addMainAssign(wiring, setup, part(owner, 'main'), mute);
}

/** The assign of a subgroup to the main bus; of a mono one to its left, its right or both. */
function addMainAssign(wiring: Wiring, setup: Setup, at: Address, from: Legs): void {
  if (from.length === 2) {
    wiring.through(at, from, switchRatio(setup, at));
    return;
  }
  const side = pickAt(setup, at);
  const ratio = (own: string) => (side === own || side === 'both' ? 1 : 0);
  const to = wiring.place(at, 2);
  wiring.wire(from[0], to[0], ratio('left'));
  wiring.wire(from[0], to[1], ratio('right'));
}

/** The sum of what is assigned to a bus, its insert and its fader. @param bus what the assigns to it are called. */
function addBus(
  wiring: Wiring,
  setup: Setup,
  owner: Owner,
  bus: string,
  feeders: readonly Owner[],
  width: 1 | 2,
): Legs {
  const active = deskStages(setup.rig);
  const sum = wiring.place(part(owner, 'sum'), width);
  for (const feeder of feeders) wiring.join(wiring.legsAt(part(feeder, bus)), sum, 1);
  // What is muted is still assigned, and its resistor still on the bus.
  const assigned = feeders.filter((feeder) => isAssigned(setup, part(feeder, bus)));
  wiring.activate(sum, active.sum(assigned.length));
  const insert = addInsert(wiring, owner, sum);
  const fader = part(owner, 'fader');
  const end = wiring.through(fader, insert, gainRatio(setup, fader));
  wiring.activate(end, active.fader);
  return end;
}

const isAssigned = (setup: Setup, assign: Address): boolean =>
  typeof valueAt(setup, assign) === 'boolean'
    ? isOn(setup, assign)
    : pickAt(setup, assign) !== undefined;
