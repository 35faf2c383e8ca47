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
  if (!isOfOneDesk(before, after) || routingOf(before.setup) !== routingOf(after.setup))
    return false;
  const addresses = addressesIn(drawn);
  if (addresses.has(before.selected ?? '') !== addresses.has(after.selected ?? '')) return false;
  if (before.selected !== after.selected && addresses.has(after.selected ?? '')) return false;
  for (const address of addresses) {
    if (controlValue(before.setup, address) !== controlValue(after.setup, address)) return false;
    if (isPlace(before, address)) {
      const [was, is] = [before.light(address), after.light(address)];
      if (was.brightness !== is.brightness || was.copies !== is.copies) return false;
      if (was.isLoop !== is.isLoop || was.isSilent !== is.isSilent) return false;
    }
    const out = part(address, 'out');
    if (isPlace(before, out) && levelAt(before.solution, out) !== levelAt(after.solution, out)) {
      return false;
    }
  }
  return true;
}

/** Whether the field of a control or of an output jack stands as it did, so that it need not be made anew. */
export function standsAlike(address: Address, before: Scene, after: Scene): boolean {
  return (
    before.setup.rig === after.setup.rig &&
    before.id === after.id &&
    before.locked === after.locked &&
    before.start === after.start &&
    controlValue(before.setup, address) === controlValue(after.setup, address) &&
    routingOf(before.setup) === routingOf(after.setup)
  );
}

const isOfOneDesk = (before: Scene, after: Scene): boolean =>
  before.setup.rig === after.setup.rig &&
  before.followed === after.followed &&
  before.locked === after.locked &&
  before.scale === after.scale;

const isPlace = ({ solution }: Scene, address: Address): boolean =>
  solution.circuit.stagesAt.has(address);

const controlValue = (setup: Setup, address: Address) =>
  controls(setup.rig).has(address) ? valueAt(setup, address) : undefined;

const routings = new WeakMap<Board, Board>();
let last: Setup | undefined;

/**
 * A board that stays the same while levels and pans alone are turned. Desks that take turns on a page ask
 * for it in vain now and then, and are drawn anew.
 */
export function routingOf(setup: Setup): Board {
  const known = routings.get(setup.board);
  if (known) return known;
  const routing =
    last && isTurned(last, setup) ? (routings.get(last.board) ?? last.board) : setup.board;
  routings.set(setup.board, routing);
  last = setup;
  return routing;
}

/** Whether two boards of a rig differ in levels and pans alone. */
function isTurned(before: Setup, after: Setup): boolean {
  if (before.rig !== after.rig) return false;
  const list = controls(after.rig);
  const isRouting = (address: Address) => {
    const kind = list.get(address)?.kind;
    return kind !== 'gain' && kind !== 'pan';
  };
  const addresses = new Set([...Object.keys(before.board), ...Object.keys(after.board)]);
  for (const address of addresses) {
    if (before.board[address] !== after.board[address] && isRouting(address)) return false;
  }
  return true;
}

const known = new WeakMap<object, ReadonlySet<Address>>();

/** All addresses in something that is drawn, wherever they stand in it, and the places of its inserts. */
function addressesIn(drawn: object): ReadonlySet<Address> {
  const before = known.get(drawn);
  if (before) return before;
  const found = new Set<Address>();
  const gather = (value: unknown): void => {
    if (typeof value === 'string') {
      if (value.includes('.')) found.add(value);
    } else if (typeof value === 'object' && value !== null) {
      for (const inner of Object.values(value)) gather(inner);
    }
  };
  gather(drawn);
  for (const address of [...found]) {
    for (const name of ['insert', 'insert.send', 'insert.return']) found.add(part(address, name));
  }
  known.set(drawn, found);
  return found;
}
