import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { strToU8, zipSync } from 'fflate';
import { assignmentText } from '../../src/class/assignment.ts';
import { assignmentLink } from '../../src/class/assignment-link.ts';
import { ASSIGNMENT, filesOf, handInOf } from '../class/a-class.ts';
import { violationsInBothThemes } from './axe.ts';
import { expect, test } from './fixture.ts';

const json = (name: string, text: string) => ({
  name,
  mimeType: 'application/json',
  buffer: Buffer.from(text),
});

const ALL = ASSIGNMENT.items.map(({ id }) => id);
const HAND_INS = Array.from({ length: 20 }, (_, at) => ({
  ...handInOf(`learner-${at}`, at % 2 === 0 ? ALL : ['out']),
  ...(at === 0 ? { name: '=1+1' } : {}),
}));
const ARCHIVE = zipSync({
  ...Object.fromEntries(filesOf(HAND_INS).map(({ name, bytes }) => [`class/${name}`, bytes])),
  'class/notes.txt': strToU8('not a hand-in'),
});

const take = (page: Page, what: string, file: Parameters<Page['setInputFiles']>[1]) =>
  page
    .getByRole('region', { name: what, exact: true })
    .locator('input[type=file]')
    .setInputFiles(file);

test('a link, an archive of hand-ins, tables, CSV, and a correction: old marks beside new', async ({
  page,
}) => {
  test.setTimeout(60_000);
  await page.goto(`/gradebook/${await assignmentLink(ASSIGNMENT)}`);
  await expect(page.getByText('“Week three”: 4 items. Now the hand-ins.')).toBeVisible();
  await take(page, 'Hand-ins', {
    name: 'class.zip',
    mimeType: 'application/zip',
    buffer: Buffer.from(ARCHIVE),
  });
  await expect(page.getByText('20 learners marked, 1 file set aside.')).toBeVisible();
  await expect(page.getByText('notes.txt: expected well-formed JSON')).toBeVisible();
  const row = page
    .getByRole('region', { name: 'Marks by learner' })
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name: 'learner-2', exact: true }) });
  await expect(row).toContainText('Passed');
  await expect(row).toContainText('100 %');
  await expect(page.getByRole('region', { name: 'Item analysis' })).toBeVisible();

  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'CSV by learner', exact: true }).click(),
  ]);
  const lines = readFileSync(await download.path(), 'utf8').split('\r\n');
  expect(lines.length).toBe(1 + 20 + 1);
  expect(lines[1]).toMatch(/^learner-0,'=1\+1,/);

  // By keyboard alone: the report of a learner.
  await page.getByLabel('Report of').focus();
  await page.keyboard.type('learner-3');
  await expect(page.getByRole('article', { name: 'Report of learner-3' })).toContainText('Not yet');
  expect.soft(await violationsInBothThemes(page, 'main')).toEqual([]);

  await take(page, 'Assignment', json('broken.json', '{"format": "tap-and-sum/hand-in"}'));
  await expect(page.getByText('That cannot be used. The marks stay as they were.')).toBeVisible();
  const [, ...items] = ASSIGNMENT.items;
  await take(page, 'Assignment', json('corrected.json', assignmentText({ ...ASSIGNMENT, items })));
  const again = page.getByRole('region', { name: 'Marks before and after' });
  await expect(again.getByRole('row')).toHaveCount(1 + 20);
  await expect(again).toContainText('One each (100 %, now not asked)');
});

test('marking that is stopped by keyboard leaves the focus by the word about it', async ({
  page,
}) => {
  const { promise: released, resolve: release } = Promise.withResolvers<void>();
  await page.route(/grading-worker[^/]*\.js$/, async (route) => {
    await released;
    await route.continue();
  });
  await page.goto('/gradebook/');
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  await take(page, 'Assignment', json('week.json', assignmentText(ASSIGNMENT)));
  const stop = page.getByRole('button', { name: 'Stop' });
  await stop.focus();
  await page.keyboard.press('Enter');
  await expect(stop).toHaveCount(0);
  await expect(page.locator('.screen-only[role="status"]')).toBeFocused();
  release();
});
