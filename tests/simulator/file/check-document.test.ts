import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { checkDocument } from '../../../simulator/file/check-document.ts';
import { InputError, type Problem } from '../../../simulator/file/input-error.ts';
import { readDocument } from '../../../simulator/file/read-document.ts';

const schema = z.strictObject({
  name: z.string().check(z.minLength(2), z.maxLength(5)),
  count: z._default(z.int().check(z.gte(1), z.lt(10)), 4),
  kinds: z.optional(z.array(z.enum(['warm', 'cold'])).check(z.maxLength(3))),
  slug: z.optional(z.string().check(z.regex(/^[a-z-]+$/))),
  on: z.optional(z.boolean()),
  table: z.optional(z.record(z.string().check(z.maxLength(6)), z.union([z.number(), z.boolean()]))),
  shape: z.optional(
    z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('round'), radius: z.number() }),
      z.strictObject({ kind: z.literal('square'), side: z.number() }),
    ]),
  ),
});

function problemsIn(text: string): readonly Problem[] {
  try {
    checkDocument(readDocument('file.yaml', text), schema);
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  return [];
}

test('checkDocument() gives the data with its defaults: count 4', () => {
  expect(checkDocument(readDocument('f', 'name: abc'), schema)).toEqual({ name: 'abc', count: 4 });
});

describe('checkDocument() says place, line, what was expected and what was found', () => {
  test.each<[string, string, number, string, string]>([
    ['count: 2', 'name', 1, 'text', 'nothing'],
    ['name: 3', 'name', 1, 'text', '3'],
    ['name:', 'name', 1, 'text', 'an empty value'],
    ['name: a', 'name', 1, 'at least 2 characters', '"a"'],
    ['\nname: abcdef', 'name', 2, 'at most 5 characters', '"abcdef"'],
    ['name: abc\ncount: 2.5', 'count', 2, 'a whole number', '2.5'],
    ['name: abc\ncount: 0', 'count', 2, 'at least 1', '0'],
    ['name: abc\ncount: 10', 'count', 2, 'less than 10', '10'],
    ['name: abc\ncount: .inf', 'count', 2, 'a number', '"inf"'],
    ['name: abc\nkinds: warm', 'kinds', 2, 'a list', '"warm"'],
    ['name: abc\nkinds:\n  - warm\n  - hot', 'kinds[1]', 4, 'one of warm, cold', '"hot"'],
    ['name: abc\nkinds: [warm, cold, warm, cold]', 'kinds', 2, 'at most 3 entries', 'a list of 4'],
    ['name: abc\nslug: A B', 'slug', 2, 'lower-case letters, digits and hyphens', '"A B"'],
    ['name: abc\non: 1', 'on', 2, 'true or false', '1'],
    ['name: abc\nextra:\n  a: 1', 'extra', 2, 'a key of the format', 'the unknown key extra'],
    ['name: abc\ntable: [1]', 'table', 2, 'a map of keys', 'a list of 1'],
    [
      'name: abc\ntable:\n  longest: 1',
      'table.longest',
      3,
      'at most 6 characters',
      'a key of 7 characters',
    ],
    ['name: abc\nshape:\n  kind: flat', 'shape.kind', 3, 'one of round, square', '"flat"'],
    ['name: abc\nshape:\n  kind: round', 'shape.radius', 2, 'a number', 'nothing'],
    ['- 1', '', 1, 'a map of keys', 'a list of 1'],
  ])('%j', (text, place, line, expected, found) => {
    const [problem] = problemsIn(text);
    expect(problem).toMatchObject({ place, line, expected, found });
  });

  test('and lists every problem, not only the first: two keys, one value', () => {
    expect(problemsIn('name: a\none: 1\ntwo: 2').map(({ place }) => place)).toEqual([
      'name',
      'one',
      'two',
    ]);
  });

  test('and shortens what is long: 57 characters and an ellipsis', () => {
    const [problem] = problemsIn(`name: ${'y'.repeat(90)}`);
    expect(problem?.found).toBe(`"${'y'.repeat(56)}…`);
  });
});
