import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, test } from 'vitest';
import { type Board, parseRig, type Rig, setupData } from '../../simulator/index.ts';
import { runDesk } from '../../src/cli/run-desk.ts';
import { readCourse } from '../../src/course/index.ts';

const DESK = fileURLToPath(new URL('../../src/cli/desk.ts', import.meta.url));
const RIG_FILE = fileURLToPath(new URL('../../lessons/rigs/net-loft.yaml', import.meta.url));
const netLoft = parseRig('net-loft.yaml', readFileSync(RIG_FILE, 'utf8'));
const folder = mkdtempSync(join(tmpdir(), 'desk-'));

afterAll(() => rmSync(folder, { recursive: true }));

/** Runs the command line, with a text on standard input. */
const desk = (args: readonly string[], input = '') => runDesk(args, Readable.from([input]));

/** The same as a process of its own. */
function spawnDesk(args: readonly string[], input: string) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [DESK, ...args], {
    input,
    encoding: 'utf8',
  });
  return { exitCode: status, stdout, stderr };
}

const setupText = (board: Board = {}, rig: Rig = netLoft): string =>
  JSON.stringify(setupData({ rig, board }), null, 2);

function fileWith(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

test('run as a process: output and exit code of a verdict, of bad input, and of a table', () => {
  const scenario = readCourse().scenarios.get('tenor-in-line');
  if (!scenario) throw new Error('Expected the scenario tenor-in-line.');
  const failed = spawnDesk(['grade', scenario.id, '-'], setupText(scenario.start));
  expect([failed.exitCode, failed.stderr]).toEqual([1, '']);
  expect(failed.stdout).toMatch(/^Not yet: \d+ of \d+ points\.$/m);
  const refused = spawnDesk(['levels', '-'], 'rig: 3');
  expect([refused.exitCode, refused.stdout]).toEqual([2, '']);
  expect(refused.stderr).toMatch(
    /^standard input:1 at rig: expected a map of keys, but found 3\.$/m,
  );
  expect(spawnDesk(['controls', '-'], setupText()).exitCode).toBe(0);
});

test('levels: a table of every source at every output, silence as −∞', async () => {
  const { exitCode, stdout, stderr } = await desk(['levels', fileWith('room.json', setupText())]);
  expect([exitCode, stderr]).toEqual([0, '']);
  const cello = stdout.split('\n').find((line) => line.startsWith('Cello'));
  expect(cello?.split(/\s+/)).toEqual(['Cello', '+3.0', '−∞', '−∞']);
});

test('levels --json: silence is "-inf", a level below a send of −6 dB is 3 − 6 = −3 dBu', async () => {
  const { stdout } = await desk(
    ['levels', '-', '--json', '--at', 'headphones-a'],
    setupText({ 'desk.ch3.aux1': -6 }),
  );
  const { places, loops } = JSON.parse(stdout);
  expect(places).toHaveLength(1);
  expect(places[0].place).toBe('out.headphones-a');
  expect(places[0].sources.cello).toBeCloseTo(-3, 9);
  expect(places[0].sources.tenor).toBe('-inf');
  expect(loops).toEqual([]);
});

test('levels: an unstable loop is named, and what it reaches is unknown, null in JSON', async () => {
  const howling = setupText({ 'desk.ret1.aux3': 0, 'desk.ch3.aux3': 0 });
  const { exitCode, stdout } = await desk(['levels', '-'], howling);
  expect(exitCode).toBe(0);
  expect(stdout).toMatch(/Together +unknown/);
  expect(stdout).toMatch(/feed one another in a loop/);
  const data = JSON.parse((await desk(['levels', '-', '--json'], howling)).stdout);
  expect(data.places[0].total).toBeNull();
  expect(data.loops[0].stable).toBe(false);
});

test('levels --noise --headroom: two rows more, where the noise comes from, and what clips first', async () => {
  const { exitCode, stdout } = await desk(['levels', '-', '--noise', '--headroom'], setupText());
  expect(exitCode).toBe(0);
  expect(stdout).toMatch(/^Noise +−\d+\.\d +−\d+\.\d +−\d+\.\d$/m);
  expect(stdout).toMatch(/^Headroom, dB +\d+\.\d +∞ +∞$/m);
  expect(stdout).toMatch(/^The noise in Headphones A is .+ from the sum of Aux 1/m);
  expect(stdout).toMatch(/^First to clip is /m);
  expect((await desk(['levels', '-'], setupText())).stdout).not.toMatch(/Noise|Headroom|clip/);
});

test('levels --headroom: a sum of the box above full scale clips at the converter, in words and as JSON', async () => {
  const loud = setupText({ 'box.tenor.to': 'out3', 'box.tenor.fader': 10, 'box.cello.fader': 10 });
  const { stdout } = await desk(['levels', '-', '--headroom'], loud);
  expect(stdout).toMatch(/^Output 3 clips: /m);
  const data = JSON.parse((await desk(['levels', '-', '--headroom', '--json'], loud)).stdout);
  expect(data.firstToClip).toMatchObject({ stage: 'converter.out3', clip: 22 });
  // Tenor 2 and cello 3 dBu, 10 dB up each, and 12 dB of crest.
  expect(data.firstToClip.headroom).toBeCloseTo(
    22 - 22 - 10 * Math.log10(10 ** 0.2 + 10 ** 0.3),
    9,
  );
  expect(data.clipping[0]).toEqual(data.firstToClip);
  expect(data.places[1]).toMatchObject({
    place: 'out.headphones-a',
    headroom: { headroom: 'inf' },
  });
  expect(data.places[0].noise).toBeUndefined();
});

test('levels --noise --json --at: level and shares of one place, whose parts make the whole', async () => {
  const args = ['levels', '-', '--noise', '--json', '--at', 'desk.aux2.sum'];
  const { noise } = JSON.parse((await desk(args, setupText())).stdout).places[0];
  expect(noise.shares[0].place).toBe('desk.aux2.sum');
  const power = noise.shares.reduce(
    (sum: number, { level }: { level: number }) => sum + 10 ** (level / 10),
    0,
  );
  expect(10 * Math.log10(power)).toBeCloseTo(noise.level, 9);
});

test('levels --all --noise --headroom: a column for each, a dash where nothing can clip', async () => {
  const args = ['levels', '-', '--all', '--noise', '--headroom'];
  const lines = (await desk(args, setupText())).stdout.split('\n');
  const [head = '', ...rows] = lines.map((line) => line.split(/ {2,}/));
  expect(head.slice(0, 4)).toEqual(['dBu', 'Together', 'Noise', 'Headroom, dB']);
  expect(rows.find(([place]) => place === 'desk.ch3.pan.l')?.[3]).toBe('–');
  // Cello: 22 − (3 + 12).
  expect(rows.find(([place]) => place === 'converter.out3')?.slice(1, 4)).toEqual([
    '+3.0',
    '−96.0',
    '7.0',
  ]);
});

test('paths: the ways, or where the source stops', async () => {
  const args = ['paths', '-', '--source', 'cello', '--output', 'capture'];
  const data = JSON.parse((await desk([...args, '--json'], setupText())).stdout);
  expect(data.ways.map(({ steps }: { steps: { place: string }[] }) => steps[0]?.place)).toEqual([
    'box.cello.source',
  ]);
  expect((await desk(args, setupText({ 'desk.ch3.mute': true }))).stdout).toBe(
    'Cello does not reach Capture: the mute of Strip 3 Cello is on.\n',
  );
});

test('grade: 0 for a solution, 1 for the start, by id of the course', async () => {
  const scenario = readCourse().scenarios.get('tenor-in-line');
  if (!scenario) throw new Error('Expected the scenario tenor-in-line.');
  const passed = await desk(['grade', scenario.id, '-', '--json'], setupText(scenario.solution));
  expect(passed.exitCode).toBe(0);
  expect(JSON.parse(passed.stdout)).toMatchObject({ scenario: scenario.id, passed: true });
  const failed = await desk(['grade', scenario.id, '-'], setupText(scenario.start));
  expect(failed.exitCode).toBe(1);
  expect(failed.stdout).toMatch(/^Not yet: Every way of Tenor/m);
});

test('start: the setup that a scenario starts from, which its own grading takes and does not pass', async () => {
  const { stdout, exitCode } = await desk(['start', 'tenor-in-line']);
  expect(exitCode).toBe(0);
  const graded = await desk(['grade', 'tenor-in-line', '-'], stdout);
  expect([graded.exitCode, graded.stderr]).toEqual([1, '']);
});

test('grade: a setup on another rig is bad input, with the line of the difference', async () => {
  const [first, ...others] = netLoft.box.tracks;
  if (!first) throw new Error('Expected a track.');
  const rig = {
    ...netLoft,
    box: { ...netLoft.box, tracks: [{ ...first, levelDbfs: -9 }, ...others] },
  };
  const { exitCode, stdout, stderr } = await desk(
    ['grade', 'tenor-in-line', '-'],
    setupText({}, rig),
  );
  expect([exitCode, stdout]).toEqual([2, '']);
  expect(stderr).toMatch(
    /^standard input:\d+ at rig\.box\.tracks\[0\]\.levelDbfs: expected -20, .* but found -9\./,
  );
});

test('controls --json: every control with its value', async () => {
  const { stdout } = await desk(
    ['controls', '-', '--json'],
    setupText({ 'desk.ch3.fader': -Infinity }),
  );
  const found = JSON.parse(stdout).find(
    ({ address }: { address: string }) => address === 'desk.ch3.fader',
  );
  expect(found).toMatchObject({ kind: 'gain', unit: 'dB', default: 0, value: '-inf' });
});

test('schema: a JSON Schema with a title', async () => {
  const { exitCode, stdout } = await desk(['schema', 'walk-through']);
  expect(exitCode).toBe(0);
  expect(JSON.parse(stdout)).toMatchObject({ title: 'Walk-through', type: 'object' });
});

test('check-lessons: the course of this repository has no complaints', async () => {
  const { exitCode, stdout, stderr } = await desk(['check-lessons']);
  expect([exitCode, stderr]).toEqual([0, '']);
  expect(stdout).toMatch(/, 0 complaints, /);
});

test.each<[string, readonly string[], RegExp]>([
  ['no command', [], /^desk: expected one of the commands .* but found nothing\. Try --help\.$/m],
  ['an unknown command', ['levles'], /but found "levles"\. Nearest: levels\./],
  ['an unknown option', ['levels', '-', '--jsn'], /but found "--jsn"\. Nearest: --json\./],
  ['a missing operand', ['grade', 'tenor-in-line'], /expected SETUP, but found nothing/],
  ['a missing option', ['paths', '-', '--source', 'cello'], /expected --output ID/],
  ['an unknown scenario', ['grade', 'tenor-in-lin', '-'], /Nearest: tenor-in-line,/],
  ['a file that is not there', ['levels', 'no-such.yaml'], /^no-such\.yaml: .* no such file\.$/m],
  [
    'an unknown source',
    ['paths', '-', '--source', 'celo', '--output', 'capture'],
    /Nearest: cello,/,
  ],
  ['an unknown place', ['levels', '-', '--at', 'rack.plat'], /Nearest: rack\.plate\.in,/],
])('exit code 2 and a hint: %s', async (_what, args, said) => {
  const { exitCode, stdout, stderr } = await desk(args, setupText());
  expect([exitCode, stdout]).toEqual([2, '']);
  expect(stderr).toMatch(said);
});

test('exit code 2 with file and line for every problem of a setup', async () => {
  const text = setupText({ 'desk.ch3.fader': -6, 'desk.ch3.pan': 0.5 })
    .replace('"desk.ch3.fader": -6', '"desk.ch3.fadr": -6')
    .replace('"desk.ch3.pan": 0.5', '"desk.ch3.pan": 5');
  const path = fileWith('bad.json', text);
  const { exitCode, stderr } = await desk(['levels', path]);
  expect(exitCode).toBe(2);
  const lines = stderr.trimEnd().split('\n');
  expect(lines).toHaveLength(2);
  expect(lines[0]).toMatch(/bad\.json:\d+ at board.*"desk\.ch3\.fadr".*Nearest: desk\.ch3\.fader,/);
  expect(lines[1]).toMatch(/bad\.json:\d+ at board.*expected -1 to 1, but found 5/);
});

test('a file over the cap is refused by its size, and standard input where it passes the cap', async () => {
  const large = '#'.repeat(300_000);
  expect((await desk(['levels', fileWith('large.yaml', large)])).stderr).toMatch(
    /found 300000 bytes/,
  );
  const { exitCode, stderr } = await desk(['levels', '-'], large);
  expect(exitCode).toBe(2);
  expect(stderr).toMatch(/^standard input: expected at most 262144 bytes/);
});

test('control characters of a file do not reach the terminal, on either stream', async () => {
  const [first, ...others] = netLoft.box.tracks;
  if (!first) throw new Error('Expected a track.');
  const label = 'Te\u001b[31mnor\nforged\u202e';
  const rig = { ...netLoft, box: { ...netLoft.box, tracks: [{ ...first, label }, ...others] } };
  const shown = (await desk(['levels', '-'], setupText({}, rig))).stdout;
  expect(shown).toContain('Te\\u001b[31mnor\\u000aforged\\u202e');
  const data = (
    await desk(['levels', '-', '--json', '--at', 'box.tenor.source'], setupText({}, rig))
  ).stdout;
  expect(JSON.parse(data).places[0].name).toContain(label);
  const { stderr: refused } = await desk(['levels', '-'], setupText({ '\u001b[2J\nx': 1 }));
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they must not be there.
  expect(shown + data + refused).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u202e]/);
  expect(refused.trimEnd().split('\n')).toHaveLength(1);
});

test('findings: a sentence and how to mend it, faults first; nothing in a room in order', async () => {
  const board = { 'desk.ch3.sub1': true, 'box.cello.fader': -3 };
  const { stdout, exitCode } = await desk(['findings', '-'], setupText(board));
  expect(exitCode).toBe(0);
  const lines = stdout.trimEnd().split('\n');
  expect(lines.map((line) => line.slice(0, 22))).toEqual([
    'Fault (arrives-twice):',
    '  Close one of the two',
    'Worth a look (box-fade',
    '  If that is not meant',
  ]);
  const data = JSON.parse((await desk(['findings', '-', '--json'], setupText(board))).stdout);
  expect(data.findings.map(({ code }: { code: string }) => code)).toEqual([
    'arrives-twice',
    'box-fader',
  ]);
  expect((await desk(['findings', '-'], setupText())).stdout).toBe('Nothing to point at.\n');
});

test('findings: a setup that is none is bad input', async () => {
  expect(await desk(['findings', '-'], 'rig: 3')).toMatchObject({ exitCode: 2, stdout: '' });
});
