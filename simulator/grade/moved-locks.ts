import type { Board } from '../board/board.ts';
import { addressesMoved } from '../circuit/section.ts';
import type { Address } from '../rig/address.ts';
import { controls } from '../rig/controls.ts';
import type { Rig } from '../rig/schema.ts';
import { isOpen } from './locks.ts';

/** Locked controls that stand elsewhere than at the start. */
export function movedLocks(
  rig: Rig,
  open: readonly string[],
  start: Board,
  board: Board,
): Address[] {
  const moved = addressesMoved(start, board).filter((address) => !isOpen(open, address));
  return moved.length < 2 ? moved : [...controls(rig).keys()].filter((one) => moved.includes(one));
}
