import type { Setup } from '../board/board.ts';
import { buildCircuit } from '../circuit/build-circuit.ts';
import { type Solution, solve } from './solve.ts';

/** What stands at every stage of a setup. The one way from a setup to its levels. */
export const simulate = (setup: Setup): Solution => solve(buildCircuit(setup));
