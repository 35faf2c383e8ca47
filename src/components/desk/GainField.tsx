import { useEffect, useRef, useState } from 'preact/hooks';
import {
  db,
  faderGain,
  faderPosition,
  type GainControl,
  numberAt,
} from '../../../simulator/index.ts';
import { controlText } from '../../text/index.ts';
import { Later, useLater } from './later.ts';
import { NotThereYet } from './NotThereYet.tsx';
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

/** What Enter adds to what is typed. */
const TAKEN = '\n';

const ENTRY = new Later(async () => (await import('./FigureEntry.tsx')).FigureEntry);

interface Props {
  control: GainControl;
  scene: Scene;
  hands: Hands;
}

/**
 * A gain as a range whose figure can be typed over. Arrows step 0.5 dB, with Shift 0.1, Page 6, Home and End
 * the ends, Backspace the default; a digit, or a click at the figure, opens a field to type in.
 */
export function GainField({ control, scene, hands }: Props) {
  const { address, label, min, max, closes } = control;
  const value = numberAt(scene.setup, address);
  const text = controlText(control, value);
  const entry = useLater(ENTRY);
  /** What was typed so far, while its figure is typed over. */
  const [typed, setTyped] = useState<string>();
  const figure = useRef<HTMLButtonElement>(null);
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

  // Until there is a field to type in, its keys are gathered, up to the one that takes it.
  const type = (event: KeyboardEvent) => {
    const key = typed !== undefined && event.key === 'Enter' ? TAKEN : event.key;
    if (!/^[\d.,+\n-]$/.test(key) || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    setTyped((before = '') => before + key);
  };

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
      onOtherKey={type}
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
    >
      {typed !== undefined && entry.there && (
        <entry.there
          label={`${label} in ${control.unit}`}
          figure={text}
          typed={typed}
          goBack={() => figure.current?.focus()}
          onEnter={set}
          onLeave={() => setTyped(undefined)}
        />
      )}
      <button
        ref={figure}
        type="button"
        class="figure-field"
        aria-label={`Type over ${label}: ${text}`}
        disabled={scene.locked.has(address)}
        onClick={() => setTyped('')}
        onKeyDown={type}
      >
        {text}
      </button>
      {typed !== undefined && entry.hasFailed && <NotThereYet later={entry} what="Typed figures" />}
    </RangeField>
  );
}
