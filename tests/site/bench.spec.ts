import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import {
  InputError,
  levelAt,
  MAX_FILE_LENGTH,
  outputPlace,
  ownerLabel,
  type Problem,
  parseSetup,
  part,
  setupData,
  simulate,
} from '../../simulator/index.ts';
import { levelText } from '../../src/text/index.ts';
import { course, plain } from './course-pages.ts';
import { expect, test } from './fixture.ts';
import { fieldOf, moveByKeyboard, ownerSelect } from './keyboard.ts';

const EXAMPLE = readFileSync(
  fileURLToPath(new URL('../../src/formats/example-setup.yaml', import.meta.url)),
  'utf8',
);

/** Some controls of every kind off their defaults. */
const BOARD = {
  'desk.ch3.fader': -3.5,
  'desk.ch3.mute': true,
  'desk.ch3.aux1': -Infinity,
  'desk.ch3.aux3': -8.2,
  'desk.ch3.aux3.tap': 'pre',
  'desk.ch3.pan': -0.03,
  'rack.comp.in': 'desk.ch3.insert.send',
};

const netLoft = () => {
  const rig = course.rigs.get('net-loft');
  if (!rig) throw new Error('Expected the rig net-loft, but found none.');
  return rig;
};

async function openBench(page: Page) {
  await page.goto('/bench/');
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  return { page, id: 'bench' };
}

/** The text of the file that Save hands over. */
async function save(page: Page): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the setup' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/^[a-z0-9-]+\.setup\.json$/);
  return readFileSync(await download.path(), 'utf8');
}

const open = (page: Page, name: string, text: string): Promise<void> =>
  page
    .getByLabel('Setup file')
    .setInputFiles({ name, mimeType: 'application/octet-stream', buffer: Buffer.from(text) });

/** What is wrong with a setup file. */
function problemsOf(name: string, text: string): readonly Problem[] {
  try {
    parseSetup(name, text);
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  return [];
}

test('what Save hands over is read back as the board on the screen, and opening it brings that back', async ({
  page,
}) => {
  const desk = await openBench(page);
  const rig = netLoft();
  await moveByKeyboard(desk, { rig, board: {} }, BOARD);
  const text = await save(page);
  const saved = parseSetup('saved.json', text);
  const { 'desk.ch3.aux1': _closedAlready, ...offDefault } = BOARD;
  expect(saved.board).toEqual(offDefault);
  expect(saved.rig).toEqual(rig);

  const fader = fieldOf(desk, 'desk.ch3.fader');
  await ownerSelect(desk).selectOption('desk.ch3');
  await page.getByRole('button', { name: 'Start again' }).click();
  await expect(fader).toHaveAttribute('aria-valuetext', '0.0 decibels');
  await open(page, 'saved.json', text);
  await expect(fader).toHaveAttribute('aria-valuetext', 'minus 3.5 decibels');
  await expect(page.locator('.problem')).toHaveCount(0);
  expect(await save(page)).toBe(text);
  await expect(page.locator('.desk .announced')).toContainText(rig.label);

  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(fader).toHaveAttribute('aria-valuetext', '0.0 decibels');
});

test('a file that cannot be used is refused with place and hint, and the board stays as it was', async ({
  page,
}) => {
  const desk = await openBench(page);
  const rig = netLoft();
  await moveByKeyboard(desk, { rig, board: {} }, { 'desk.ch3.fader': -3.5 });
  const before = await save(page);
  const good = JSON.stringify(setupData({ rig, board: {} }), null, 1);
  const bad: Record<string, string> = {
    'malformed.yaml': 'format: tap-and-sum/setup\nversion: [1\n',
    'unknown-control.json': good.replace('"board": {}', '"board": { "desk.ch3.fadr": -3 }'),
    'out-of-range.json': good.replace('"board": {}', '"board": { "desk.ch3.fader": 40 }'),
    'proto.json': good.replace('"board": {}', '"board": { "__proto__": { "x": 1 } }'),
    'long.yaml': `${good}\n${'#'.repeat(MAX_FILE_LENGTH)}`,
  };
  for (const [name, text] of Object.entries(bad)) {
    await test.step(name, async () => {
      const problems = problemsOf(name, text);
      expect(problems.length).toBeGreaterThan(0);
      await open(page, name, text);
      const problem = page.locator('.problem');
      await expect(problem.locator('li').first()).toContainText(name);
      await expect(problem.locator('li')).toHaveCount(problems.length);
      for (const [index, { place, line, expected, found, hint }] of problems.entries()) {
        expect(Boolean(place || line || hint), 'says where, or what to do').toBe(true);
        for (const words of [place, expected, found, hint ?? '', line ? `${name}:${line}` : '']) {
          await expect(problem.locator('li').nth(index)).toContainText(plain(words));
        }
      }
      expect(await save(page)).toBe(before);
    });
  }
  // Over the cap by far, it is not even read.
  await open(page, 'huge.yaml', '#'.repeat(MAX_FILE_LENGTH * 4 + 1));
  await expect(page.locator('.problem li')).toContainText(
    `huge.yaml: expected at most ${MAX_FILE_LENGTH}`,
  );
  expect(await save(page)).toBe(before);
  expect(await page.evaluate(() => Reflect.get({}, 'x'))).toBeUndefined();

  // A good file takes the message away.
  await open(page, 'good.json', good);
  await expect(page.locator('.problem')).toHaveCount(0);
});

test('a setup of another rig opens and is drawn with its own levels; undo leads back', async ({
  page,
}) => {
  const desk = await openBench(page);
  await ownerSelect(desk).selectOption('rack.duo');
  const other = parseSetup('other.yaml', EXAMPLE);
  await open(page, 'other.yaml', EXAMPLE);
  await expect(page.locator('.desk-drawing .mark')).toHaveText([
    ...other.rig.desk.strips.map(({ mark }) => mark),
    /./,
  ]);
  // The rig has no such device: the sheet falls back on something that is there.
  await expect(ownerSelect(desk)).toHaveValue(`desk.${other.rig.desk.strips[0]?.id}`);
  await expect(page.locator('.desk .announced')).toContainText(other.rig.label);
  const solution = simulate(other);
  const levels = other.rig.outputs.flatMap(({ id, stereo }) => {
    const place = outputPlace(id);
    const places = stereo ? [place, part(place, 'l'), part(place, 'r')] : [place];
    return places.map((one) => levelText(levelAt(solution, one)));
  });
  await expect(page.locator('.read-outs td:nth-child(2) .leg')).toContainText(levels);

  // The same rig by name, but without the strip that is open.
  const fewer = EXAMPLE.replace(/.*id: ch1, mark.*\n/, '')
    .replace(/.*desk\.ch1\..*\n/g, '')
    .replace(/.*rack\.comp\.in.*\n/, '');
  expect(parseSetup('fewer.yaml', fewer).rig.id).toBe(other.rig.id);
  await open(page, 'fewer.yaml', fewer);
  await expect(page.locator('.problem')).toHaveCount(0);
  await expect(ownerSelect(desk)).not.toHaveValue('desk.ch1');

  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(ownerSelect(desk).locator('option')).toContainText([
    ownerLabel(netLoft(), 'desk.ch1'),
  ]);
});
