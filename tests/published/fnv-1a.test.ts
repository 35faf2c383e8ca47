import { expect, test } from 'vitest';
import { digestOf } from '../../src/course/digest.ts';

// Source: test vectors for FNV-1a with 64 bits, Internet-Draft draft-eastlake-fnv, appendix C.
test.each([
  ['', 'cbf29ce484222325'],
  ['a', 'af63dc4c8601ec8c'],
  ['foobar', '85944171f73967e8'],
])('digestOf(%j) is %s', (text, digest) => {
  expect(digestOf(text)).toBe(digest);
});
