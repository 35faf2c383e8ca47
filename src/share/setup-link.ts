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
import { pack, problem, unpack } from './packing.ts';
import { SETUP_FRAGMENT } from './setup-fragment.ts';

const VERSION = 1;
/** The most characters of a link that is opened or made. Longer ones do not survive every mail program. */
export const LONGEST_LINK = 8000;
const NAME = 'The link';

/** What stands in a link: where the controls of a rig of the site stand, or a whole setup file. */
const linkSchema = z.union([
  z.strictObject({ rig: z.string(), board: fileBoardSchema }),
  z.strictObject({ file: z.unknown() }),
]);

/**
 * A setup as the fragment of an address, with its `#`. Of a rig that the site has, only its id goes in.
 *
 * @param rig the rig of the page that the link leads to.
 * @throws InputError when it does not fit into {@link LONGEST_LINK} characters.
 */
export async function linkTo(setup: Setup, rig: Rig): Promise<string> {
  const file = setupData(setup);
  const linked = setup.rig === rig ? { rig: rig.id, board: file.board ?? {} } : { file };
  const link = `${SETUP_FRAGMENT}${VERSION}.${await pack(JSON.stringify(linked))}`;
  if (link.length <= LONGEST_LINK) return link;
  const found = `one of ${link.length}, since it holds a rig of your own`;
  throw problem(NAME, `at most ${LONGEST_LINK} characters`, found, 'Save the setup as a file.');
}

/** What a link holds: a setup, or one for another rig of the site than the page has. */
export type Linked = { readonly setup: Setup } | { readonly otherRig: string };

/**
 * Reads the fragment of an address that holds a setup.
 *
 * @param fragment one that begins with {@link SETUP_FRAGMENT}.
 * @param rig the rig of the page.
 * @throws InputError when it is too long, damaged, from a newer version, or does not fit its rig.
 */
export async function setupOfLink(fragment: string, rig: Rig): Promise<Linked> {
  if (fragment.length > LONGEST_LINK) {
    const expected = `at most ${LONGEST_LINK} characters`;
    throw problem(NAME, expected, `${fragment.length}`, 'Ask for the setup as a file.');
  }
  const [, version, packed] =
    /^(\d{1,6})\.(.*)$/s.exec(fragment.slice(SETUP_FRAGMENT.length)) ?? [];
  if (version === undefined || packed === undefined) {
    throw problem(
      NAME,
      'a whole link',
      'one that is damaged',
      'Copy all of it, to its last letter.',
    );
  }
  if (Number(version) !== VERSION) {
    const hint = 'Load this page anew, and open the link again.';
    throw problem(NAME, `version ${VERSION}`, `version ${version}`, hint);
  }
  const text = await unpack(NAME, packed);
  const linked = checkDocument(readDocument(NAME, text), linkSchema);
  if ('file' in linked) return { setup: parseSetup(NAME, JSON.stringify(linked.file)) };
  if (linked.rig !== rig.id) return { otherRig: linked.rig };
  return { setup: { rig, board: boardOf(NAME, rig, linked.board) } };
}
