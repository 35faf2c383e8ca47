/** What the fragment of an address begins with that holds a setup. It stands apart so that a page can look for it before it fetches what reads one. */
export const SETUP_FRAGMENT = '#setup=';
