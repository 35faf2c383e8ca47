import type { Board, Setup } from '../../../../simulator/board/board.ts';
import { simulate } from '../../../../simulator/solve/simulate.ts';
import type { FindingCode, FindingOf } from '../../../../simulator/trace/findings/finding.ts';
import { findings } from '../../../../simulator/trace/findings.ts';
import { smallRoom } from '../../small-room.ts';

const room = smallRoom();
/** The small room with a delay in its rack. */
const roomWithDelay = smallRoom((text) =>
  text.replace(
    'outputs:\n  - { id: tape',
    '  - { id: wait, label: Wait, kind: delay }\noutputs:\n  - { id: tape',
  ),
);

/** All that is found in the small room on a board, with a delay in the rack where it is asked for. */
export function allFound(board: Board, { withDelay = false } = {}) {
  const setup = { rig: withDelay ? roomWithDelay : room, board };
  return findings(setup, simulate(setup));
}

/** What is found of one kind in any setup. */
export const foundIn = <Code extends FindingCode>(code: Code, setup: Setup): FindingOf<Code>[] =>
  findings(setup, simulate(setup)).filter((one): one is FindingOf<Code> => one.code === code);

/** What is found of one kind in the small room. */
export const found = <Code extends FindingCode>(
  code: Code,
  board: Board,
  options?: { withDelay?: boolean },
): FindingOf<Code>[] =>
  allFound(board, options).filter((one): one is FindingOf<Code> => one.code === code);
