import * as fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { InputError, type Problem } from '../../../simulator/file/input-error.ts';
import { placeText } from '../../../simulator/file/place.ts';
import { MAX_FILE_LENGTH, readDocument } from '../../../simulator/file/read-document.ts';

// Properties take their time on a machine that is busy.
vi.setConfig({ testTimeout: 30_000 });

const dataOf = (text: string) => readDocument('file.yaml', text).data;

function problemsIn(text: string): readonly Problem[] {
  try {
    readDocument('file.yaml', text);
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  return [];
}

describe('readDocument() reads', () => {
  test.each<[string, unknown]>([
    ['a: 1.5\nb: [true, null]\nc: text', { a: 1.5, b: [true, null], c: 'text' }],
    ['{"a": 1.5, "b": [true, null], "c": "text"}', { a: 1.5, b: [true, null], c: 'text' }],
    ['a: -.inf\nb: .inf', { a: '-inf', b: 'inf' }],
    ['{"a": -1e999}', { a: '-inf' }],
    ['7: seven', { 7: 'seven' }],
    ['a: yes', { a: 'yes' }],
    ['', null],
    ['a: &here 4', { a: 4 }],
  ])('%j as plain data', (text, data) => {
    expect(dataOf(text)).toEqual(data);
  });

  test('a file of exactly the longest length', () => {
    const text = `a: ${'x'.repeat(MAX_FILE_LENGTH - 3)}`;
    expect(problemsIn(text)).toEqual([]);
  });

  test('lists of 24 levels', () => {
    expect(problemsIn('['.repeat(24) + ']'.repeat(24))).toEqual([]);
  });
});

describe('readDocument() refuses', () => {
  test.each<[what: string, text: string, place: string, line: number | undefined, found: RegExp]>([
    ['a list that does not end', 'a: 1\nb: [2', '', 2, /Flow sequence/],
    ['a tab as indentation', 'a:\n\tb: 1', '', 2, /Tabs/],
    ['a second document', 'a: 1\n---\nb: 2', '', 2, /^a second one$/],
    ['a directive', '%LOCAL\n---\na: 1', '', 1, /directive/],
    ['an alias', 'a: &one 1\nb:\n  c: *one', 'b.c', 3, /^the alias \*one$/],
    ['a tag of its own', 'a: 1\nb: !mine 2', '', 2, /tag/],
    ['a standard tag', 'a: 1\n\nb: !!str 2', 'b', 3, /^the tag .*str$/],
    ['a tagged map', 'a: !!map {b: 2}', 'a', 1, /^the tag .*map$/],
    ['binary data', 'a: !!binary aGk=', 'a', 1, /^the tag .*binary$/],
    ['a key a second time', 'a: 1\nb: 2\na: 3', '', 3, /^the key a a second time$/],
    [
      'a key a second time in JSON',
      '{"a": 1,\n"b": {"c": 2,\n"c": 3}}',
      'b',
      3,
      /^the key c a second/,
    ],
    ['a number and a text as the same key', '1: a\n"1": b', '', 2, /^the key 1 a second time$/],
    ['a number that is none', 'a:\n  - 1\n  - .nan', 'a[1]', 3, /^NaN$/],
    ['the key __proto__', 'a:\n  __proto__: 1', 'a', 2, /^the key __proto__$/],
    ['the key constructor', '{"constructor": {}}', '', 1, /^the key constructor$/],
    ['the key prototype', 'a: 1\nb:\n  - prototype: {c: 1}', 'b[0]', 3, /^the key prototype$/],
    ['a key that is a list', '? [a]\n: 1', '', 1, /^a key that is not text$/],
    [
      'lists of 26 levels',
      '['.repeat(26) + ']'.repeat(26),
      '[0]'.repeat(25),
      1,
      /^deeper nesting$/,
    ],
    [
      'maps of 26 levels',
      `${'{a: '.repeat(26)}1${'}'.repeat(26)}`,
      Array(25).fill('a').join('.'),
      1,
      /^deeper/,
    ],
    ['a file that is too long', 'x'.repeat(MAX_FILE_LENGTH + 1), '', undefined, /^262145$/],
  ])('%s', (_what, text, place, line, found) => {
    const [problem] = problemsIn(text);
    expect(problem).toMatchObject({ place, found: expect.stringMatching(found) });
    expect(problem?.line).toBe(line);
  });

  test.each([
    ['lists', '['.repeat(100_000)],
    ['maps', '{"a":'.repeat(50_000)],
    ['indented lists', '- '.repeat(100_000)],
    ['keys of keys', '? '.repeat(100_000)],
  ])('%s nested until the parser gives up, as too deep', (_what, text) => {
    expect(problemsIn(text)).toContainEqual(
      expect.objectContaining({ expected: 'at most 24 levels', found: 'deeper nesting' }),
    );
  });

  test('does not let "__proto__" reach the data or the prototype of anything', () => {
    expect(problemsIn('{"a": {"__proto__": {"polluted": true}}}')).toHaveLength(1);
    expect('polluted' in {}).toBe(false);
  });

  test('tens of thousands of keys in seconds, not minutes', { timeout: 20_000 }, () => {
    const text = Array.from({ length: 40_000 }, (_, index) => `k${index.toString(36)}:`).join('\n');
    expect(Object.keys(dataOf(text.slice(0, MAX_FILE_LENGTH)) as object).length).toBe(40_000);
  });

  test('anything that is not a document, and throws nothing but InputError', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: 'binary', maxLength: 60 }),
          fc.string({ unit: fc.constantFrom(...'{}[]:,-?&*!|>\'"%@`#\n\t ab1.~'), maxLength: 40 }),
          fc.json(),
        ),
        (text) => {
          try {
            readDocument('any', text);
          } catch (error) {
            expect(error).toBeInstanceOf(InputError);
          }
        },
      ),
      { seed: 31, numRuns: 1500 },
    );
  });

  test('fc.json() texts never: they read as JSON.parse() reads them', () => {
    fc.assert(
      fc.property(fc.json({ depthSize: 'small', noUnicodeString: true }), (text) => {
        const parsed = JSON.parse(text) as unknown;
        if (problemsIn(text).length > 0) {
          expect(text).toMatch(/"(__proto__|constructor|prototype)":/);
          return;
        }
        expect(JSON.stringify(dataOf(text))).toBe(JSON.stringify(parsed));
      }),
      { seed: 47, numRuns: 400 },
    );
  });
});

describe('lineOf()', () => {
  const { lineOf } = readDocument(
    'file.yaml',
    'first: 1\nsecond:\n  third:\n    - one\n    - fourth: 2\n      fifth:\n        sixth: 3\n8: eight\n',
  );
  test.each<[readonly (string | number)[], number]>([
    [['first'], 1],
    [['second'], 2],
    [['second', 'third'], 3],
    [['second', 'third', 0], 4],
    [['second', 'third', 1, 'fourth'], 5],
    [['second', 'third', 1, 'fifth'], 6],
    [['second', 'third', 1, 'fifth', 'sixth'], 7],
    [['second', 'third', 1, 'missing'], 5],
    [['second', 'missing', 'deeper'], 2],
    [['8'], 8],
    [[], 1],
  ])('of %j is %d, that of its key or of the nearest place around it', (place, line) => {
    expect(lineOf(place)).toBe(line);
  });
});

test.each<[readonly (string | number)[], string]>([
  [[], ''],
  [['rig', 'desk', 'strips', 2, 'id'], 'rig.desk.strips[2].id'],
  [['board', 'desk.ch1.in'], 'board["desk.ch1.in"]'],
])('placeText(%j) is %j', (place, text) => {
  expect(placeText(place)).toBe(text);
});
