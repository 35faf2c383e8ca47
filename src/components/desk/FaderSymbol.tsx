import { useRef } from 'preact/hooks';
import { db, faderGain, faderPosition, isOn, numberAt, ownerOf } from '../../../simulator/index.ts';
import type { FaderSlot, WireRole } from '../../drawing/drawing.ts';
import { signed } from '../../text/index.ts';
import { Light, line } from './LitWire.tsx';
import type { Hands, Scene } from './scene.ts';

const MARKS = [10, 0, -10, -20, -40];
/** Within this many dB of unity a dragged fader falls into place there; Shift leaves it free. */
const DETENT = 0.6;

interface Props {
  slot: FaderSlot;
  /** What the wire is that it lies in. */
  role: WireRole;
  scene: Scene;
  hands: Hands | undefined;
}

/**
 * A fader: its slot, its cap, its figure. It can be dragged, or its slot touched where it should go. On an
 * in-line strip whose faders are swapped, the wires cross over to one another's slots.
 */
export function FaderSymbol({ slot, role, scene, hands }: Props) {
  const { address, before, x, top, bottom, from, to, partner } = slot;
  const gain = numberAt(scene.setup, address);
  const heightOf = (value: number) => bottom - faderPosition(db(value)) * (bottom - top);
  const cap = heightOf(gain);
  const owner = ownerOf(address);
  const other = partner && isOn(scene.setup, partner.swap) ? partner : undefined;
  // What runs through this slot, and through which slot its own wire runs.
  const through = other ?? slot;
  const side = other?.x ?? x;
  const lead = line({ x, y: from }, { x: side, y: top });
  const back = line({ x: side, y: bottom }, { x, y: to });
  return (
    <g>
      <rect class="slot" x={x - 3} y={top} width={6} height={bottom - top} rx={3} />
      <path class="tick" d={MARKS.map((mark) => `M${x + 8} ${heightOf(mark)}h5`).join('')} />
      {from !== top && (
        <>
          <path class={`wire wire-${role}`} d={`${lead}${back}`} />
          <Light d={lead} place={before} scene={scene} />
          <Light d={back} place={address} scene={scene} />
        </>
      )}
      <Light d={line({ x, y: top }, { x, y: cap })} place={through.before} scene={scene} />
      <Light d={line({ x, y: cap }, { x, y: bottom })} place={through.address} scene={scene} />
      <rect class="cap" x={x - 14} y={cap - 9} width={28} height={18} rx={4} />
      <line class="cap-line" x1={x - 14} x2={x + 14} y1={cap} y2={cap} />
      <text class="figure" x={x + 18} y={cap + 4}>
        {gain === -Infinity ? 'closed' : signed(gain)}
      </text>
      {hands && <FaderHandle slot={slot} owner={owner} scene={scene} hands={hands} />}
    </g>
  );
}

/** The part of a fader that a pointer takes hold of. */
function FaderHandle({
  slot: { address, x, top, bottom },
  owner,
  scene,
  hands,
}: {
  slot: FaderSlot;
  owner: string;
  scene: Scene;
  hands: Hands;
}) {
  const dragging = useRef(false);
  const lastAt = useRef<number>();
  /** Whether a move was told that no frame has shown yet, and what came since. */
  const isTold = useRef(false);
  const waiting = useRef<PointerEvent>();
  if (scene.locked.has(address)) return null;

  const setFrom = (event: PointerEvent) => {
    lastAt.current = event.clientY;
    const matrix = (event.target as SVGGraphicsElement).getScreenCTM();
    if (!matrix) return;
    const { y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    const wanted = Math.round(faderGain((bottom - y) / (bottom - top)) * 10) / 10;
    const isAtUnity = !event.shiftKey && Math.abs(wanted) < DETENT;
    hands.send({ type: 'control.set', address, value: isAtUnity ? 0 : wanted });
  };
  const tell = () => {
    if (!waiting.current) return;
    isTold.current = true;
    setFrom(waiting.current);
    waiting.current = undefined;
    requestAnimationFrame(() =>
      setTimeout(() => {
        isTold.current = false;
        tell();
      }),
    );
  };
  // One move a frame: the first at once, which leaves time for the frame, and then the last, when that was shown.
  const drag = (event: PointerEvent) => {
    if (!dragging.current || event.clientY === lastAt.current) return;
    waiting.current = event;
    if (!isTold.current) tell();
  };
  const end = () => {
    if (!dragging.current) return;
    tell();
    dragging.current = false;
    hands.send({ type: 'drag.end' });
    // Not before: what changes beside the drawing would hold up the hand, or move the page under it.
    if (scene.selected !== owner) hands.open(owner);
  };
  return (
    <rect
      class="hit hit-fader"
      x={x - 18}
      y={top - 10}
      width={36}
      height={bottom - top + 20}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        dragging.current = true;
        hands.send({ type: 'drag.begin' });
        setFrom(event);
      }}
      onPointerRawUpdate={drag}
      onPointerMove={drag}
      onPointerUp={end}
      onPointerCancel={end}
      onDblClick={() => hands.send({ type: 'control.reset', address })}
    />
  );
}
