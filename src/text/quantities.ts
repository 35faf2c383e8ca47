import { type Control, type ControlValue, type Level, NONE, OPEN } from '../../simulator/index.ts';
import { IN_DBU, inUnit } from './level-units.ts';
import { MINUS, signed } from './signed.ts';

/** What is said where an unstable loop leaves no level. */
export const NO_LEVEL = 'no level (unstable loop)';

/** A gain as one reads it: `+3.0 dB`, `closed`. */
export const gainText = (gain: number, digits = 1): string =>
  gain === -Infinity ? 'closed' : `${signed(gain, digits)} dB`;

/** A level as one reads it: `−2.0 dBu`, `615.3 mV`, `silent`, or that there is none. */
export function levelText(level: Level | number, digits = 1, scale = IN_DBU): string {
  if (level === undefined) return NO_LEVEL;
  return level === -Infinity ? 'silent' : inUnit(level, scale, digits);
}

/** A level for a table of figures, without its unit: `−2.0`, `−∞`, `unknown`. */
export const levelFigure = (level: Level, digits = 1): string =>
  level === undefined ? 'unknown' : signed(level, digits);

/** A pan position as one reads it: `centre`, `30 % left`, `full right`. */
export const panText = (position: number): string => panWords(position, ' %');

/** Where a control stands, as one reads it beside its name: `−6.0 dB`, `closed`, `on`, `from Output 3`. */
export function controlText(control: Control, value: ControlValue, digits = 1): string {
  switch (control.kind) {
    case 'gain':
      return control.unit === 'dB'
        ? gainText(Number(value), digits)
        : levelText(Number(value), digits);
    case 'pan':
      return panText(Number(value));
    case 'switch':
      return switchText(control.address, value === true);
    case 'choice':
      return optionLabel(control.options, value);
    case 'cord':
      return value === NONE
        ? 'nothing plugged'
        : plugText(value, optionLabel(control.options, value));
  }
}

/** What is plugged into an input jack: `from Output 3`, `an open plug`. */
export const plugText = (value: ControlValue, label: string): string =>
  value === NONE || value === OPEN ? label : `from ${label}`;

/** Where a control stands, as it is read out: `minus 6.0 decibels`, `30 percent left`, `4 to 1`. */
export function spokenControl(control: Control, value: ControlValue): string {
  switch (control.kind) {
    case 'gain':
      return control.unit === 'dB' ? spokenGain(Number(value)) : spokenLevel(Number(value));
    case 'pan':
      return panWords(Number(value), ' percent');
    case 'choice':
      return optionLabel(control.options, value).replace('∞', 'infinity').replace(' : ', ' to ');
    case 'switch':
    case 'cord':
      return controlText(control, value);
  }
}

/** A gain as it is read out: `minus 6.0 decibels`, `closed`. */
export const spokenGain = (gain: number): string =>
  gain === -Infinity ? 'closed' : `${spokenNumber(gain)} decibels`;

/** A level as it is read out: `minus 10.0 dBu`, `silent`. */
export function spokenLevel(level: Level | number): string {
  if (level === undefined) return 'no level, unstable loop';
  return level === -Infinity ? 'silent' : `${spokenNumber(level)} dBu`;
}

const spokenNumber = (value: number): string =>
  signed(value).replace(MINUS, 'minus ').replace('+', 'plus ');

function panWords(position: number, percent: string): string {
  const share = Math.round(Math.abs(position) * 100);
  if (share === 0) return 'centre';
  const side = position < 0 ? 'left' : 'right';
  return share === 100 ? `full ${side}` : `${share}${percent} ${side}`;
}

function switchText(address: string, on: boolean): string {
  if (address.endsWith('.polarity')) return on ? 'inverted' : 'not inverted';
  return on ? 'on' : 'off';
}

const optionLabel = (
  options: readonly { readonly value: string; readonly label: string }[],
  value: ControlValue,
): string => options.find((option) => option.value === value)?.label ?? String(value);
