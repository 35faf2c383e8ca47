import type * as z from 'zod/mini';
import { checkDocument, InputError } from '../../simulator/index.ts';

/** The data of a draft. @param of whose it is, for messages. @throws InputError for one that its task cannot have written. */
export function readDraft<T>(of: string, text: string, schema: z.ZodMiniType<T>): T {
  const file = `draft of ${of}`;
  return checkDocument({ file, data: parsed(file, text), lineOf: () => undefined }, schema);
}

function parsed(file: string, text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw new InputError(file, [{ place: '', expected: 'JSON', found: `"${text.slice(0, 40)}"` }]);
  }
}
