import { useEffect, useRef } from 'preact/hooks';
import {
  db,
  faderGain,
  faderPosition,
  type GainControl,
  numberAt,
} from '../../../simulator/index.ts';
import { RangeField } from './RangeField.tsx';
import type { Hands, Scene } from './scene.ts';

/** Steps of a gain in dB: arrow, arrow with Shift, page. */
const STEP = 0.5;
const FINE_STEP = 0.1;
const PAGE = 6;
/** Within this many dB of unity what is dragged falls into place there. */
const DETENT = 0.6;
/** Positions of a range that moves on the fader's taper. */
const TRAVEL = 1000;

interface Props {
  control: GainControl;
  scene: Scene;
  hands: Hands;
}

/** A gain as a range. Arrows step 0.5 dB, with Shift 0.1, Page 6, Home and End go to the ends. */
export function GainField({ control, scene, hands }: Props) {
  const { address, label, min, max, closes } = control;
  const value = numberAt(scene.setup, address);
  const isDragging = useRef(false);
  // Shift leaves what is dragged free of the detent.
  const isFree = useRef(false);
  const step = (by: number) => hands.send({ type: 'control.step', address, by });
  const set = (next: number) => hands.send({ type: 'control.set', address, value: next });
  const endDrag = () => {
    if (isDragging.current) hands.send({ type: 'drag.end' });
    isDragging.current = false;
  };
  // A field that goes while it is dragged, as when a second finger opens another strip, hears of no end.
  // biome-ignore lint/correctness/useExhaustiveDependencies: all that it needs stays the same.
  useEffect(() => endDrag, []);

  return (
    <RangeField
      control={control}
      scene={scene}
      hands={hands}
      stride={STEP}
      fine={FINE_STEP}
      keys={{
        PageUp: () => step(PAGE),
        PageDown: () => step(-PAGE),
        Home: () => set(closes ? -Infinity : min),
        End: () => set(max),
      }}
      down={[`Lower ${label}`, '−']}
      up={[`Raise ${label}`, '+']}
      min={closes ? 0 : min}
      max={closes ? TRAVEL : max}
      step={closes ? 1 : STEP}
      value={closes ? Math.round(faderPosition(db(value)) * TRAVEL) : value}
      onPointerDown={(event) => {
        isFree.current = event.shiftKey;
        isDragging.current = true;
        hands.send({ type: 'drag.begin' });
      }}
      onPointerMove={(event) => {
        isFree.current = event.shiftKey;
      }}
      onPointerUp={endDrag}
      onPointerCancel={endDrag}
      onInput={({ currentTarget }) => {
        const at = Number(currentTarget.value);
        const wanted = closes ? Math.round(faderGain(at / TRAVEL) * 10) / 10 : at;
        const isAtUnity = isDragging.current && !isFree.current && Math.abs(wanted) < DETENT;
        set(isAtUnity ? 0 : wanted);
      }}
    />
  );
}
