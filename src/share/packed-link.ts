import { pack, problem, unpack } from './packing.ts';

/** The most characters of a link that is opened or made. Longer ones do not survive every mail program. */
export const LONGEST_LINK = 8000;
const NAME = 'The link';

/** A kind of link that holds a text: `#setup=1.` and the text, packed. */
export interface PackedLink {
  /** What the fragment of an address begins with that is such a link: `#setup=`. */
  readonly fragment: string;
  readonly version: number;
  /** What it holds, in a word: `setup`. */
  readonly holds: string;
  /** Why one would be too long. */
  readonly tooLongSince: string;
}

/**
 * A text as the fragment of an address, with its `#`.
 *
 * @throws InputError when it does not fit into {@link LONGEST_LINK} characters.
 */
export async function packLink(kind: PackedLink, text: string): Promise<string> {
  const link = `${kind.fragment}${kind.version}.${await pack(text)}`;
  if (link.length <= LONGEST_LINK) return link;
  const found = `one of ${link.length}, since it holds ${kind.tooLongSince}`;
  const expected = `at most ${LONGEST_LINK} characters`;
  throw problem(NAME, expected, found, `Save the ${kind.holds} as a file.`);
}

/**
 * The text that a link holds.
 *
 * @param link a fragment that begins with that of its kind.
 * @throws InputError when it is too long, damaged, or of another version.
 */
export async function unpackLink(kind: PackedLink, link: string): Promise<string> {
  if (link.length > LONGEST_LINK) {
    const expected = `at most ${LONGEST_LINK} characters`;
    throw problem(NAME, expected, `${link.length}`, `Ask for the ${kind.holds} as a file.`);
  }
  const [, version, packed] = /^(\d{1,6})\.(.*)$/s.exec(link.slice(kind.fragment.length)) ?? [];
  if (version === undefined || packed === undefined) {
    const hint = 'Copy all of it, to its last letter.';
    throw problem(NAME, 'a whole link', 'one that is damaged', hint);
  }
  if (Number(version) !== kind.version) {
    const hint = 'Load this page anew, and open the link again.';
    throw problem(NAME, `version ${kind.version}`, `version ${version}`, hint);
  }
  return unpack(NAME, packed);
}
