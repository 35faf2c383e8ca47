import {
  type Address,
  addressesMoved,
  controls,
  levelAt,
  part,
  placesReached,
  type Setup,
} from '../../../simulator/index.ts';
import type { Glow } from '../../drawing/light.ts';
import type { Scene } from './scene.ts';

/**
 * What of a drawing looks as it did before, so that it need not be drawn anew. While a hand turns a level
 * or a pan, most of a desk does: only what the sound reaches, and what is turned, looks different. When
 * anything else changes (a cord, a switch, what is followed), all of it counts as changed.
 */
export function looksAlike(drawn: object, before: Scene, after: Scene): boolean {
  if (before === after) return true;
  const { addresses, outs } = addressesIn(drawn);
  if (!standsAlike(addresses, before, after)) return false;
  const isChosen = ({ selected }: Scene) => selected !== undefined && addresses.includes(selected);
  if (before.selected !== after.selected && (isChosen(before) || isChosen(after))) return false;
  const { reached } = between(before, after);
  const { stagesAt } = after.solution.circuit;
  // Seen from an output, what comes after a place counts as well.
  const isUpToPlace = after.followed.kind !== 'output' && after.solution.loops.length === 0;
  const isLeftAlone = (place: Address) => reached?.has(place) === false || !stagesAt.has(place);
  return (
    addresses.every(
      (place) => (isUpToPlace && isLeftAlone(place)) || isLitAlike(place, before, after),
    ) && outs.every((place) => isLeftAlone(place) || isAsLoud(place, before, after))
  );
}

/**
 * Whether controls, and output jacks, stand as they did on the same desk, so that what shows nothing else need not
 * be made anew. Cords, and all switches, count as if they stood at each of them.
 */
export function standsAlike(addresses: readonly Address[], before: Scene, after: Scene): boolean {
  const { turned } = between(before, after);
  return turned?.every((address) => !addresses.includes(address)) ?? false;
}

/** Whether boards of one rig stand alike but for levels and pans. */
export const isRoutedAlike = ({ rig, board }: Setup, { board: after }: Setup): boolean =>
  addressesMoved(board, after).every((address) => {
    const kind = controls(rig).get(address)?.kind;
    return kind === 'gain' || kind === 'pan';
  });

function isLitAlike(place: Address, before: Scene, after: Scene): boolean {
  if (!after.solution.circuit.stagesAt.has(place)) return true;
  const [was, is] = [before.light(place), after.light(place)];
  return (Object.keys(was) as (keyof Glow)[]).every((look) => was[look] === is[look]);
}

const isAsLoud = (place: Address, { solution: before }: Scene, { solution: after }: Scene) =>
  levelAt(before, place) === levelAt(after, place);

/** What lies between two scenes. */
interface Between {
  readonly before: Scene;
  readonly after: Scene;
  /** The levels and pans that stand elsewhere; nothing where anything else is another one, or the desk. */
  readonly turned?: readonly Address[];
  /** The places that the change reaches. */
  readonly reached?: ReadonlySet<Address> | undefined;
}

/** Of the two scenes that were held against one another last. */
let last: Between | undefined;

function between(before: Scene, after: Scene): Between {
  if (last?.before !== before || last.after !== after) {
    const { setup } = before;
    const isTurnedAlone = isOfOneDesk(before, after) && isRoutedAlike(setup, after.setup);
    last = { before, after };
    if (isTurnedAlone) {
      const turned = addressesMoved(setup.board, after.setup.board);
      last = { ...last, turned, reached: placesReached(before.solution, after.solution) };
    }
  }
  return last;
}

const isOfOneDesk = (before: Scene, after: Scene): boolean =>
  before.setup.rig === after.setup.rig &&
  before.id === after.id &&
  before.start === after.start &&
  before.followed === after.followed &&
  before.locked === after.locked &&
  before.scale === after.scale;

interface Drawn {
  /** All addresses in it, wherever they stand, and the places of its inserts. */
  readonly addresses: readonly Address[];
  /** The places where each of them leaves, if it is an owner. */
  readonly outs: readonly Address[];
}

const gathered = new WeakMap<object, Drawn>();

function addressesIn(drawn: object): Drawn {
  const before = gathered.get(drawn);
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
  const addresses = [...found];
  const all = { addresses, outs: addresses.map((address) => part(address, 'out')) };
  gathered.set(drawn, all);
  return all;
}
