import { controls as controlsOf, valueAt } from '../../../simulator/index.ts';
import { controlText } from '../../text/index.ts';
import { type Command, JSON_OPTION } from '../command.ts';
import { readSetup } from '../read-input.ts';
import { tableLines, toJson } from '../terminal.ts';

export const controls: Command = {
  name: 'controls',
  summary: 'every control by its address, and where it stands',
  operands: ['SETUP'],
  options: {
    moved: { type: 'boolean', help: 'only those that are off their defaults' },
    json: JSON_OPTION,
  },
  notes: ['The JSON also has the range, the options and the default of each.'],
  run: async (call) => {
    const { setup } = await readSetup(call.operands[0] ?? '', call.input);
    const standing = [...controlsOf(setup.rig).values()]
      .map((control) => ({ control, value: valueAt(setup, control.address) }))
      .filter(({ control, value }) => !call.flag('moved') || value !== control.default);
    if (call.flag('json')) {
      const data = standing.map(({ control, value }) => ({ ...control, value }));
      return { lines: toJson(data).split('\n') };
    }
    const rows = standing.map(({ control, value }) => [
      control.address,
      [control.ownerLabel, control.label].filter(Boolean).join(' '),
      controlText(control, value),
      value === control.default ? '' : `(default: ${controlText(control, control.default)})`,
    ]);
    return { lines: rows.length === 0 ? ['Every control is at its default.'] : tableLines(rows) };
  },
};
