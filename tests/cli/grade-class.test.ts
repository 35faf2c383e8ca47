import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { assignmentText } from '../../src/class/assignment.ts';
import { assignmentLink } from '../../src/class/assignment-link.ts';
import { runDesk } from '../../src/cli/run-desk.ts';
import { ASSIGNMENT, filesOf, handInOf } from '../class/a-class.ts';

const folder = mkdtempSync(join(tmpdir(), 'grade-class-'));
const at = (name: string) => join(folder, name);
const told: string[] = [];
const gradeClass = (...args: readonly string[]) =>
  runDesk(['grade-class', ...args], Readable.from(['']), (line) => told.push(line));

const ALL = ASSIGNMENT.items.map(({ id }) => id);
const HAND_INS = [handInOf('ada', ALL), { ...handInOf('bo', ['insert']), name: '=1+1' }];

beforeAll(() => {
  writeFileSync(at('assignment.json'), assignmentText(ASSIGNMENT));
  for (const { name, bytes } of filesOf(HAND_INS)) writeFileSync(at(name), bytes);
  writeFileSync(at('broken.json'), '{"format": "tap-and-sum/hand-in"');
});
afterAll(() => rmSync(folder, { recursive: true }));

test('marks what can be read: a row each, 0, and how far it is', async () => {
  told.length = 0;
  const { exitCode, stdout, stderr } = await gradeClass(
    at('assignment.json'),
    at('ada.json'),
    at('bo.json'),
  );
  expect([exitCode, stderr]).toEqual([0, '']);
  expect(stdout).toMatch(/^ada +100 % +Passed$/m);
  expect(stdout).toMatch(/^bo +=1\+1 +\d+ % +Not yet$/m);
  expect(told).toEqual(['Marked 1 of 2.', 'Marked 2 of 2.']);
});

test('3 when a file was set aside: it is named with the reason, and the rest is marked', async () => {
  const { exitCode, stdout } = await gradeClass(
    at('assignment.json'),
    at('nowhere.json'),
    at('broken.json'),
    folder,
    at('ada.json'),
  );
  expect(exitCode).toBe(3);
  expect(stdout).toMatch(/^ada /m);
  expect(stdout).toMatch(/nowhere\.json: expected a file that can be read, but found no such file/);
  expect(stdout).toMatch(/broken\.json: expected well-formed JSON/);
  expect(stdout).toMatch(/but found a folder/);
});

test('writes CSV and JSON, and nothing over a file that exists', async () => {
  const [csv, json] = [at('marks.csv'), at('marks.json')];
  const args = [at('assignment.json'), at('ada.json'), at('bo.json'), '--csv', csv, '--json', json];
  expect((await gradeClass(...args, '--depth', 'item')).exitCode).toBe(0);
  const rows = readFileSync(csv, 'utf8').trimEnd().split('\r\n');
  expect(rows.length).toBe(1 + 2 * ASSIGNMENT.items.length);
  expect(rows.at(-1)).toContain(",'=1+1,");
  const book = JSON.parse(readFileSync(json, 'utf8'));
  expect(book.rows.map(({ learner }: { learner: string }) => learner)).toEqual(['ada', 'bo']);
  expect(book.analysis).toEqual({ learners: 2, fewest: 20 });

  const again = await gradeClass(...args);
  expect(again.exitCode).toBe(2);
  expect(again.stderr).toContain('expected a new name after --csv');
});

test('takes the link of an assignment in place of its file', async () => {
  const link = `https://example.org/assignment/${await assignmentLink(ASSIGNMENT)}`;
  expect((await gradeClass(link, at('ada.json'))).stdout).toMatch(/^ada +100 %/m);
});

test.each([
  [['assignment.json'], 'expected FILES..., but found nothing'],
  [['assignment.json', 'ada.json', '--depth', 'atom'], 'a depth of learner, item, check'],
  [['ada.json', 'ada.json'], 'as an assignment has it, but found "tap-and-sum/hand-in"'],
])('2 and a reason: %j', async (names, reason) => {
  const { exitCode, stderr } = await gradeClass(
    ...names.map((name) => (name.endsWith('.json') ? at(name) : name)),
  );
  expect(exitCode).toBe(2);
  expect(stderr).toContain(reason);
});
