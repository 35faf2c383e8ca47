import { fullLabel } from '../../../simulator/index.ts';
import { BayRows } from './BayRows.tsx';
import { JackColumns } from './JackColumns.tsx';
import type { Hands, Scene } from './scene.ts';
import { usePatching } from './use-patching.ts';

interface Props {
  scene: Scene;
  hands: Hands;
}

/**
 * All jacks of the room with the cords between them. A cord is plugged by two clicks, on an output and on an input, or
 * by a drag from one to the other.
 */
export function PatchPanel({ scene, hands }: Props) {
  const patching = usePatching(scene, hands);
  const { rig } = scene.setup;
  const Jacks = rig.bay ? BayRows : JackColumns;
  return (
    <div class="patch-panel">
      <p class="patch-word" role="status">
        {patching.held === undefined
          ? 'Choose an output, then an input; or drag from one to the other. Choosing an input that holds a cord pulls it.'
          : `In your hand: a cord from ${fullLabel(rig, patching.held)}. Choose an input, or press Escape to drop it.`}
      </p>
      <Jacks scene={scene} patching={patching} />
    </div>
  );
}
