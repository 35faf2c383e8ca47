import type { Setup } from '../board/board.ts';
import { buildCircuit } from '../circuit/build-circuit.ts';
import type { BuiltCircuit } from '../circuit/section.ts';
import type { Rig } from '../rig/schema.ts';
import type { Solution } from './solution.ts';
import { solve } from './solve.ts';

/** What was built and what was solved last, by rig: boards of one rig mostly differ in a control or two. */
const built = new WeakMap<Rig, BuiltCircuit>();
const solved = new WeakMap<Rig, Solution>();

/** The circuit of a setup. What that of the last setup of the same rig has in common with it is not built again. */
export function circuitOf(setup: Setup): BuiltCircuit {
  const before = built.get(setup.rig);
  if (before?.setup.board === setup.board) return before;
  const circuit = buildCircuit(setup, before);
  built.set(setup.rig, circuit);
  return circuit;
}

/**
 * What stands at every stage of a setup. The one way from a setup to its levels.
 *
 * What the last setup of the same rig has in common with this one is not computed again; the result is the same
 * as if it was.
 */
export function simulate(setup: Setup): Solution {
  const circuit = circuitOf(setup);
  const before = solved.get(setup.rig);
  if (before?.circuit === circuit) return before;
  const solution = solve(circuit, undefined, before);
  solved.set(setup.rig, solution);
  return solution;
}
