import { useEffect, useRef, useState } from 'preact/hooks';
import {
  db,
  faderGain,
  faderPosition,
  type GainControl,
  numberAt,
} from '../../../simulator/index.ts';
import { controlText, spokenControl } from '../../text/index.ts';
import { readNumber } from '../../text/read-number.ts';
import { FieldLabel } from './FieldLabel.tsx';
import type { Hands, Scene } from './scene.ts';
import { stepByWheel } from './step-by-wheel.ts';

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

/**
 * A gain as a native range, with buttons for single clicks and a field for its figure.
 *
 * Arrows step 0.5 dB, with Shift 0.1, Page 6, Home and End the ends, Backspace or a double click the
 * default; a digit goes on in the field. Tab passes the buttons by: they do what the arrows do.
 */
export function GainField({ control, scene, hands }: Props) {
  const { address, min, max, closes } = control;
  const value = numberAt(scene.setup, address);
  const isLocked = scene.locked.has(address);
  const id = `${scene.id}-${address}`;
  const figure = useRef<HTMLInputElement>(null);
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

  const onKeyDown = (event: KeyboardEvent) => {
    const small = event.shiftKey ? FINE_STEP : STEP;
    const deed: Record<string, () => void> = {
      ArrowUp: () => step(small),
      ArrowRight: () => step(small),
      ArrowDown: () => step(-small),
      ArrowLeft: () => step(-small),
      PageUp: () => step(PAGE),
      PageDown: () => step(-PAGE),
      Home: () => set(closes ? -Infinity : min),
      End: () => set(max),
      Backspace: () => hands.send({ type: 'control.reset', address }),
    };
    const act = deed[event.key];
    if (act) {
      event.preventDefault();
      act();
    } else if (/^[\d.+-]$/.test(event.key) && !event.ctrlKey && !event.metaKey) {
      figure.current?.focus();
      figure.current?.select();
    }
  };

  return (
    <div class="field">
      <FieldLabel id={id} control={control} scene={scene} hands={hands} />
      <div class="gain">
        <button
          type="button"
          tabIndex={-1}
          aria-label={`Lower ${control.label}`}
          disabled={isLocked}
          onClick={() => step(-STEP)}
        >
          −
        </button>
        <input
          id={id}
          type="range"
          min={closes ? 0 : min}
          max={closes ? TRAVEL : max}
          step={closes ? 1 : STEP}
          value={closes ? Math.round(faderPosition(db(value)) * TRAVEL) : value}
          aria-valuetext={spokenControl(control, value)}
          data-address={address}
          disabled={isLocked}
          onKeyDown={onKeyDown}
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
          onDblClick={() => hands.send({ type: 'control.reset', address })}
          onWheel={(event) => stepByWheel(event, (up) => step(up * STEP))}
        />
        <button
          type="button"
          tabIndex={-1}
          aria-label={`Raise ${control.label}`}
          disabled={isLocked}
          onClick={() => step(STEP)}
        >
          +
        </button>
        <Figure
          field={figure}
          text={controlText(control, value)}
          label={`${control.label} in ${control.unit}`}
          isLocked={isLocked}
          onEnter={set}
        />
      </div>
    </div>
  );
}

interface FigureProps {
  field: { current: HTMLInputElement | null };
  text: string;
  label: string;
  isLocked: boolean;
  onEnter: (value: number) => void;
}

/** The figure of a gain, which can be typed over. Enter takes it, Escape leaves it as it was. */
function Figure({ field, text, label, isLocked, onEnter }: FigureProps) {
  const [draft, setDraft] = useState<string | undefined>(undefined);
  const [isRefused, setRefused] = useState(false);
  const leave = () => {
    setDraft(undefined);
    setRefused(false);
  };
  const take = () => {
    const isEmpty = draft === undefined || draft.trim() === '';
    const value = isEmpty ? undefined : readNumber(draft);
    // What was typed stays, to be mended.
    if (value === undefined && !isEmpty) {
      setRefused(true);
      return;
    }
    if (value !== undefined) onEnter(value);
    leave();
  };
  return (
    <>
      <input
        ref={field}
        class="figure-field"
        type="text"
        inputMode="text"
        autocomplete="off"
        aria-label={label}
        aria-invalid={isRefused}
        value={draft ?? text}
        disabled={isLocked}
        onFocus={({ currentTarget }) => currentTarget.select()}
        onInput={({ currentTarget }) => setDraft(currentTarget.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
          if (event.key === 'Escape') leave();
        }}
      />
      {isRefused && (
        <span class="figure-word" role="alert">
          {`Expected a number such as −6, or “closed”; found “${draft?.slice(0, 20)}”. Escape brings back ${text}.`}
        </span>
      )}
    </>
  );
}
