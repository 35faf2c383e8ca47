import { type Address, jacks } from '../../../simulator/index.ts';
import { InputJack, OutputJack } from './JackButton.tsx';
import type { Scene } from './scene.ts';
import type { Patching } from './use-patching.ts';

/** Height of a row of jacks in pixels, as in the style sheet; the cords are stretched to the room between both columns. */
const ROW = 40;
const GAP = 100;
/** How far a cord runs level at its ends. */
const STUB = 12;

interface Props {
  scene: Scene;
  patching: Patching;
}

/** The jacks of a room without a patchbay: outputs in one column, inputs in another, and the cords between them. */
export function JackColumns({ scene, patching }: Props) {
  const { outputs, inputs } = jacks(scene.setup.rig);
  const { held, pointer, joined, area } = patching;
  const heightOf = (list: readonly Address[], jack: Address) => (list.indexOf(jack) + 0.5) * ROW;
  const height = Math.max(outputs.length, inputs.length) * ROW;
  return (
    <div class="patch-columns" {...area}>
      <ul aria-label="Outputs">
        {outputs.map((jack) => (
          <li key={jack}>
            <OutputJack jack={jack} scene={scene} patching={patching} />
          </li>
        ))}
      </ul>
      <svg
        class="patch-cords"
        viewBox={`0 0 ${GAP} ${height}`}
        height={height}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        {joined.map(({ input, output, by }) => (
          <path
            key={input}
            class={`cord cord-${by}`}
            d={cordPath(heightOf(outputs, output), GAP, heightOf(inputs, input))}
          />
        ))}
        {held !== undefined && pointer && (
          <path
            class="cord cord-held"
            d={cordPath(
              heightOf(outputs, held),
              shareAcross(area.ref.current, pointer.x),
              pointer.y,
            )}
          />
        )}
      </svg>
      <ul aria-label="Inputs">
        {inputs.map((jack) => (
          <li key={jack}>
            <InputJack jack={jack} scene={scene} patching={patching} />
          </li>
        ))}
      </ul>
    </div>
  );
}

/** How far across the room for the cords a place is, from the left of all jacks in pixels. */
function shareAcross(columns: Element | null, x: number): number {
  const cords = columns?.querySelector('.patch-cords')?.getBoundingClientRect();
  const left = columns?.getBoundingClientRect().left ?? 0;
  return cords ? ((x + left - cords.left) * GAP) / cords.width : GAP;
}

/** A cord: level out of its socket, straight across, and level into the other. */
const cordPath = (y: number, toX: number, toY: number): string =>
  `M0 ${y}H${STUB}L${toX - STUB} ${toY}H${toX}`;
