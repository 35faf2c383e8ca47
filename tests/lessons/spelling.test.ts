import { expect, test } from 'vitest';
import { printed } from './printed.ts';
import { isInDictionary, misspelt, ownerIn, ownWords, wordsIn } from './spelling.ts';

/** The dictionary is that of British English in the format of Hunspell; “analog” is how the trade writes it. */
test('misspelt() finds words with a slip, and lets words of the trade, units, addresses and code be', () => {
  const text = 'The equaliser recieves −3 dBu at desk.ch3.fader; one’s `faderr` is half-normalled.';
  expect(misspelt(text)).toEqual(['recieves']);
});

const texts = printed();

test.each(texts)('$file is spelt as the dictionary has it', ({ text }) => {
  expect(misspelt(text)).toEqual([]);
});

test('our own words are in order, each in use, and in no dictionary', () => {
  const own = ownWords();
  const used = new Set(
    texts.flatMap(({ text }) => wordsIn(text).map((word) => ownerIn(word).toLowerCase())),
  );
  expect(own).toEqual([...new Set(own)].sort((one, other) => one.localeCompare(other, 'en')));
  expect(own.filter((word) => isInDictionary(word) || !used.has(word.toLowerCase()))).toEqual([]);
});
