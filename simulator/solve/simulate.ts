import type { Setup } from '../board/board.ts';
import { buildCircuit } from '../circuit/build-circuit.ts';
import type { BuiltCircuit } from '../circuit/section.ts';
import type { Rig } from '../rig/schema.ts';
import type { Solution } from './solution.ts';
import { solve } from './solve.ts';

/** What was simulated last, by rig: boards of one rig mostly differ in a control or two. */
const latest = new WeakMap<Rig, { readonly circuit: BuiltCircuit; readonly solution: Solution }>();

/**
 * What stands at every stage of a setup. The one way from a setup to its levels.
 *
 * What the last setup of the same rig has in common with this one is not computed again; the result is the same
 * as if it was.
 */
export function simulate(setup: Setup): Solution {
  const before = latest.get(setup.rig);
  const circuit = buildCircuit(setup, before?.circuit);
  const solution = solve(circuit, undefined, before?.solution);
  latest.set(setup.rig, { circuit, solution });
  return solution;
}
