import type { Drawing } from '../../drawing/drawing.ts';
import type { Against } from './DifferencePanel.tsx';
import { drawer } from './drawer.tsx';
import type { Hands, Scene } from './scene.ts';

const Listen = drawer(
  { kind: 'listen', name: 'Listening', button: 'Listen to this desk', what: 'The players' },
  async () => (await import('./ListenPanel.tsx')).ListenPanel,
);
const Patch = drawer(
  { kind: 'patch', name: 'Cords', button: 'Plug cords by hand', what: 'The jacks' },
  async () => (await import('./PatchPanel.tsx')).PatchPanel,
);
const Differences = drawer(
  {
    kind: 'difference',
    name: 'What differs',
    button: 'Compare with before',
    what: 'The differences',
  },
  async () => (await import('./DifferencePanel.tsx')).DifferencePanel,
);

interface Props {
  scene: Scene;
  hands: Hands;
  drawing: Drawing;
  /** The setup before the last move, if anything was moved. */
  last: Scene['setup'] | undefined;
  /** What else the desk can be compared with. */
  others: readonly Against[] | undefined;
}

/** What opens below a desk when it is asked for: the players, the jacks, what differs from before. */
export function Drawers({ scene, hands, drawing, last, others }: Props) {
  const { setup, start } = scene;
  const against = [
    ...(last && last.rig === setup.rig ? [{ name: 'before the last move', setup: last }] : []),
    ...(start ? [{ name: 'how it stood at first', setup: start }] : []),
    ...(others ?? []),
  ];
  return (
    <div class="drawers">
      <Listen scene={scene} />
      <Patch scene={scene} hands={hands} />
      <Differences scene={scene} hands={hands} drawing={drawing} against={against} />
    </div>
  );
}
