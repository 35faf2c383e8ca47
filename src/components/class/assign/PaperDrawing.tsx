import { useMemo } from 'preact/hooks';
import { type Board, type Owner, type Rig, simulate } from '../../../../simulator/index.ts';
import { layOut } from '../../../drawing/lay-out.ts';
import { unlit } from '../../../drawing/light.ts';
import { scaleIn } from '../../../text/index.ts';
import { DeskDrawing } from '../../desk/DeskDrawing.tsx';
import { RoomPicture } from '../../desk/RoomPicture.tsx';
import { stillScene } from '../../desk/scene.ts';

interface Props {
  id: string;
  rig: Rig;
  board: Board;
  follow: string;
  /** Owners that are drawn; the whole room when left out. */
  show?: readonly Owner[] | undefined;
  /** Whether the way of the source is lit. */
  isLit: boolean;
  name: string;
}

/** All that is there, with nothing folded. */
const WHOLE = { box: true, rack: true, folded: [] } as const;

/** A still drawing for paper: the part of the desk that a task is about, or else the whole room. */
export function PaperDrawing({ id, rig, board, follow, show, isLit, name }: Props) {
  const scene = useMemo(() => {
    const setup = { rig, board };
    const solution = simulate(setup);
    const still = stillScene({ id, setup, solution, follow, scale: scaleIn(rig, 'dBu') });
    return isLit ? still : { ...still, light: unlit };
  }, [id, rig, board, follow, isLit]);
  const drawing = useMemo(() => layOut(rig, show), [rig, show]);
  return (
    <div class="paper-drawing">
      {show ? (
        <DeskDrawing drawing={drawing} scene={scene} name={name} />
      ) : (
        <RoomPicture desk={drawing} sections={WHOLE} scene={scene} hands={undefined} />
      )}
    </div>
  );
}
