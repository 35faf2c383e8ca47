/** How the fragment of an address begins that holds a drill. */
export const DRILL_FRAGMENT = '#drill=';

/** How one begins that asks for a new drill of a concept and a level: `#new-drill=insert-or-send.2`. */
export const NEW_DRILL_FRAGMENT = '#new-drill=';
