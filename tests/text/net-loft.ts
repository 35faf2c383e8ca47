import { readFileSync } from 'node:fs';
import { type Board, parseRig, type Rig, type Setup, simulate } from '../../simulator/index.ts';

const FILE = 'lessons/rigs/net-loft.yaml';

/** The rig of the net-loft session, as the course has it. */
export const netLoft: Rig = parseRig(
  FILE,
  readFileSync(new URL(`../../${FILE}`, import.meta.url), 'utf8'),
);

/** The net-loft session with some controls moved, and what stands in it. */
export function hear(board: Board = {}) {
  const setup: Setup = { rig: netLoft, board };
  return { setup, solution: simulate(setup) };
}
