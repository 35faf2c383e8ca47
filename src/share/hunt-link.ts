import { HUNT_LEVELS, InputError, SEED } from '../../simulator/index.ts';

/** What the fragment of an address begins with that names a hunt. */
export const HUNT_FRAGMENT = '#hunt=';

/** How one begins that asks for a new hunt of a level: `#new-hunt=3`. */
export const NEW_HUNT_FRAGMENT = '#new-hunt=';

/** Id of the room that hunts go on in: an address names a hunt of this one. */
export const HUNT_ROOM = 'net-loft';

/** Which hunt of a room. */
export interface HuntChoice {
  /** From 1. */
  readonly level: number;
  readonly seed: string;
}

const VERSION = 1;
const LONGEST = 40;

/** A hunt as the fragment of an address: `#hunt=1.3.k7x2`. */
export const huntLink = ({ level, seed }: HuntChoice): string =>
  `${HUNT_FRAGMENT}${VERSION}.${level}.${seed}`;

/**
 * Reads the fragment of an address that names a hunt.
 *
 * @param fragment one that begins with {@link HUNT_FRAGMENT}.
 * @throws InputError when it is damaged, or names a level or seed that there is not.
 */
export function huntOfLink(fragment: string): HuntChoice {
  const [version = '', level = '', seed = '', ...more] = fragment
    .slice(HUNT_FRAGMENT.length, HUNT_FRAGMENT.length + LONGEST)
    .split('.');
  if (fragment.length > LONGEST || more.length > 0 || seed === '') {
    const found =
      fragment.length > LONGEST ? `${fragment.length} characters` : 'one that is damaged';
    throw problem('a version, a level and a seed', found, 'Copy all of it, to its last letter.');
  }
  if (version !== `${VERSION}`) {
    const hint = 'Load this page anew, and open the link again.';
    throw problem(`version ${VERSION}`, `version "${version}"`, hint);
  }
  if (!/^[1-9]$/.test(level) || Number(level) > HUNT_LEVELS.length) {
    throw problem(`a level from 1 to ${HUNT_LEVELS.length}`, `"${level}"`, 'Choose a level.');
  }
  if (!SEED.test(seed)) {
    throw problem('a seed of 1 to 12 of a-z and 0-9', `"${seed}"`, 'Begin a new hunt.');
  }
  return { level: Number(level), seed };
}

const problem = (expected: string, found: string, hint: string): InputError =>
  new InputError('The link', [{ place: '', expected, found, hint }]);
