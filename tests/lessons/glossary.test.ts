import { describe, expect, test } from 'vitest';
import { GLOSSARY, glossary, lessons, repeated, SOURCES, sources } from './the-course.ts';

const words = glossary.map(({ id }) => id);

describe(GLOSSARY, () => {
  test('each id and each term stands once', () => {
    expect(repeated(words)).toEqual([]);
    expect(repeated(glossary.map(({ term }) => term.toLowerCase()))).toEqual([]);
  });

  test('it is in the order of its terms, without “the”', () => {
    const terms = glossary.map(({ term }) => term.replace(/^the /, '').toLowerCase());
    expect(terms).toEqual(terms.toSorted((a, b) => a.localeCompare(b, 'en')));
  });

  test('see leads to other words, each once', () => {
    const stray = glossary.flatMap(({ id, see }) =>
      see
        .filter((other) => other === id || !words.includes(other))
        .concat(repeated(see))
        .map((other) => `${id}: ${other}`),
    );
    expect(stray).toEqual([]);
  });

  test('each word is used by a lesson, or another word leads to it', () => {
    const used = new Set([
      ...glossary.flatMap(({ see }) => see),
      ...lessons.flatMap(({ components }) =>
        components.filter(({ name }) => name === 'Term').map(({ props }) => String(props['id'])),
      ),
    ]);
    expect(words.filter((id) => !used.has(id))).toEqual([]);
  });
});

describe(SOURCES, () => {
  test('each id and each title stands once', () => {
    expect(repeated(sources.map(({ id }) => id))).toEqual([]);
    expect(repeated(sources.map(({ title }) => title))).toEqual([]);
  });
});
