import { useState } from 'preact/hooks';
import type { Board, Owner, Rig } from '../../../simulator/index.ts';
import { Desk } from './Desk.tsx';
import { useBoard } from './use-board.ts';

interface Props {
  rig: Rig;
  board: Board;
  show: readonly Owner[];
  follow: string;
}

/** A desk to turn at once, with nothing to be done. */
export function FrontDesk({ rig, board: start, show, follow: first }: Props) {
  const board = useBoard({ setup: { rig, board: start } });
  const [follow, setFollow] = useState(first);
  return <Desk id="front" board={board} follow={follow} onFollow={setFollow} show={show} />;
}
