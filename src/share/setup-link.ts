import type { Rig, Setup } from '../../simulator/index.ts';
import { type PackedLink, packLink, unpackLink } from './packed-link.ts';
import { SETUP_FRAGMENT } from './setup-fragment.ts';
import { type Linked, setupOfText, setupText } from './setup-text.ts';

const SETUP_LINK: PackedLink = {
  fragment: SETUP_FRAGMENT,
  version: 1,
  holds: 'setup',
  tooLongSince: 'a rig of your own',
};

/**
 * A setup as the fragment of an address, with its `#`. Of a rig that the site has, only its id goes in.
 *
 * @param rig the rig of the page that the link leads to.
 * @throws InputError when it is too long for a link.
 */
export const linkTo = (setup: Setup, rig: Rig): Promise<string> =>
  packLink(SETUP_LINK, setupText(setup, rig));

/**
 * Reads the fragment of an address that holds a setup.
 *
 * @param fragment one that begins with {@link SETUP_FRAGMENT}.
 * @param rig the rig of the page.
 * @throws InputError when it is too long, damaged, from a newer version, or does not fit its rig.
 */
export const setupOfLink = async (fragment: string, rig: Rig): Promise<Linked> =>
  setupOfText('The link', await unpackLink(SETUP_LINK, fragment), rig);
