import {
  type Address,
  type Board,
  controls,
  levelAt,
  part,
  type Setup,
  valueAt,
} from '../../../simulator/index.ts';
import type { Scene } from './scene.ts';

/**
 * What of a drawing looks as it did before, so that it need not be drawn anew. While a hand turns a level
 * or a pan, most of a desk does: only what the sound reaches, and what is turned, looks different. When
 * anything else changes (a cord, a switch, what is followed), all of it counts as changed.
 */
export function looksAlike(drawn: object, before: Scene, after: Scene): boolean {
  if (before === after) return true;
  const outs = addressesIn(drawn);
  if (!standsAlike(outs.keys(), before, after)) return false;
  const isChosen = ({ selected }: Scene) => selected !== undefined && outs.has(selected);
  if (before.selected !== after.selected && (isChosen(before) || isChosen(after))) return false;
  for (const [address, out] of outs) {
    if (isPlace(before, address)) {
      const [was, is] = [before.light(address), after.light(address)];
      if (was.brightness !== is.brightness || was.copies !== is.copies) return false;
      if (was.isLoop !== is.isLoop || was.isSilent !== is.isSilent) return false;
    }
    if (isPlace(before, out) && levelAt(before.solution, out) !== levelAt(after.solution, out)) {
      return false;
    }
  }
  return true;
}

/**
 * Whether controls, and output jacks, stand as they did on the same desk, so that what shows nothing else need not
 * be made anew. Cords, and all switches, count as if they stood at each of them.
 */
export function standsAlike(addresses: Iterable<Address>, before: Scene, after: Scene): boolean {
  if (!isOfOneDesk(before, after)) return false;
  for (const address of addresses) {
    if (controlValue(before.setup, address) !== controlValue(after.setup, address)) return false;
  }
  return routingOf(before.setup) === routingOf(after.setup);
}

const isOfOneDesk = (before: Scene, after: Scene): boolean =>
  before.setup.rig === after.setup.rig &&
  before.id === after.id &&
  before.start === after.start &&
  before.followed === after.followed &&
  before.locked === after.locked &&
  before.scale === after.scale;

const isPlace = ({ solution }: Scene, address: Address): boolean =>
  solution.circuit.stagesAt.has(address);

const controlValue = (setup: Setup, address: Address) =>
  controls(setup.rig).has(address) ? valueAt(setup, address) : undefined;

const routings = new WeakMap<Board, string>();

/** How a board is routed: all that stands off its default but levels and pans. Boards that differ in these alone have the same. */
export function routingOf({ rig, board }: Setup): string {
  const before = routings.get(board);
  if (before !== undefined) return before;
  const list = controls(rig);
  const routing = Object.entries(board)
    .filter(([address]) => {
      const kind = list.get(address)?.kind;
      return kind !== 'gain' && kind !== 'pan';
    })
    .map(([address, value]) => `${address} ${value}`)
    .sort()
    .join('\n');
  routings.set(board, routing);
  return routing;
}

const known = new WeakMap<object, ReadonlyMap<Address, Address>>();

/**
 * All addresses in something that is drawn, wherever they stand in it, and the places of its inserts; each
 * with the place where that would leave, if it is an owner.
 */
function addressesIn(drawn: object): ReadonlyMap<Address, Address> {
  const before = known.get(drawn);
  if (before) return before;
  const outs = new Map<Address, Address>();
  const add = (address: Address) => outs.set(address, part(address, 'out'));
  const gather = (value: unknown): void => {
    if (typeof value === 'string') {
      if (value.includes('.')) add(value);
    } else if (typeof value === 'object' && value !== null) {
      for (const inner of Object.values(value)) gather(inner);
    }
  };
  gather(drawn);
  for (const address of [...outs.keys()]) {
    for (const name of ['insert', 'insert.send', 'insert.return']) add(part(address, name));
  }
  known.set(drawn, outs);
  return outs;
}
