import type { Board } from '../board/board.ts';
import { movesBetween } from '../board/moves.ts';
import type { Task } from '../grade/grade.ts';
import { holds } from '../grade/holds.ts';
import type { Address } from '../rig/address.ts';
import { simulate } from '../solve/simulate.ts';
import { Stand } from './stand.ts';
import { tune } from './tune.ts';
import { type Field, fieldOf, type Turn } from './turns.ts';
import { isByLevel, wantedTurns } from './wanting.ts';

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
  const field = fieldOf(task);
  const budget = { standsLeft: Infinity };
  for (let moves = 0; moves <= most; moves += 1) {
    const board = search(field, new Stand(field, moves), new Set(), budget);
    if (board) return { moves: movesBetween(task.rig, task.start, board).length, board };
  }
  return undefined;
}

/**
 * Whether no fewer moves than `par` solve a task: false where fewer do.
 *
 * @param mostStands the search ends after so many boards. @returns nothing where it ended before it knew.
 */
export function isPar(task: Task, par: number, mostStands: number): boolean | undefined {
  const field = fieldOf(task);
  const budget = { standsLeft: mostStands };
  for (let moves = 0; moves < par; moves += 1) {
    if (search(field, new Stand(field, moves), new Set(), budget)) return false;
    if (budget.standsLeft < 0) return undefined;
  }
  return true;
}

/** How many boards a search may still look at. Below 0 it gave up: that nothing was found says nothing then. */
interface Budget {
  standsLeft: number;
}

/** @param barred turns that were tried before, here or on the way here. */
function search(
  field: Field,
  stand: Stand,
  barred: ReadonlySet<Turn>,
  budget: Budget,
): Board | undefined {
  const { task } = field;
  budget.standsLeft -= 1;
  if (budget.standsLeft < 0) return undefined;
  if (stand.isWired) {
    const tuned = tune(task, stand.board, stand.free);
    if (tuned) return tuned;
  }
  if (stand.left === 0) return undefined;
  const tried = new Set(barred);
  for (const turn of turnsToTry(wantedAt(field, stand), stand, barred)) {
    const found = search(field, stand.after(turn), tried, budget);
    if (found) return found;
    tried.add(turn);
  }
  return undefined;
}

/** For each check that fails, lists of turns of which every solution takes at least one: the cheapest first. */
function* wantedAt(field: Field, stand: Stand): Generator<readonly Turn[]> {
  const { movables, grounds } = field;
  const { doubled } = stand;
  if (doubled) {
    const either = movables.filter(({ address }) => doubled.includes(address));
    yield either.flatMap(({ turns }) => turns);
  }
  let isAllElseRight = !doubled;
  for (const ground of grounds) {
    if (!stand.isAstray(ground)) continue;
    isAllElseRight = false;
    yield* wantedTurns(field, ground, stand.wires);
  }
  yield* listsByLevel(field, stand, isAllElseRight);
}

/**
 * The lists of checks that levels decide. One in which a gain stands that may still be tuned asks for nothing
 * more; where there are only such, and no tuning helps, something more of all of them is needed.
 */
function listsByLevel(field: Field, stand: Stand, isAllElseRight: boolean): Turn[][] {
  const { task, grounds } = field;
  const { board, free, wires } = stand;
  const byLevel = grounds.filter((ground) => isByLevel(ground) && !stand.isAstray(ground));
  const setup = { rig: task.rig, board };
  const hearing = { setup, solution: simulate(setup) };
  const lists = byLevel
    .filter(({ claim }) => !holds(claim, hearing))
    .flatMap((ground) => wantedTurns(field, ground, wires));
  const certain = lists.filter((list) => !list.some(({ address }) => free.includes(address)));
  if (certain.length > 0 || !isAllElseRight) return certain;
  const any = byLevel.flatMap((ground) => wantedTurns(field, ground, wires)[0] ?? []);
  return [[...new Set(any)]];
}

/**
 * The turns to branch by: those of the shortest list, or with one move left those that are in every list.
 * None when more moves are needed than are left: lists that have no control in common need one each.
 */
function turnsToTry(
  wanted: Iterable<readonly Turn[]>,
  { moved, left }: Stand,
  barred: ReadonlySet<Turn>,
): readonly Turn[] {
  const lists: (readonly Turn[])[] = [];
  let inAll: readonly Turn[] | undefined;
  for (const whole of wanted) {
    const list = whole.filter((turn) => !moved.has(turn.address) && !barred.has(turn));
    lists.push(list);
    inAll = inAll?.filter((turn) => list.includes(turn)) ?? list;
    const isInVain = left === 1 ? inAll.length === 0 : movesNeeded(lists) > left;
    if (list.length === 0 || isInVain) return [];
  }
  if (left === 1) return inAll ?? [];
  // Short lists have the least in common with others.
  lists.sort((one, other) => one.length - other.length);
  return movesNeeded(lists) > left ? [] : (lists[0] ?? []);
}

/** How many moves lists need at least: as many as are found, one after the other, that have no control in common. */
function movesNeeded(lists: readonly (readonly Turn[])[]): number {
  const taken = new Set<Address>();
  let needed = 0;
  for (const list of lists) {
    if (list.some(({ address }) => taken.has(address))) continue;
    needed += 1;
    for (const { address } of list) taken.add(address);
  }
  return needed;
}
