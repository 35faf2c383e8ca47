import fc from 'fast-check';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import {
  MOST_BYTES,
  MOST_FILES,
  MOST_IN_ARCHIVE,
  openFiles,
  spokenName,
} from '../../src/class/open-files.ts';

const dropped = (name: string, bytes: Uint8Array) => openFiles([{ name, bytes }]);
const reasons = ({ aside }: ReturnType<typeof openFiles>) =>
  aside.map(({ name, error }) => [name, error.problems[0]?.expected]);

describe('openFiles()', () => {
  test('a text is opened as it is, an archive file by file', () => {
    const archive = zipSync({
      'class/one.json': strToU8('{"a": 1}'),
      'class/two.json': strToU8('{"b": "é"}'),
      'class/': new Uint8Array(),
    });
    const { files, aside } = openFiles([
      { name: 'three.json', bytes: strToU8('{}') },
      { name: 'all.zip', bytes: archive },
    ]);
    expect(aside).toEqual([]);
    expect(files).toEqual([
      { name: 'three.json', text: '{}' },
      { name: 'one.json', text: '{"a": 1}' },
      { name: 'two.json', text: '{"b": "é"}' },
    ]);
  });

  test('a file that is too long is set aside, and the others of its archive are opened', () => {
    const archive = zipSync({
      'long.json': new Uint8Array(MOST_BYTES + 1),
      'short.json': strToU8('{}'),
    });
    const opened = dropped('all.zip', archive);
    expect(opened.files.map(({ name }) => name)).toEqual(['short.json']);
    expect(reasons(opened)).toEqual([['long.json', `at most ${MOST_BYTES} bytes`]]);
  });

  // A bomb: zeros pack to a thousandth. Five files of 16 MB each are 80 MB.
  test('an archive that grows without end is stopped before it does', () => {
    const zeros = new Uint8Array(16 * 1024 * 1024);
    const bomb = zipSync(
      Object.fromEntries(Array.from({ length: 5 }, (_, at) => [`${at}.json`, zeros])),
      { level: 1 },
    );
    const opened = dropped('bomb.zip', bomb);
    expect(opened.files).toEqual([]);
    expect(reasons(opened)).toContainEqual([
      'bomb.zip',
      `at most ${MOST_IN_ARCHIVE} bytes when it is unpacked`,
    ]);
  });

  test('more files than a class has are too many', () => {
    const many = zipSync(
      Object.fromEntries(
        Array.from({ length: MOST_FILES + 1 }, (_, at) => [`${at}.json`, strToU8('{}')]),
      ),
    );
    const opened = dropped('many.zip', many);
    expect(opened.files.length).toBeLessThanOrEqual(MOST_FILES);
    expect(reasons(opened)).toContainEqual(['many.zip', `at most ${MOST_FILES} files`]);
  });

  test('what is no text is said to be none', () => {
    const { aside } = dropped('x.json', new Uint8Array([0xff, 0xfe, 0xfd]));
    expect(aside[0]?.error.message).toContain('a text');
  });

  test('whatever the bytes, with or without the start of an archive, nothing is thrown or lost', () => {
    const start = fc.constantFrom([], [0x50, 0x4b, 3, 4]);
    fc.assert(
      fc.property(start, fc.uint8Array({ maxLength: 400 }), (head, rest) => {
        const { files, aside } = dropped('x', Uint8Array.from([...head, ...rest]));
        expect(files.length + aside.length).toBeGreaterThanOrEqual(1);
      }),
      { numRuns: 300 },
    );
  });

  test('an archive with some bytes changed gives files, reasons, or both', () => {
    const whole = zipSync({ 'one.json': strToU8('{"a": 1}'), 'two.json': strToU8('{"b": 2}') });
    fc.assert(
      fc.property(
        fc.nat({ max: whole.length - 1 }),
        fc.nat({ max: 255 }),
        fc.nat({ max: whole.length }),
        (at, byte, cut) => {
          const changed = whole.slice(0, Math.max(8, cut));
          if (at < changed.length) changed[at] = byte;
          const { files, aside } = dropped('x.zip', changed);
          expect(files.length + aside.length).toBeGreaterThanOrEqual(1);
        },
      ),
      { numRuns: 300 },
    );
  });
});

test.each([
  ['../../etc/name.json', 'name.json'],
  ['C:\\class\\name.json', 'name.json'],
  ['\u0000\u202Ename.json', 'name.json'],
  ['', 'a file without a name'],
  ['..//', '..'],
])('spokenName(%j) is %j', (path, name) => {
  expect(spokenName(path)).toBe(name);
});

test('spokenName() cuts what is longer than a screen', () => {
  expect(spokenName('x'.repeat(1_000_000)).length).toBe(121);
});
