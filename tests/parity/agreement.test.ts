import { globSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Agreement } from '../../src/course/index.ts';
import { AGREEMENT_FOLDER, faultsOf, RUNS, stated } from './agreement.ts';

const SAID: Agreement = {
  engine: 'an abacus',
  compares: 'levels',
  rigs: 30,
  looped: 4,
  undecided: 1,
  comparisons: 900,
  worstDb: 5e-6,
  allowedDb: 1e-4,
};

test('each run has a file, and each file a run', () => {
  const files = globSync(`${AGREEMENT_FOLDER}/*.yaml`).map((file) => file.replaceAll('\\', '/'));
  expect(files.sort()).toEqual(
    Object.keys(RUNS)
      .map((id) => `${AGREEMENT_FOLDER}/${id}.yaml`)
      .sort(),
  );
});

describe('faultsOf()', () => {
  test('a file that says what was run, and an error no smaller, has no fault', () => {
    expect(faultsOf(SAID, { ...SAID, worstDb: 2e-6 }, 1.3e-6)).toEqual([]);
  });

  test.each([
    ['no file', undefined, SAID, 1e-6, /does not exist/],
    ['fewer rigs than were run', SAID, { ...SAID, rigs: 31 }, 1e-6, /rigs 30.*had 31/],
    ['more rigs than were run', SAID, { ...SAID, rigs: 29 }, 1e-6, /rigs 30.*had 29/],
    ['another tolerance', SAID, { ...SAID, allowedDb: 0.01 }, 1e-6, /allowedDb/],
    ['a smaller error than was measured', SAID, SAID, 6e-6, /0.000005 dB at worst.*0.000006/],
  ])('%s is a fault', (_what, said, measured, worstDb, fault) => {
    expect(faultsOf(said, measured, worstDb)).toEqual([expect.stringMatching(fault)]);
  });
});

test.each([
  [0, 1e-9],
  [3.6e-14, 1e-9],
  [2.7e-6, 3e-6],
  [5e-6, 5e-6],
  [5.2e-3, 0.006],
  [9.3e-5, 1e-4],
  [1.01e-3, 2e-3],
])('stated(%f) is %f dB', (error, said) => {
  expect(stated(error)).toBe(said);
});
