import { addressesMoved, type Board } from '../board/board.ts';
import { inOrder } from '../board/moves.ts';
import type { Address } from '../rig/address.ts';
import type { Rig } from '../rig/schema.ts';
import { isOpen } from './locks.ts';

/** Locked controls that stand elsewhere than at the start. */
export function movedLocks(
  rig: Rig,
  open: readonly string[],
  start: Board,
  board: Board,
): readonly Address[] {
  return inOrder(
    rig,
    addressesMoved(start, board).filter((address) => !isOpen(open, address)),
  );
}
