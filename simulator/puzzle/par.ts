import { type Board, movesBetween, valueAt, withValues } from '../board/board.ts';
import { buildCircuit } from '../circuit/build-circuit.ts';
import type { BuiltCircuit } from '../circuit/section.ts';
import type { Task } from '../grade/grade.ts';
import { holds, holdsByWires, isWiringClaim } from '../grade/holds.ts';
import type { Address } from '../rig/address.ts';
import { NONE, OPEN } from '../rig/control.ts';
import { simulate } from '../solve/simulate.ts';
import { OpenWires, spread } from './stage-sets.ts';
import { tune } from './tune.ts';
import { type Field, fieldOf, type Ground, type Turn } from './turns.ts';
import { isByLevel, loopCuts, wantedTurns } from './wanting.ts';

/** A way to solve a task with the fewest moves, a move being one control put to another value. */
export interface Shortest {
  readonly moves: number;
  readonly board: Board;
}

/**
 * Searches the fewest moves that solve a task, by iterative deepening.
 *
 * It branches only by turns of which a check that fails needs at least one, and gives up a branch when the
 * checks that fail need more moves than are left: each needs one, and those that need turns of different
 * controls need one each.
 *
 * @param most the search ends there.
 * @returns nothing when no `most` moves solve it. No moves at all where the start passes.
 */
export function fewestMoves(task: Task, most: number): Shortest | undefined {
  const search = new Search(fieldOf(task));
  for (let moves = 0; moves <= most; moves += 1) {
    const board = search.within(moves);
    if (board) return { moves: movesBetween(task.rig, task.start, board).length, board };
  }
  return undefined;
}

/** Where the search stands. */
interface Stand {
  readonly board: Board;
  readonly circuit: BuiltCircuit;
  readonly wires: OpenWires;
  /** By check, whether it fails whatever the levels are. */
  readonly astray: readonly boolean[];
  readonly moved: ReadonlySet<Address>;
  /** Moved gains whose value the levels decide. */
  readonly free: readonly Address[];
  /** Turns that were tried before at this stand or above it. */
  readonly barred: ReadonlySet<Turn>;
  readonly left: number;
}

class Search {
  readonly #field: Field;

  constructor(field: Field) {
    this.#field = field;
  }

