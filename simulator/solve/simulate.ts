import type { Setup } from '../board/board.ts';
import { buildCircuit } from '../circuit/build-circuit.ts';
import type { BuiltCircuit } from '../circuit/section.ts';
import type { Rig } from '../rig/schema.ts';
import type { Solution } from './solution.ts';
import { solve } from './solve.ts';

/** The solution of a setup. */
export type Simulation = Solution<BuiltCircuit>;

/** What was simulated last, by rig: boards of one rig mostly differ in a control or two. */
const latest = new WeakMap<Rig, Simulation>();

/** The circuit of a setup. What it has in common with the setup of its rig that was simulated last is not built again. */
export const circuitOf = (setup: Setup): BuiltCircuit =>
  buildCircuit(setup, latest.get(setup.rig)?.circuit);

/**
 * What stands at every stage of a setup. The one way from a setup to its levels.
 *
 * What the last setup of the same rig has in common with this one is not computed again; the result is the same
 * as if it was.
 *
 * @param circuit of the setup, where it is there already.
 */
export function simulate(setup: Setup, circuit = circuitOf(setup)): Simulation {
  const solution = solve(circuit, undefined, latest.get(setup.rig));
  latest.set(setup.rig, solution);
  return solution;
}
