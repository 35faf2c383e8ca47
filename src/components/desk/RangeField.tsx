import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { type GainControl, numberAt, type PanControl } from '../../../simulator/index.ts';
import { controlText, spokenControl } from '../../text/index.ts';
import { FieldLabel } from './FieldLabel.tsx';
import { Later, useLater } from './later.ts';
import { NotThereYet } from './NotThereYet.tsx';
import type { Hands, Scene } from './scene.ts';
import { stepByWheel } from './step-by-wheel.ts';

type ButtonWords = readonly [name: string, sign: string];

const ENTRY = new Later(async () => (await import('./FigureEntry.tsx')).FigureEntry);
/** The keys that a figure begins with, and those that it goes on with. */
const BEGINS = /^[\d.,+-]$/;
const GOES_ON = /^.$|Enter/;

/** What keys do, by their names. */
export type Keys = Readonly<Record<string, () => void>>;

interface Props extends JSX.InputHTMLAttributes<HTMLInputElement> {
  control: GainControl | PanControl;
  scene: Scene;
  hands: Hands;
  /** How far an arrow, a turn of the wheel and each button go, in the unit of the control. */
  stride: number;
  /** How far an arrow goes with Shift, in the same unit. */
  fine: number;
  /** What more keys do than the arrows and Backspace. */
  keys?: Keys;
  /** What the button towards its least does, and the sign on it. */
  down: ButtonWords;
  /** What the button towards its most does, and the sign on it. */
  up: ButtonWords;
}

/**
 * A control that goes from one end to the other, as a native range with a button at either side and its figure.
 * Tab passes the buttons by: they do what the arrows do. Backspace and a double click set it to its default;
 * a digit, or a click at the figure, opens a field to type in. Where nothing else is said it moves as the value does.
 */
export function RangeField(props: Props) {
  const { control, scene, hands, stride, fine, keys, down, up, ...range } = props;
  const { address, label } = control;
  const value = numberAt(scene.setup, address);
  const text = controlText(control, value);
  const entry = useLater(ENTRY);
  /** What was typed so far, while its figure is typed over. */
  const [typed, setTyped] = useState<string>();
  const figure = useRef<HTMLButtonElement>(null);
  const field = useRef<HTMLInputElement>(null);
  const isLocked = scene.locked.has(address);
  const id = `${scene.id}-${address}`;
  const step = (by: number) => hands.send({ type: 'control.step', address, by });
  const set = (next: number) => hands.send({ type: 'control.set', address, value: next });
  const reset = () => hands.send({ type: 'control.reset', address });
  const type = (event: KeyboardEvent) => {
    const { key } = event;
    const wanted = typed === undefined ? BEGINS : GOES_ON;
    if (!wanted.test(key) || event.ctrlKey || event.metaKey) return;
    // A field that is there takes the key itself; until then they are gathered for it.
    if (field.current) field.current.focus();
    else {
      event.preventDefault();
      setTyped((before = '') => before + (key === 'Enter' ? '\n' : key));
    }
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const by = event.shiftKey ? fine : stride;
    const raise = () => step(by);
    const lower = () => step(-by);
    const deeds: Keys = {
      ArrowUp: raise,
      ArrowRight: raise,
      ArrowDown: lower,
      ArrowLeft: lower,
      Backspace: reset,
      ...keys,
    };
    const act = deeds[event.key];
    if (!act) return type(event);
    event.preventDefault();
    act();
  };
  const button = ([name, sign]: ButtonWords, by: number) => (
    <button
      type="button"
      tabIndex={-1}
      aria-label={name}
      disabled={isLocked}
      onClick={() => step(by)}
    >
      {sign}
    </button>
  );
  return (
    <div class="field">
      <FieldLabel id={id} control={control} scene={scene} hands={hands} />
      <div class="gain">
        {button(down, -stride)}
        <input
          id={id}
          type="range"
          value={value}
          aria-valuetext={spokenControl(control, value)}
          data-address={address}
          disabled={isLocked}
          onKeyDown={onKeyDown}
          onInput={({ currentTarget }) => set(Number(currentTarget.value))}
          onDblClick={reset}
          onWheel={(event) => stepByWheel(event, (turned) => step(turned * stride))}
          {...range}
        />
        {button(up, stride)}
        {typed !== undefined &&
          (entry.there ? (
            <entry.there
              field={field}
              control={control}
              figure={text}
              typed={typed}
              goBack={() => figure.current?.focus()}
              onEnter={set}
              onLeave={() => setTyped(undefined)}
            />
          ) : (
            <NotThereYet later={entry} what="Number fields" />
          ))}
        <button
          ref={figure}
          type="button"
          class="figure-field"
          aria-label={`Type over ${label}: ${text}`}
          disabled={isLocked}
          onClick={() => setTyped('')}
          onKeyDown={type}
        >
          {text}
        </button>
      </div>
    </div>
  );
}
