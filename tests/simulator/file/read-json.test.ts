import fc from 'fast-check';
import { expect, test } from 'vitest';
import { InputError } from '../../../simulator/file/input-error.ts';
import { MAX_FILE_LENGTH, readDocument } from '../../../simulator/file/read-document.ts';
import { readJson } from '../../../simulator/file/read-json.ts';

const foundIn = (text: string): string | undefined => {
  try {
    readJson('f.json', text);
  } catch (error) {
    if (error instanceof InputError) return error.problems[0]?.found;
    throw error;
  }
  return undefined;
};

test.each([
  ['{', 'a text that is none'],
  ['a: 1', 'a text that is none'],
  ['{"a": 1, "b": {"c": 2, "c": 2}}', 'one that stands twice'],
  ['{"a": {"__proto__": {"b": 1}}}', 'the key __proto__'],
  ['{"constructor": 1}', 'the key constructor'],
  ['[{"prototype": 1}]', 'the key prototype'],
  ['{"a": [1, 1e999]}', 'Infinity'],
  [`${'['.repeat(30)}${']'.repeat(30)}`, 'deeper nesting'],
  [`${'['.repeat(100_000)}${']'.repeat(100_000)}`, 'deeper nesting'],
  [`"${'a'.repeat(MAX_FILE_LENGTH)}"`, `${MAX_FILE_LENGTH + 2}`],
])('readJson() refuses %.60s', (text, found) => {
  expect(foundIn(text)).toBe(found);
});

test('readJson() is not misled by colons and quotes in strings', () => {
  expect(readJson('f', '{"a:b\\":": ":\\"c\\": \\\\"}').data).toEqual({ 'a:b":': ':"c": \\' });
});

test('of any JSON both readers give the same data, or both refuse it', () => {
  const dataBy = (read: typeof readJson, text: string): unknown => {
    try {
      return { data: read('f', text).data };
    } catch (error) {
      if (error instanceof InputError) return 'refused';
      throw error;
    }
  };
  fc.assert(
    fc.property(fc.json({ maxDepth: 4 }), (text) => {
      expect(dataBy(readJson, text)).toEqual(dataBy(readDocument, text));
    }),
  );
});
