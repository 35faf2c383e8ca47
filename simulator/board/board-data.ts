import type { FileBoard } from '../rig/schema.ts';
import type { Board } from './board.ts';

/** A board as a file writes it, with `-inf` for what is closed; `boardOf` reads it back as the same board. */
export const boardData = (board: Board): FileBoard =>
  Object.fromEntries(
    Object.entries(board).map(([address, value]) => [
      address,
      value === -Infinity ? '-inf' : value,
    ]),
  );
