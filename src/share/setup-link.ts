import type { Rig, Setup } from '../../simulator/index.ts';
import { pack, problem, unpack } from './packing.ts';
import { SETUP_FRAGMENT } from './setup-fragment.ts';
import { type Linked, setupOfText, setupText } from './setup-text.ts';

const VERSION = 1;
/** The most characters of a link that is opened or made. Longer ones do not survive every mail program. */
export const LONGEST_LINK = 8000;
const NAME = 'The link';

/**
 * A setup as the fragment of an address, with its `#`. Of a rig that the site has, only its id goes in.
 *
 * @param rig the rig of the page that the link leads to.
 * @throws InputError when it does not fit into {@link LONGEST_LINK} characters.
 */
export async function linkTo(setup: Setup, rig: Rig): Promise<string> {
  const link = `${SETUP_FRAGMENT}${VERSION}.${await pack(setupText(setup, rig))}`;
  if (link.length <= LONGEST_LINK) return link;
  const found = `one of ${link.length}, since it holds a rig of your own`;
  throw problem(NAME, `at most ${LONGEST_LINK} characters`, found, 'Save the setup as a file.');
}

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
  return setupOfText(NAME, await unpack(NAME, packed), rig);
}
