import type { Control, ControlValue } from '../rig/control.ts';
import { CLOSED } from '../units/level.ts';

/** A step that goes below this, in dB, closes a control that can be closed; the first step up from closed leads here. */
export const LOWEST_STEP = -60;

/**
 * Where a control stands after a step.
 *
 * A gain moves by dB, a pan by its share of the way; both stop at their ends. A switch turns with any
 * step. A choice or cord moves along its options by whole steps and stops at the ends.
 */
export function stepped(control: Control, value: ControlValue, by: number): ControlValue {
  switch (control.kind) {
    case 'switch':
      return !value;
    case 'pan':
      return clamp(tidy(Number(value) + by), -1, 1);
    case 'gain': {
      const { min, max, closes } = control;
      if (!closes) return clamp(tidy(Number(value) + by), min, max);
      if (value === CLOSED) return by > 0 ? LOWEST_STEP : CLOSED;
      const next = tidy(Number(value) + by);
      return next < LOWEST_STEP && by < 0 ? CLOSED : clamp(next, min, max);
    }
    case 'choice':
    case 'cord': {
      const values = control.options.map((option) => option.value);
      const index = clamp(values.indexOf(String(value)) + Math.sign(by), 0, values.length - 1);
      return values[index] ?? value;
    }
  }
}

const clamp = (value: number, min: number, max: number) => Math.min(max, Math.max(min, value));

/** Without the dust of binary fractions: to a thousandth. */
const tidy = (value: number) => Math.round(value * 1000) / 1000;
