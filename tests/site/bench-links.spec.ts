import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { linkTo } from '../../src/share/setup-link.ts';
import { course } from './course-pages.ts';
import { expect, test } from './fixture.ts';
import { moveByKeyboard } from './keyboard.ts';

const rigOf = (id: string) => {
  const rig = course.rigs.get(id);
  if (!rig) throw new Error(`Expected the rig ${id}, but found none.`);
  return rig;
};
const netLoft = rigOf('net-loft');
const BOARD = { 'desk.ch3.fader': -3.5, 'desk.ch3.mute': true, 'desk.ch4.in': 'none' };

async function openBench(page: Page, fragment = ''): Promise<void> {
  await page.goto(`/bench/${fragment}`);
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
}

const recallOf = (page: Page) => page.locator('.recall');

test('a picture of the glossary leads to the bench as it is drawn', async ({ page }) => {
  await page.goto('/glossary/');
  const ghost = page.locator('#ghost');
  await ghost.getByText('See it on a desk').click();
  await ghost.getByRole('link', { name: 'Turn it on the bench' }).click();
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  await expect(recallOf(page).locator('summary')).toHaveText('3 controls off their defaults');
});

test('a link to a setup opens the desk as it stood', async ({ page }) => {
  await openBench(page);
  await moveByKeyboard(
    { page, id: 'bench' },
    { rig: netLoft, board: {} },
    { 'desk.ch1.mute': true },
  );
  await page.getByRole('button', { name: 'Link to this setup' }).click();
  const link = page.locator('.bench-word a');
  await expect(link).toHaveAttribute('href', /#setup=1\./);
  const address = (await link.getAttribute('href')) ?? '';

  await page.goto('/glossary/');
  await page.goto(address);
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  await expect(recallOf(page).locator('summary')).toHaveText('1 control off its default');
});

test('a link that is pasted into the open bench is opened there, and can be undone', async ({
  page,
}) => {
  await openBench(page);
  const fragment = await linkTo({ rig: netLoft, board: BOARD }, netLoft);
  await page.evaluate((hash) => {
    window.location.hash = hash;
  }, fragment);
  await expect(recallOf(page).locator('summary')).toHaveText('2 controls off their defaults');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(recallOf(page).locator('summary')).toHaveText('0 controls off their defaults');
});

for (const [what, fragment, told] of [
  ['damaged', '#setup=1.AAAA', 'damaged'],
  ['from a newer version', '#setup=7.AAAA', 'version 7'],
  ['too long', `#setup=1.${'A'.repeat(8100)}`, 'at most 8000'],
] as const) {
  test(`a link that is ${what} says so, and leaves the desk as it was`, async ({ page }) => {
    await openBench(page, fragment);
    const word = page.getByRole('alert');
    await expect(word).toContainText('That link cannot be used. The desk stays as it was.');
    await expect(word).toContainText(told);
    await expect(recallOf(page).locator('summary')).toHaveText('0 controls off their defaults');
  });
}

test('a link for another room leads there with the setup', async ({ page }) => {
  const split = rigOf('split-desk');
  const fragment = await linkTo({ rig: split, board: { 'desk.main.fader': -4 } }, split);
  await openBench(page, fragment);
  await page.getByRole('link', { name: 'Open it in the room that it is for' }).click();
  await expect(page).toHaveURL(/\/bench\/split-desk\/#setup=/);
  await expect(recallOf(page).locator('summary')).toHaveText('1 control off its default');
});

test('the recall sheet lists controls and cords, and stands whole on paper', async ({ page }) => {
  await openBench(page, await linkTo({ rig: netLoft, board: BOARD }, netLoft));
  const recall = recallOf(page);
  await recall.locator('summary').click();
  await expect(recall.getByRole('rowheader', { name: 'fader', exact: true })).toHaveCount(1);
  await expect(recall.getByRole('table', { name: 'Patch list' })).toContainText('Output 3');
  const { violations } = await new AxeBuilder({ page }).include('.recall').analyze();
  expect(violations.map(({ id }) => id)).toEqual([]);

  await recall.locator('summary').click();
  await page.emulateMedia({ media: 'print' });
  await expect(recall.getByText('Notes')).toBeVisible();
  const height = (await recall.locator('.patch-list').boundingBox())?.height ?? 0;
  expect(height).toBeGreaterThan(100);
  await expect(page.locator('.ways')).toBeHidden();
});
