import { type Address, fullLabel, NONE, OPEN, valueAt } from '../../../simulator/index.ts';
import type { Scene } from './scene.ts';
import type { Patching } from './use-patching.ts';

interface Props {
  jack: Address;
  scene: Scene;
  patching: Patching;
  /** What is said of it besides its name, to those who do not see where it stands. */
  also?: string | undefined;
}

/** An output jack: a click takes its cord in the hand, its socket can be dragged from. */
export function OutputJack({ jack, scene, patching, also }: Props) {
  const { held, take, drag } = patching;
  return (
    <button
      type="button"
      class="jack jack-out"
      data-output={jack}
      aria-pressed={held === jack}
      onClick={() => take(jack)}
    >
      <span>
        {fullLabel(scene.setup.rig, jack)}
        {also && <span class="visually-hidden">, {also}</span>}
      </span>
      <span
        class="socket"
        aria-hidden="true"
        onPointerDown={(event) => drag(jack, event)}
        onClick={(event) => event.stopPropagation()}
      />
    </button>
  );
}

/** An input jack: a click plugs the cord in the hand, or pulls the one that is there. */
export function InputJack({ jack, scene, patching, also }: Props) {
  const { setup, locked } = scene;
  const { rig } = setup;
  const standing = String(valueAt(setup, jack));
  const isLocked = locked.has(jack);
  return (
    <button
      type="button"
      class="jack jack-in"
      data-input={jack}
      disabled={isLocked}
      aria-disabled={patching.held === undefined && standing === NONE}
      onClick={() => patching.plug(jack)}
    >
      <span class={standing === NONE ? 'socket' : 'socket socket-taken'} aria-hidden="true" />
      <span>
        {fullLabel(rig, jack)}
        {isLocked && <span class="lock"> (locked)</span>}
        {standing !== NONE && standing !== OPEN && (
          <span class="visually-hidden">, with a cord from {fullLabel(rig, standing)}</span>
        )}
        {also && <span class="visually-hidden">, {also}</span>}
      </span>
    </button>
  );
}
