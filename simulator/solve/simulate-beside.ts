import type { Setup } from '../board/board.ts';
import { buildCircuit } from '../circuit/build-circuit.ts';
import type { Simulation } from './simulate.ts';
import { solve } from './solve.ts';

/**
 * What `simulate` says of a setup, from another one of its rig that many are held against. Where a change does not
 * reach, the rows of both are the same objects.
 */
export const simulateBeside = (setup: Setup, other: Simulation): Simulation =>
  solve(buildCircuit(setup, other.circuit), undefined, other);
