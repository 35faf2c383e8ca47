import { useEffect, useRef, useState } from 'preact/hooks';
import type { Board, Rig } from '../../../../simulator/index.ts';
import { Desk } from '../../desk/Desk.tsx';
import { useBoard } from '../../desk/use-board.ts';
import { WHOLE_ROOM } from '../../desk/whole-room.tsx';

interface Props {
  id: string;
  rig: Rig;
  /** Where it stands at first. */
  board: Board;
  /** Where “Start again” leads; to where it stood at first when left out. */
  home?: Board;
  onBoard: (board: Board) => void;
}

/** A desk with all controls open, on which an instructor sets a board. */
export function OwnDesk({ id, rig, board: first, home, onBoard }: Props) {
  const board = useBoard({ setup: { rig, board: first } });
  const [follow, setFollow] = useState(rig.box.tracks[0]?.id ?? '');
  const now = board.snapshot.context.setup.board;
  const told = useRef(first);
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is told when it stands elsewhere.
  useEffect(() => {
    if (told.current === now) return;
    told.current = now;
    onBoard(now);
  }, [now]);
  return (
    <Desk
      id={id}
      board={board}
      follow={follow}
      onFollow={setFollow}
      home={home}
      room={WHOLE_ROOM}
    />
  );
}