  within(moves: number): Board | undefined {
    const { task, circuit, grounds } = this.#field;
    const wires = new OpenWires(circuit);
    const nothing = new Set<never>();
    return this.#from({
      board: task.start,
      circuit,
      wires,
      astray: grounds.map((ground) => this.#failsByWires(ground, wires)),
      moved: nothing,
      free: [],
      barred: nothing,
      left: moves,
    });
  }

  #from(stand: Stand): Board | undefined {
    const { task } = this.#field;
    const failures = this.#failingByWires(stand);
    if (failures.length === 0) {
      const tuned = tune(task, stand.board, stand.free);
      if (tuned) return tuned;
    }
    if (stand.left === 0) return undefined;
    failures.push(() => this.#listsByLevel(stand, failures.length === 1));
    const barred = new Set(stand.barred);
    for (const turn of turnsToTry(failures, stand)) {
      const found = this.#from(this.#after(stand, turn, barred));
      if (found) return found;
      barred.add(turn);
    }
    return undefined;
  }

  /** Where a turn leads. A check that none of the wires that it moves has to do with is as it was. */
  #after(stand: Stand, turn: Turn, barred: ReadonlySet<Turn>): Stand {
    const { task, grounds } = this.#field;
    const { address, value, isFree, isTuning } = turn;
    const board = withValues(task.rig, stand.board, { [address]: value });
    const moved = new Set([...stand.moved, address]);
    const free = isFree ? [...stand.free, address] : stand.free;
    const common = { board, moved, free, barred: new Set(barred), left: stand.left - 1 };
    if (isTuning) return { ...stand, ...common };
    const circuit = buildCircuit({ rig: task.rig, board }, stand.circuit);
    const wires = new OpenWires(circuit);
    const astray = grounds.map((ground, index) =>
      turn.concerns[index] ? this.#failsByWires(ground, wires) : (stand.astray[index] ?? false),
    );
    return { ...common, circuit, wires, astray };
  }

  /** What fails whatever the levels are. */
  #failingByWires(stand: Stand): Failure[] {
    const { task, grounds } = this.#field;
    const failures: Failure[] = [];
    const doubled = this.#doubledCords(stand);
    if (doubled) failures.push(() => [doubled]);
    grounds.forEach((ground, index) => {
      if (!stand.astray[index]) return;
      failures.push(() => wantedTurns(this.#field, ground, stand.wires));
    });
    if (!task.checks.some(({ claim }) => claim.kind === 'no-loop')) return failures;
    const [loop] = simulate({ rig: task.rig, board: stand.board }).loops;
    if (loop) failures.push(() => [loopCuts(this.#field, loop.ring)]);
    return failures;
  }

  #failsByWires({ claim, starts, goals }: Ground, { circuit, backwards }: OpenWires): boolean {
    if (isWiringClaim(claim)) return !holdsByWires(claim, this.#field.task.rig, circuit);
    if (claim.kind === 'no-loop' || claim.kind === 'absent') return false;
    const arriving = spread(goals, backwards);
    return !starts.some((stage) => arriving[stage] === 1);
  }

  /**
   * The lists of checks that levels decide. One in which a gain stands that may still be tuned asks for nothing
   * more; where there are only such, and no tuning helps, something more of all of them is needed.
   */
  #listsByLevel({ board, free, wires, astray }: Stand, isAllElseRight: boolean): Turn[][] {
    const { task, grounds } = this.#field;
    const byLevel = grounds.filter((ground, index) => isByLevel(ground) && !astray[index]);
    const setup = { rig: task.rig, board };
    const hearing = { setup, solution: simulate(setup) };
    const lists = byLevel
      .filter(({ claim }) => !holds(claim, hearing))
      .flatMap((ground) => wantedTurns(this.#field, ground, wires));
    const certain = lists.filter((list) => !list.some(({ address }) => free.includes(address)));
    if (certain.length > 0 || !isAllElseRight) return certain;
    const any = byLevel.flatMap((ground) => wantedTurns(this.#field, ground, wires)[0] ?? []);
    return [[...new Set(any)]];
  }

  /** An output jack takes one cord: where two input jacks name it, one of them has to let go. */
  #doubledCords({ board }: Stand): Turn[] | undefined {
    const { task, movables, cords } = this.#field;
    const inputs = new Map<string, Address>();
    for (const input of cords) {
      const output = String(valueAt({ rig: task.rig, board }, input));
      if (output === NONE || output === OPEN) continue;
      const other = inputs.get(output);
      if (other !== undefined) {
        return movables
          .filter(({ address }) => address === input || address === other)
          .flatMap(({ turns }) => turns);
      }
      inputs.set(output, input);
    }
    return undefined;
  }
}

/** A check that fails: gives lists of turns of which every solution takes at least one each. */
type Failure = () => readonly (readonly Turn[])[];

/**
 * The turns to branch by: those of the shortest list, or with one move left those that are in every list.
 * None when more moves are needed than are left: lists that have no control in common need one each.
 */
function turnsToTry(failures: readonly Failure[], { moved, barred, left }: Stand): readonly Turn[] {
  const lists: (readonly Turn[])[] = [];
  for (const failure of failures) {
    for (const whole of failure()) {
      const list = whole.filter((turn) => !moved.has(turn.address) && !barred.has(turn));
      if (list.length === 0) return [];
      lists.push(list);
    }
  }
  // Short lists have the least in common with others.
  lists.sort((one, other) => one.length - other.length);
  const taken = new Set<Address>();
  let needed = 0;
  for (const list of lists) {
    if (list.some(({ address }) => taken.has(address))) continue;
    needed += 1;
    if (needed > left) return [];
    for (const { address } of list) taken.add(address);
  }
  const [narrowest = [], ...others] = lists;
  if (left > 1) return narrowest;
  return narrowest.filter((turn) => others.every((list) => list.includes(turn)));
}
