import type { Db, Dbu } from '../units/level.ts';
import type { Address, Owner } from './address.ts';

/** Where a control stands: a gain in dB or a level in dBu, a switch, a pan position, an option or a jack. */
export type ControlValue = number | boolean | string;

/** The value of a cord that is not plugged, and of a choice that leads nowhere. */
export const NONE = 'none';

/** The value of a cord of which the other end is plugged nowhere: it silences a jack that has a normal. */
export const OPEN = 'open';

interface ControlOf<Kind extends string, Value extends ControlValue> {
  readonly kind: Kind;
  readonly address: Address;
  readonly owner: Owner;
  /** Name of its owner as a person reads it: `Strip 3 Tenor`. */
  readonly ownerLabel: string;
  /** Name of the control on its owner: `fader`. Together they name it completely. */
  readonly label: string;
  readonly default: Value;
}

/** A gain in dB, or for a threshold a level in dBu. */
export interface GainControl extends ControlOf<'gain', number> {
  readonly unit: 'dB' | 'dBu';
  /** The lowest value, but for closed. */
  readonly min: Db | Dbu;
  readonly max: Db | Dbu;
  /** Whether it can be closed altogether: `-Infinity`. Such a control moves on the fader's taper. */
  readonly closes: boolean;
}

/** On or off. */
export interface SwitchControl extends ControlOf<'switch', boolean> {}

/** −1 is left, 0 the centre, 1 right. */
export interface PanControl extends ControlOf<'pan', number> {}

export interface Option {
  readonly value: string;
  readonly label: string;
}

/** One of several options. */
export interface ChoiceControl extends ControlOf<'choice', string> {
  readonly options: readonly Option[];
}

/**
 * An input jack: its value is the output jack that its cord comes from, or {@link NONE}; where it has a normal
 * also {@link OPEN}.
 */
export interface CordControl extends ControlOf<'cord', string> {
  readonly options: readonly Option[];
}

export type Control = GainControl | SwitchControl | PanControl | ChoiceControl | CordControl;

/** Why a value does not fit a control. */
export type Misfit =
  | { readonly code: 'wrong-type'; readonly expected: 'number' | 'switch' | 'option' }
  | {
      readonly code: 'out-of-range';
      readonly min: number;
      readonly max: number;
      readonly closes: boolean;
    }
  | { readonly code: 'no-such-option'; readonly options: readonly string[] };

/** Why a value does not fit a control; nothing when it fits. Never throws, whatever the value. */
export function misfitOf(control: Control, value: unknown): Misfit | undefined {
  switch (control.kind) {
    case 'switch':
      return typeof value === 'boolean' ? undefined : { code: 'wrong-type', expected: 'switch' };
    case 'gain': {
      const { min, max, closes } = control;
      return misfitOfNumber(value, { min, max, closes });
    }
    case 'pan':
      return misfitOfNumber(value, { min: -1, max: 1, closes: false });
    case 'choice':
    case 'cord': {
      if (typeof value !== 'string') return { code: 'wrong-type', expected: 'option' };
      const options = control.options.map((option) => option.value);
      return options.includes(value) ? undefined : { code: 'no-such-option', options };
    }
  }
}

function misfitOfNumber(
  value: unknown,
  range: { min: number; max: number; closes: boolean },
): Misfit | undefined {
  if (typeof value !== 'number' || Number.isNaN(value)) {
    return { code: 'wrong-type', expected: 'number' };
  }
  const fits = (value >= range.min && value <= range.max) || (range.closes && value === -Infinity);
  return fits ? undefined : { code: 'out-of-range', ...range };
}
