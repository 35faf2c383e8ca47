import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import {
  type Address,
  feedOf,
  fullLabel,
  jacks,
  NONE,
  OPEN,
  valueAt,
} from '../../../simulator/index.ts';
import { moveCord } from './move-cord.ts';
import type { Hands, Scene } from './scene.ts';

/** Height of a row of jacks in pixels, as in the style sheet; the cords are stretched to the room between both columns. */
const ROW = 40;
const GAP = 100;

/** The end of a cord that one holds: the output jack that it comes from. */
type Held = Address | undefined;

interface Props {
  scene: Scene;
  hands: Hands;
}

/**
 * All jacks of the room in two columns, with the cords between them. A cord is plugged by two clicks, on an
 * output and on an input, or by a drag from one to the other. A click on an input that holds a cord pulls its
 * plug and keeps it in the hand. Escape drops what one holds.
 */
export function PatchPanel({ scene, hands }: Props) {
  const { setup, locked } = scene;
  const { rig } = setup;
  const { outputs, inputs } = jacks(rig);
  const [held, setHeld] = useState<Held>();
  const [pointer, setPointer] = useState<{ x: number; y: number }>();
  const cordsBox = useRef<SVGSVGElement>(null);

  const drop = () => {
    setHeld(undefined);
    setPointer(undefined);
  };
  useLayoutEffect(() => {
    if (held === undefined) return;
    const onKey = ({ key }: KeyboardEvent) => {
      if (key !== 'Escape') return;
      setHeld(undefined);
      setPointer(undefined);
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [held]);

  const take = (output: Address) => setHeld(held === output ? undefined : output);
  const plug = (input: Address) => {
    const standing = String(valueAt(setup, input));
    if (held === undefined) {
      if (standing === NONE || locked.has(input)) return;
      hands.send({ type: 'cord.remove', input });
      if (standing !== OPEN) setHeld(standing);
      return;
    }
    moveCord(scene, hands, held, input);
    drop();
  };

  const heightOf = (list: readonly Address[], jack: Address) => (list.indexOf(jack) + 0.5) * ROW;
  const cords = inputs.flatMap((input) => {
    const feed = feedOf(setup, input);
    return feed ? [{ input, ...feed }] : [];
  });
  const height = Math.max(outputs.length, inputs.length) * ROW;
  return (
    <div class="patch-panel">
      <p class="patch-word" role="status">
        {held === undefined
          ? 'Choose an output, then an input; or drag from one to the other. Choosing an input that holds a cord pulls it.'
          : `In your hand: a cord from ${fullLabel(rig, held)}. Choose an input, or press Escape to drop it.`}
      </p>
      <div
        class="patch-columns"
        onPointerMove={({ clientX, clientY }) => {
          if (!pointer) return;
          setPointer(within(cordsBox.current, clientX, clientY));
        }}
        onPointerUp={({ clientX, clientY }) => {
          if (!pointer) return;
          setPointer(undefined);
          const input = document
            .elementFromPoint(clientX, clientY)
            ?.closest<HTMLElement>('[data-input]')?.dataset['input'];
          // A click ends where it began, and the cord stays in the hand.
          if (input !== undefined) plug(input);
        }}
        onPointerCancel={drop}
      >
        <ul aria-label="Outputs">
          {outputs.map((jack) => (
            <li key={jack}>
              <button
                type="button"
                class="jack jack-out"
                data-output={jack}
                aria-pressed={held === jack}
                onClick={() => take(jack)}
              >
                <span>{fullLabel(rig, jack)}</span>
                <span
                  class="socket"
                  aria-hidden="true"
                  onPointerDown={(event) => {
                    event.preventDefault();
                    setHeld(jack);
                    setPointer(within(cordsBox.current, event.clientX, event.clientY));
                    // The pointer of a finger stays with what it touched unless it is let go.
                    event.currentTarget.releasePointerCapture(event.pointerId);
                  }}
                  onClick={(event) => event.stopPropagation()}
                />
              </button>
            </li>
          ))}
        </ul>
        <svg
          ref={cordsBox}
          class="patch-cords"
          viewBox={`0 0 ${GAP} ${height}`}
          height={height}
          preserveAspectRatio="none"
          aria-hidden="true"
        >
          {cords.map(({ input, output, by }) => (
            <path
              key={input}
              class={`cord cord-${by}`}
              d={cordPath(heightOf(outputs, output), GAP, heightOf(inputs, input))}
            />
          ))}
          {held !== undefined && pointer && (
            <path
              class="cord cord-held"
              d={cordPath(heightOf(outputs, held), pointer.x, pointer.y)}
            />
          )}
        </svg>
        <ul aria-label="Inputs">
          {inputs.map((jack) => {
            const standing = String(valueAt(setup, jack));
            const isLocked = locked.has(jack);
            return (
              <li key={jack}>
                <button
                  type="button"
                  class="jack jack-in"
                  data-input={jack}
                  disabled={isLocked}
                  aria-disabled={held === undefined && standing === NONE}
                  onClick={() => plug(jack)}
                >
                  <span
                    class={standing === NONE ? 'socket' : 'socket socket-taken'}
                    aria-hidden="true"
                  />
                  <span>
                    {fullLabel(rig, jack)}
                    {isLocked && <span class="lock"> (locked)</span>}
                    {standing !== NONE && standing !== OPEN && (
                      <span class="visually-hidden">
                        , with a cord from {fullLabel(rig, standing)}
                      </span>
                    )}
                  </span>
                </button>
              </li>
            );
          })}
        </ul>
      </div>
    </div>
  );
}

/** A point of the window as one of the box that the cords are drawn in. */
function within(box: Element | null, clientX: number, clientY: number): { x: number; y: number } {
  const { left, top, width } = box?.getBoundingClientRect() ?? new DOMRect(0, 0, GAP);
  return { x: ((clientX - left) * GAP) / width, y: clientY - top };
}

/** How far a cord runs level at its ends. */
const STUB = 12;

/** A cord: level out of its socket, straight across, and level into the other. */
const cordPath = (y: number, toX: number, toY: number): string =>
  `M0 ${y}H${STUB}L${toX - STUB} ${toY}H${toX}`;
