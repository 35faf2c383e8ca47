import { expect, test } from './fixture.ts';

const DRILL = '#drill=subgroups.1.k7x2';

test('a link opens the same drill, which is passed by keyboard', async ({ page }) => {
  await page.goto(`/drills/${DRILL}`);
  const task = page.locator('.task');
  await expect(task.getByRole('heading', { level: 3 })).toHaveText(
    'Subgroups, in series and in parallel',
  );
  const brief = await task.locator('> p').first().textContent();
  await page.reload();
  await expect(task.locator('> p').first()).toHaveText(brief ?? '');

  await page.getByRole('button', { name: 'Check' }).focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('.verdict-head')).toContainText('Attempt 1');
  // The solution is a button as well: what has to be turned differs from drill to drill.
  await page.getByRole('button', { name: 'Set one solution' }).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Check' }).focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('.par')).toHaveText(/^It can be done in (\d) moves?; you used \1\.$/);
  await expect(page.locator('.debrief')).toBeVisible();
});

test('a new drill of a chosen concept and level gets a link of its own', async ({ page }) => {
  await page.goto('/drills/');
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  await page.getByLabel('Concept').selectOption('gain-staging');
  await page.getByLabel('Level').selectOption('2');
  await page.getByRole('button', { name: 'New drill' }).press('Enter');
  await expect(page.locator('.task h3')).toHaveText('Gain staging');
  expect(page.url()).toMatch(/#drill=gain-staging\.2\.[a-z0-9]{1,12}$/);
});

test('a link that holds no drill is told what is wrong with it', async ({ page }) => {
  for (const [fragment, words] of [
    ['#drill=knitting.1.k7x2', 'one of the concepts'],
    ['#drill=subgroups.9.k7x2', 'a level of 1, 2, 3'],
    ['#drill=subgroups.1.<b>', 'a seed'],
  ] as const) {
    await page.goto(`/drills/${fragment}`);
    await page.reload();
    await expect(page.locator('main [role=status]').first()).toContainText(words);
  }
});
