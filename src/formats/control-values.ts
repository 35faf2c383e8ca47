import { type Control, OPEN } from '../../simulator/index.ts';
import { controlText, signed } from '../text/index.ts';

/** One control of a rig, as a row of a table of addresses. */
export interface ControlRow {
  readonly address: string;
  readonly name: string;
  /** What may stand behind its address in a file. */
  readonly takes: string;
  readonly default: string;
}

/** A control as its row. */
export const controlRow = (control: Control): ControlRow => ({
  address: control.address,
  name: `${control.ownerLabel} ${control.label}`.trim(),
  takes: valuesText(control),
  default: controlText(control, control.default),
});

/** The values that a control takes in a file. */
export function valuesText(control: Control): string {
  switch (control.kind) {
    case 'gain': {
      const range = `${signed(control.min)} to ${signed(control.max)} ${control.unit}`;
      return control.closes ? `${range}, or -inf` : range;
    }
    case 'switch':
      return 'true or false';
    case 'pan':
      return `${signed(-1, 0)} (left) to ${signed(1, 0)} (right)`;
    case 'choice':
      return control.options.map(({ value }) => value).join(', ');
    case 'cord':
      return control.options.some(({ value }) => value === OPEN)
        ? 'an output jack, none or open'
        : 'an output jack, or none';
  }
}
