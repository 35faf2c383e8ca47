import type { Drawing } from '../../drawing/drawing.ts';
import type { Against } from './DifferencePanel.tsx';
import { drawer } from './drawer.tsx';
import type { Hands, Scene } from './scene.ts';

const Listen = drawer(
  { kind: 'listen', name: 'Listening', button: 'Listen to this desk', what: 'The players' },
  async () => (await import('./ListenPanel.tsx')).ListenPanel,
);
const Meters = drawer(
  { kind: 'meters', name: 'Meters and plots', button: 'Meters and plots', what: 'The meters' },
  async () => (await import('./Measurements.tsx')).Measurements,
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
  /** Whether meters and plots stand below the desk already. */
  isMeasured: boolean;
  /** The setup before the last move, if anything was moved. */
  last: Scene['setup'] | undefined;
  /** What else the desk can be compared with. */
  others: readonly Against[] | undefined;
}

/** What opens below a desk when it is asked for: the players, the jacks, what differs from before. */
export function Drawers({ scene, hands, drawing, isMeasured, last, others }: Props) {
  const { setup, start } = scene;
  const against = [
    ...(last && last.rig === setup.rig ? [{ name: 'before the last move', setup: last }] : []),
    ...(start ? [{ name: 'how it stood at first', setup: start }] : []),
    ...(others ?? []),
  ];
  return (
    <div class="drawers">
      <Listen scene={scene} />
      {!isMeasured && <Meters scene={scene} />}
      <Patch scene={scene} hands={hands} />
      <Differences scene={scene} hands={hands} drawing={drawing} against={against} />
    </div>
  );
}
