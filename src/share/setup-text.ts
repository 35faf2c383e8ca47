import * as z from 'zod/mini';
import {
  boardOf,
  checkDocument,
  fileBoardSchema,
  parseSetup,
  type Rig,
  readDocument,
  type Setup,
  setupData,
} from '../../simulator/index.ts';

/** What is written down of a setup: where the controls of a rig of the site stand, or a whole setup file. */
const textSchema = z.union([
  z.strictObject({ rig: z.string(), board: fileBoardSchema }),
  z.strictObject({ file: z.unknown() }),
]);

/** What such a text holds: a setup, or one for another rig of the site than the page has. */
export type Linked = { readonly setup: Setup } | { readonly otherRig: string };

/**
 * A setup as JSON. Of a rig that the site has, only its id goes in.
 *
 * @param rig the rig of the page that it is for.
 */
export function setupText(setup: Setup, rig: Rig): string {
  const file = setupData(setup);
  return JSON.stringify(setup.rig === rig ? { rig: rig.id, board: file.board ?? {} } : { file });
}

/**
 * Reads what {@link setupText} wrote.
 *
 * @param name what is read, as errors call it. @param rig the rig of the page.
 * @throws InputError when it does not fit its rig.
 */
export function setupOfText(name: string, text: string, rig: Rig): Linked {
  const linked = checkDocument(readDocument(name, text), textSchema);
  if ('file' in linked) return { setup: parseSetup(name, JSON.stringify(linked.file)) };
  if (linked.rig !== rig.id) return { otherRig: linked.rig };
  return { setup: { rig, board: boardOf(name, rig, linked.board) } };
}
