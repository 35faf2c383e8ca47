import {
  boardOf,
  type FileBoard,
  type FindingCode,
  findings,
  type Rig,
  simulate,
} from '../../../simulator/index.ts';
import { findingSentence } from '../../text/index.ts';

/** Which finding is told in prose, and on which board it is found. */
export interface ToldFinding {
  readonly code: FindingCode;
  readonly board?: FileBoard;
  readonly rig?: string;
}

/**
 * What the bench says of a setup, for prose: the first finding of the kind.
 *
 * @throws RangeError when the setup has none of the kind, with the kinds it has.
 */
export function toldFindingText(rig: Rig, { code, board = {} }: ToldFinding): string {
  const setup = { rig, board: boardOf(`the finding ${code}`, rig, board) };
  const found = findings(setup, simulate(setup));
  const finding = found.find((one) => one.code === code);
  if (finding) return findingSentence(rig, finding);
  const others = found.map((one) => one.code).join(', ') || 'nothing';
  throw new RangeError(`Expected a finding ${code}, but the setup has ${others}.`);
}
