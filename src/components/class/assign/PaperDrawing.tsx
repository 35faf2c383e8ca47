import { useMemo } from 'preact/hooks';
import { type Board, type Owner, type Rig, simulate } from '../../../../simulator/index.ts';
import { layOut } from '../../../drawing/lay-out.ts';
import { unlit } from '../../../drawing/light.ts';
import { scaleIn } from '../../../text/index.ts';
import { DeskDrawing } from '../../desk/DeskDrawing.tsx';
import { stillScene } from '../../desk/scene.ts';

interface Props {
  id: string;
  rig: Rig;
  board: Board;
  follow: string;
  /** Owners that are drawn; all of the desk when left out. */
  show?: readonly Owner[] | undefined;
  /** Whether the way of the source is lit. */
  isLit: boolean;
  name: string;
}

/** A still drawing of a desk, for paper. */
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
      <DeskDrawing drawing={drawing} scene={scene} name={name} />
    </div>
  );
}
