/** A place to write into, on paper. */
export const BLANK = '________________';
