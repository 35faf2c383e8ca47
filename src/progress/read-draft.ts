import type * as z from 'zod/mini';
import { checkDocument, InputError } from '../../simulator/index.ts';

/** The data of a draft, in a shape. @throws InputError like {@link draftData}, and for any other shape. */
export const readDraft = <T>(of: string, text: string, schema: z.ZodMiniType<T>): T =>
  checkDocument(
    { file: draftName(of), data: draftData(of, text), lineOf: () => undefined },
    schema,
  );

/** What a draft is called in messages. @param of whose it is. */
export const draftName = (of: string): string => `draft of ${of}`;

/** The data of a draft, of whatever shape. @throws InputError where it is no JSON. */
export function draftData(of: string, text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    const found = `"${text.slice(0, 40)}"`;
    throw new InputError(draftName(of), [{ place: '', expected: 'JSON', found }]);
  }
}
