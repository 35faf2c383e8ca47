import { type Board, movesBetween, type Scenario } from '../../simulator/index.ts';
import { counted } from './sentence.ts';

/** How few moves will do, beside how many a board took. */
export const parSentence = (
  { rig, start }: Pick<Scenario, 'rig' | 'start'>,
  board: Board,
  par: number,
): string =>
  `It can be done in ${counted(par, 'move')}; you used ${movesBetween(rig, start, board).length}.`;
