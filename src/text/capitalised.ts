/** Words that stand first in a sentence: with a capital. */
export const capitalised = (words: string): string =>
  words.charAt(0).toUpperCase() + words.slice(1);
