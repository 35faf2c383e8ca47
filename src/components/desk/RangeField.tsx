import type { ComponentChildren, JSX } from 'preact';
import { type GainControl, numberAt, type PanControl } from '../../../simulator/index.ts';
import { spokenControl } from '../../text/index.ts';
import { FieldLabel } from './FieldLabel.tsx';
import type { Hands, Scene } from './scene.ts';
import { stepByWheel } from './step-by-wheel.ts';

type ButtonWords = readonly [name: string, sign: string];

/** What keys do, by their names. */
export type Keys = Readonly<Record<string, () => void>>;

interface Props extends JSX.InputHTMLAttributes<HTMLInputElement> {
  control: GainControl | PanControl;
  scene: Scene;
  hands: Hands;
  /** How far an arrow, a turn of the wheel and each button go, in the unit of the control. */
  stride: number;
  /** How far an arrow goes with Shift. */
  fine: number;
  /** What more keys do than the arrows and Backspace. */
  keys?: Keys;
  /** Is told of all other keys. */
  onOtherKey?: (event: KeyboardEvent) => void;
  /** What the button towards its least does, and the sign on it. */
  down: ButtonWords;
  /** What the button towards its most does, and the sign on it. */
  up: ButtonWords;
  /** Its figure. */
  children: ComponentChildren;
}

/**
 * A control that goes from one end to the other, as a native range with a button at either side. Tab passes
 * the buttons by: they do what the arrows do. Backspace and a double click set it to its default.
 */
export function RangeField(props: Props) {
  const { control, scene, hands, stride, fine, keys, onOtherKey, down, up, children, ...range } =
    props;
  const { address } = control;
  const isLocked = scene.locked.has(address);
  const id = `${scene.id}-${address}`;
  const step = (by: number) => hands.send({ type: 'control.step', address, by });
  const reset = () => hands.send({ type: 'control.reset', address });
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
    if (!act) return onOtherKey?.(event);
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
          aria-valuetext={spokenControl(control, numberAt(scene.setup, address))}
          data-address={address}
          disabled={isLocked}
          onKeyDown={onKeyDown}
          onDblClick={reset}
          onWheel={(event) => stepByWheel(event, (turned) => step(turned * stride))}
          {...range}
        />
        {button(up, stride)}
        {children}
      </div>
    </div>
  );
}
