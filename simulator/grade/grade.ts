import type { Board } from '../board/board.ts';
import { circuitOf, simulate } from '../solve/simulate.ts';
import { failsByWires, holds } from './holds.ts';
import { judge } from './judge.ts';
import { movedLocks } from './moved-locks.ts';
import type { Scenario } from './scenario.ts';
import type { CheckResult, Verdict } from './verdict.ts';

/** What a board is graded against. */
export type Task = Pick<Scenario, 'rig' | 'start' | 'open' | 'checks'>;

/**
 * Grades a board against a task by what is heard. How the board came to stand so does not matter;
 * a locked control that was moved fails the task, whatever is heard.
 */
export function grade(task: Task, board: Board): Verdict {
  const { rig, checks, open, start } = task;
  const setup = { rig, board };
  const hearing = { setup, solution: simulate(setup) };
  const results = checks.map((check): CheckResult => ({ check, ...judge(check.claim, hearing) }));
  const weight = (list: readonly CheckResult[]) =>
    list.reduce((sum, { check }) => sum + check.weight, 0);
  const moved = movedLocks(rig, open, start, board);
  return {
    results,
    score: weight(results.filter(({ holds }) => holds)),
    of: weight(results),
    movedLocks: moved,
    passed: moved.length === 0 && results.every(({ holds }) => holds),
  };
}

/** Whether a board passes a task: what {@link grade} says of it, without what was heard and why. */
export function isPassed({ rig, checks, open, start }: Task, board: Board): boolean {
  if (movedLocks(rig, open, start, board).length > 0) return false;
  const setup = { rig, board };
  // Most of what fails does so by its wires, which take less time than its levels.
  const circuit = circuitOf(setup);
  if (checks.some(({ claim }) => failsByWires(claim, rig, circuit))) return false;
  const hearing = { setup, solution: simulate(setup, circuit) };
  return checks.every(({ claim }) => holds(claim, hearing));
}
