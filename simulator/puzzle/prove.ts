import { type Board, withValues } from '../board/board.ts';
import { movesBetween } from '../board/moves.ts';
import { isPassed, type Task } from '../grade/grade.ts';
import { fewestMoves, type Shortest } from './par.ts';

/** What was proven of a task. */
export interface ParProof {
  /** The fewest moves that solve it. */
  readonly par: number;
  /** A board that they lead to, which passes. */
  readonly solution: Board;
}

/**
 * Proves that a task can be drilled: its start does not pass, a solution of no more than `most` moves is known,
 * and the fewest moves that solve it, by open controls alone, are no fewer than `fewest`. That no locked control is a shortcut needs no search: grading fails
 * every board on which one stands elsewhere, whatever is heard.
 *
 * @param right a solution that is known.
 * @returns nothing when any of this is not so.
 */
export function prove(
  task: Task,
  right: Board,
  fewest: number,
  most: number,
): ParProof | undefined {
  const known = fewestOf(task, right);
  if (!known || known.moves < fewest || known.moves > most) return undefined;
  // That a known solution is one needs no search; only that none is shorter does.
  const { moves, board } = fewestMoves(task, known.moves - 1) ?? known;
  if (moves < fewest || !isPassed(task, board)) return undefined;
  return { par: moves, solution: board };
}

/** The fewest moves of a known solution that pass without its others; nothing when all together do not pass. */
function fewestOf(task: Task, right: Board): Shortest | undefined {
  const { rig, start } = task;
  if (!isPassed(task, right)) return undefined;
  const moves = movesBetween(rig, start, right);
  for (let count = 0; count < moves.length; count += 1) {
    for (const chosen of choices(moves, count)) {
      const values = Object.fromEntries(chosen.map(({ control, to }) => [control.address, to]));
      const board = withValues(rig, start, values);
      if (isPassed(task, board)) return { moves: count, board };
    }
  }
  return { moves: moves.length, board: right };
}

/** Every choice of so many of a list. */
function* choices<T>(list: readonly T[], count: number): Generator<readonly T[]> {
  if (count === 0) return yield [];
  for (const [index, first] of list.entries()) {
    for (const rest of choices(list.slice(index + 1), count - 1)) yield [first, ...rest];
  }
}
