import { useEffect, useRef } from 'preact/hooks';
import {
  db,
  faderGain,
  faderPosition,
  isOn,
  numberAt,
  ownerOf,
  type Setup,
} from '../../../simulator/index.ts';
import type { FaderSlot, WireLine, WireRole } from '../../drawing/drawing.ts';
import { signed } from '../../text/index.ts';
import { setWhenChanged } from './drawn-when-changed.ts';
import { type LightLine, line } from './LitWires.tsx';
import type { Hands, Scene } from './scene.ts';

const MARKS = [10, 0, -10, -20, -40];
/** Within this many dB of unity a dragged fader falls into place there; Shift leaves it free. */
const DETENT = 0.6;

const heightOf = ({ top, bottom }: FaderSlot, gain: number) =>
  bottom - faderPosition(db(gain)) * (bottom - top);

/** The slot that a fader moves in, with its scale. */
export const FaderSlotSymbol = ({ slot }: { slot: FaderSlot }) => (
  <>
    <rect
      class="slot"
      x={slot.x - 3}
      y={slot.top}
      width={6}
      height={slot.bottom - slot.top}
      rx={3}
    />
    <path
      class="tick"
      d={MARKS.map((mark) => `M${slot.x + 8} ${heightOf(slot, mark)}h5`).join('')}
    />
  </>
);

/** The other fader of an in-line strip, where the two are swapped and their wires cross over to one another's slots. */
const partnerOf = (setup: Setup, { partner }: FaderSlot) =>
  partner && isOn(setup, partner.swap) ? partner : undefined;

/**
 * The wires that lead to a slot and back from it, where there is room between them.
 *
 * @param role what the wire is that the fader lies in.
 */
export function ledWires(setup: Setup, slot: FaderSlot, role: WireRole): WireLine[] {
  const { address, before, x, top, bottom, from, to } = slot;
  if (from === top) return [];
  const side = partnerOf(setup, slot)?.x ?? x;
  return [
    {
      place: before,
      role,
      points: [
        { x, y: from },
        { x: side, y: top },
      ],
    },
    {
      place: address,
      role,
      points: [
        { x: side, y: bottom },
        { x, y: to },
      ],
    },
  ];
}

/** What runs through a slot: above the cap what comes to the fader, below it what leaves. */
export function slotLines(setup: Setup, slot: FaderSlot): LightLine[] {
  const { address, x, top, bottom } = slot;
  const cap = { x, y: heightOf(slot, numberAt(setup, address)) };
  const through = partnerOf(setup, slot) ?? slot;
  return [
    { d: line({ x, y: top }, cap), place: through.before },
    { d: line(cap, { x, y: bottom }), place: through.address },
  ];
}

interface Props {
  slot: FaderSlot;
  /** Whether its column is open already. */
  isSelected: boolean;
  scene: Scene;
  hands: Hands | undefined;
}

/** The cap of a fader and its figure. It can be dragged, or its slot touched where it should go. */
export const FaderSymbol = setWhenChanged<Props>(Fader, ({ slot }) => [slot.address]);

function Fader({ slot, isSelected, scene, hands }: Props) {
  const { address, x } = slot;
  const gain = numberAt(scene.setup, address);
  const cap = heightOf(slot, gain);
  return (
    <g>
      <rect class="cap" x={x - 14} y={cap - 9} width={28} height={18} rx={4} />
      <line class="cap-line" x1={x - 14} x2={x + 14} y1={cap} y2={cap} />
      <text class="figure" x={x + 18} y={cap + 4}>
        {gain === -Infinity ? 'closed' : signed(gain)}
      </text>
      {hands && <FaderHandle slot={slot} isSelected={isSelected} scene={scene} hands={hands} />}
    </g>
  );
}

/** The part of a fader that a pointer takes hold of. */
function FaderHandle({
  slot: { address, x, top, bottom },
  isSelected,
  scene,
  hands,
}: {
  slot: FaderSlot;
  isSelected: boolean;
  scene: Scene;
  hands: Hands;
}) {
  const dragging = useRef(false);
  const lastAt = useRef<number>();
  /** Whether a move was told that no frame has shown yet, and what came since. */
  const isTold = useRef(false);
  const waiting = useRef<PointerEvent>();
  // One that goes while it is dragged hears of no end.
  useEffect(
    () => () => {
      if (dragging.current) hands.send({ type: 'drag.end' });
    },
    [hands],
  );
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
    if (!isSelected) hands.open(ownerOf(address));
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
