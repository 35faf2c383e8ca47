import { useState } from 'preact/hooks';
import { Later, useLater } from './later.ts';
import { NotThereYet } from './NotThereYet.tsx';
import type { Scene } from './scene.ts';

const listenPanel = new Later(() => import('./ListenPanel.tsx'));

/** A button by a desk that opens what one listens with. Its code is fetched only then. */
export function Listen({ scene }: { scene: Scene }) {
  const [isOpen, setOpen] = useState(false);
  const code = useLater(listenPanel, 'when asked');
  const toggle = () => {
    setOpen(!isOpen);
    if (!isOpen) void code.fetch();
  };
  return (
    <section class="listen" aria-label="Listening">
      <button type="button" aria-expanded={isOpen} onClick={toggle}>
        Listen to this desk
      </button>
      {isOpen && code.there && <code.there.ListenPanel scene={scene} />}
      {isOpen && !code.there && <NotThereYet later={code} what="The players" />}
    </section>
  );
}
