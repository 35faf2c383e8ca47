import { nearestNames } from '../../../simulator/index.ts';
import { FORMAT_NAMES, jsonSchemaOf } from '../../formats/formats.ts';
import { ArgumentError } from '../argument-error.ts';
import type { Command } from '../command.ts';
import { toJson } from '../terminal.ts';

export const schema: Command = {
  name: 'schema',
  summary: `the JSON Schema of a format: ${FORMAT_NAMES.join(', ')}`,
  operands: ['FORMAT'],
  options: {},
  notes: ['It is made from the schema that reads such files.'],
  run: ({ operands: [name = ''] }) => {
    const format = FORMAT_NAMES.find((one) => one === name);
    if (!format) {
      throw new ArgumentError(
        'desk schema',
        `one of the formats ${FORMAT_NAMES.join(', ')}`,
        `"${name}"`,
        `Nearest: ${nearestNames(name, FORMAT_NAMES)[0]}.`,
      );
    }
    return { lines: toJson(jsonSchemaOf(format)).split('\n') };
  },
};
