import type { RefObject } from 'preact';
import { useLayoutEffect, useState } from 'preact/hooks';
import type { GainControl, PanControl } from '../../../simulator/index.ts';
import { readNumber } from '../../text/read-number.ts';
import { readPan } from '../../text/read-pan.ts';

interface Props {
  /** Where its field is found. */
  field: RefObject<HTMLInputElement>;
  control: GainControl | PanControl;
  /** The figure that it lies over. */
  figure: string;
  /** What it begins with: the keys that opened it, ended by a line break if they took it already. */
  typed: string;
  onEnter: (value: number) => void;
  /** Gives the focus back to where it was opened. */
  goBack: () => void;
  /** Called when it has nothing more to do. */
  onLeave: () => void;
}

/** How much of what was typed an error shows, in characters. */
const SHOWN = 20;

/** In what a control is typed, how that is read, and what to expect there. */
function typingOf(control: GainControl | PanControl) {
  if (control.kind === 'pan') {
    return { unit: 'percent', read: readPan, expected: 'a place such as 30 left, or “centre”' };
  }
  const { unit, closes } = control;
  const expected = `a number such as −6${closes ? ', or “closed”' : ''}`;
  return { unit, read: readNumber, expected };
}

/** A field over the figure of a control. Enter takes what is typed, and so does leaving it; Escape does not. */
export function FigureEntry({ field, control, figure, typed, onEnter, goBack, onLeave }: Props) {
  const [refused, setRefused] = useState<string>();
  const { unit, read, expected } = typingOf(control);
  const isRefused = (entered: string) => entered.trim() !== '' && read(entered) === undefined;
  const take = (entered: string) => {
    // It stays, to be mended.
    if (isRefused(entered)) return setRefused(entered);
    const value = read(entered);
    if (value !== undefined) onEnter(value);
    onLeave();
  };
  const enter = (entered: string) => {
    // The field that loses the focus takes what is in it.
    if (isRefused(entered)) setRefused(entered);
    else goBack();
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: it begins once.
  useLayoutEffect(() => {
    if (!field.current) return;
    field.current.focus();
    // Set here, it leaves the caret behind it.
    field.current.value = typed.trim();
    if (typed.endsWith('\n')) enter(typed.trim());
  }, []);
  return (
    <>
      <input
        ref={field}
        class="figure-field"
        type="text"
        inputMode="text"
        autocomplete="off"
        aria-label={`${control.label} in ${unit}`}
        aria-invalid={refused !== undefined}
        placeholder={figure}
        onFocus={({ currentTarget }) => currentTarget.select()}
        onBlur={({ currentTarget }) => take(currentTarget.value)}
        onKeyDown={(event) => {
          const { key, currentTarget } = event;
          if (key === 'Escape') currentTarget.value = '';
          else if (key !== 'Enter') return;
          // Or it would be pressed at what has the focus then.
          event.preventDefault();
          enter(currentTarget.value);
        }}
      />
      {refused !== undefined && (
        <span class="figure-word" role="alert">
          {`Expected ${expected}; found “${refused.slice(0, SHOWN)}”. Escape brings back ${figure}.`}
        </span>
      )}
    </>
  );
}
