/** A link of the site's main navigation. */
export interface NavigationLink {
  /** Address from the root, with a slash at both ends. */
  readonly href: string;
  readonly label: string;
}

/** The main navigation, in the order it is shown. Every address must be a page that is built. */
export const NAVIGATION: readonly NavigationLink[] = [
  { href: '/', label: 'Start' },
  { href: '/lessons/', label: 'Lessons' },
  { href: '/drills/', label: 'Drills' },
  { href: '/bench/', label: 'Bench' },
  { href: '/fault-hunt/', label: 'Fault hunt' },
  { href: '/progress/', label: 'Progress' },
  { href: '/glossary/', label: 'Glossary' },
  { href: '/teach/', label: 'Teach' },
];

/**
 * Whether a link leads to the page or to a page above it.
 *
 * `/lessons/` is current on `/lessons/` and on `/lessons/sends/`; `/` only on itself.
 */
export function isCurrent(link: NavigationLink, pathname: string): boolean {
  return link.href === '/' ? pathname === '/' : pathname.startsWith(link.href);
}
