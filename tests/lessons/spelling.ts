import { readFileSync } from 'node:fs';
import dictionary from 'dictionary-en-gb';
import nspell from 'nspell';

/** Words of the trade, and our own, that the dictionary has not: one a line. */
const OWN_WORDS = 'tests/lessons/own-words.txt';

/** Letters, and what an apostrophe holds together. Parts of `half-normal` are looked up by themselves. */
const WORD = /\p{L}+(?:'\p{L}+)*/gu;
/** No words of a language: code, links, addresses and files, names with digits or in one piece with signs. */
const NOT_WORDS =
  /`[^`]*`|https?:\S+|[\w*-]+(?:[./_*][\w*-]+)+|[\p{L}\d]*\d[\p{L}\d]*|&\w+;|\B#\S+/gu;

/** The list of our own words, in its order. */
export const ownWords = (): string[] => readFileSync(OWN_WORDS, 'utf8').split('\n').filter(Boolean);

const speller = nspell(Buffer.from(dictionary.aff), Buffer.from(dictionary.dic));
/** What the dictionary has by itself. */
export const isInDictionary = (word: string): boolean => speller.correct(word);

const known = new Set(ownWords());
const isOwn = (word: string): boolean => known.has(word) || known.has(word.toLowerCase());
const isKnown = (word: string): boolean => isInDictionary(word) || isOwn(word);
/** Of a word with an apostrophe and an s, the word that has something. */
export const ownerIn = (word: string): string => word.replace(/'s$/, '');

/** All words in a text, each once. */
export const wordsIn = (text: string): string[] => [
  ...new Set(text.replaceAll('’', "'").replace(NOT_WORDS, ' ').match(WORD) ?? []),
];

/** Words in a text that neither the dictionary nor our own list has. */
export const misspelt = (text: string): string[] =>
  wordsIn(text).filter((word) => !isKnown(word) && !isKnown(ownerIn(word)));
