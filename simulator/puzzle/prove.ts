import { type Board, movesBetween, withValues } from '../board/board.ts';
import { grade, type Task } from '../grade/grade.ts';
import { lockedControls } from '../grade/locks.ts';
import { controls } from '../rig/controls.ts';
import { fewestMoves } from './par.ts';

/** What was proven of a task. */
export interface ParProof {
  /** The fewest moves that solve it. */
  readonly par: number;
  /** A board that they lead to, which passes. */
  readonly solution: Board;
}

/**
 * Proves that a task can be drilled: its start does not pass, it can be solved in the wanted number of moves and
 * in no fewer, by open controls alone, and moving a locked control besides fails it.
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
  const length = movesBetween(task.rig, task.start, right).length;
  if (length < fewest || length > most + 1) return undefined;
  if (grade(task, task.start).passed || !grade(task, right).passed) return undefined;
  // That the known solution is one needs no search; only that none is shorter does.
  const shorter = fewestMoves(task, Math.min(most, length - 1));
  if (!shorter && length > most) return undefined;
  const solution = shorter?.board ?? right;
  const par = shorter?.moves ?? length;
  if (par < fewest || !grade(task, solution).passed || !locksLock(task, solution)) return undefined;
  return { par, solution };
}

/** Whether a locked switch that is turned fails a board that passes. */
function locksLock(task: Task, solution: Board): boolean {
  const { rig, open } = task;
  const locked = lockedControls(rig, open);
  const turned = [...controls(rig).values()].find(
    ({ kind, address }) => kind === 'switch' && locked.has(address),
  );
  if (!turned) return locked.size === 0;
  const standing = solution[turned.address] ?? turned.default;
  const moved = withValues(rig, solution, { [turned.address]: !standing });
  return !grade(task, moved).passed;
}
