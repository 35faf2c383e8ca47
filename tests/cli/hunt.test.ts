import { Readable } from 'node:stream';
import { expect, test } from 'vitest';
import { hunt as huntOf } from '../../simulator/index.ts';
import { runDesk } from '../../src/cli/run-desk.ts';
import { readCourse } from '../../src/course/index.ts';
import { HUNT_ROOM } from '../../src/share/hunt-link.ts';
import { complaintWords, faultText } from '../../src/text/index.ts';

const desk = (...args: readonly string[]) => runDesk(args, Readable.from(['']));
const rig = readCourse().rigs.get(HUNT_ROOM);
if (!rig) throw new Error('Expected the room of the hunts.');
const hunt = huntOf(rig, 3, 'k7x2');

test('hunt: the complaint, how many suspects, how many readings; not what it was', async () => {
  const { exitCode, stdout, stderr } = await desk('hunt', '3', 'k7x2');
  expect([exitCode, stderr]).toEqual([0, '']);
  expect(stdout).toContain(complaintWords(rig, hunt.complaint));
  expect(stdout).toContain(`${hunt.suspects.length} suspects fitted the complaint.`);
  expect(stdout).toContain(`fewer than ${hunt.best} readings`);
  expect(stdout.toLowerCase()).not.toContain(faultText(hunt.setup, hunt.fault).toLowerCase());
});

test('hunt --solve: all suspects, where to read first, and what it was', async () => {
  const { stdout } = await desk('hunt', '3', 'k7x2', '--solve');
  expect(stdout).toContain(`It was this: ${faultText(hunt.setup, hunt.fault)}.`);
  expect(stdout).toMatch(/^The first reading is best taken behind .+\.$/m);
  expect(stdout.match(/^ {2}/gm)).toHaveLength(hunt.suspects.length + 1);
});

test('hunt --json: figures alone, the fault only when it is asked for', async () => {
  const data = JSON.parse((await desk('hunt', '3', 'k7x2', '--json')).stdout);
  expect(data).toMatchObject({ suspects: hunt.suspects.length, best: hunt.best, isExact: true });
  expect(data.fault).toBeUndefined();
  const solved = JSON.parse((await desk('hunt', '3', 'k7x2', '--json', '--solve')).stdout);
  expect(solved.fault).toEqual(hunt.fault);
});

test('hunt: a level or a seed that there is not ends with code 2 and what was expected', async () => {
  const level = await desk('hunt', '6', 'a');
  expect([level.exitCode, level.stderr]).toEqual([
    2,
    'desk hunt: expected a level from 1 to 5, but found "6".\n',
  ]);
  expect((await desk('hunt', '1', 'A!')).stderr).toBe(
    'desk hunt: expected a seed of 1 to 12 of a-z and 0-9, but found "A!".\n',
  );
});
