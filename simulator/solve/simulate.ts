import type { Setup } from '../board/board.ts';
import { buildCircuit } from '../circuit/build-circuit.ts';
import type { BuiltCircuit } from '../circuit/section.ts';
import type { Rig } from '../rig/schema.ts';
import type { Solution } from './solution.ts';
import { solve } from './solve.ts';

/** The solution of a setup. */
export interface Simulation extends Solution {
  readonly circuit: BuiltCircuit;
}

/** What was built and what was simulated last, by rig: boards of one rig mostly differ in a control or two. */
const built = new WeakMap<Rig, BuiltCircuit>();
const simulated = new WeakMap<Rig, Simulation>();

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
export function simulate(setup: Setup): Simulation {
  const circuit = circuitOf(setup);
  const before = simulated.get(setup.rig);
  if (before?.circuit === circuit) return before;
  const simulation = { ...solve(circuit, undefined, before), circuit };
  simulated.set(setup.rig, simulation);
  return simulation;
}

/**
 * What {@link simulate} says of a setup, from another one of its rig that many are held against. Where a change does
 * not reach, the rows of both are the same objects.
 */
export function simulateBeside(setup: Setup, other: Simulation): Simulation {
  const circuit = buildCircuit(setup, other.circuit);
  return { ...solve(circuit, undefined, other), circuit };
}
