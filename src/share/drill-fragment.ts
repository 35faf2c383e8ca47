/** How the fragment of an address begins that holds a drill. */
export const DRILL_FRAGMENT = '#drill=';
