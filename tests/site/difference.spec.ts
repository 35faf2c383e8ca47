import { violationsInBothThemes } from './axe.ts';
import { expect, test } from './fixture.ts';

test('before and after the last move: in words, in figures, and marked in the drawing', async ({
  page,
}) => {
  await page.goto('/');
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  // What opens below a desk comes to life a little later than the desk.
  await page.waitForLoadState('networkidle');
  await page.getByRole('button', { name: 'Compare with before' }).click();
  const panel = page.locator('.differences');
  await expect(panel).toContainText('Every control stands alike.');
  await page.locator('.sheet [data-address="desk.ch3.fader"]').press('PageDown');
  await expect(panel).toContainText('The fader of Strip 3 Cello: 0.0 dB → −6.0 dB');
  await expect(panel.getByRole('row', { name: /Headphones A/ })).toContainText('the same');
  await expect(page.locator('.difference-mark')).toHaveCount(1);

  const over = page.getByRole('button', { name: 'Draw that instead' });
  await over.focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('.drawn-instead')).toBeVisible();
  await expect(page.locator('.desk-drawing .hit')).toHaveCount(0);
  expect(await violationsInBothThemes(page)).toEqual([]);
  await page.keyboard.press('Enter');
  await expect(page.locator('.drawn-instead')).toHaveCount(0);
  await page.getByRole('button', { name: 'Compare with before' }).click();
  await expect(page.locator('.difference-mark')).toHaveCount(0);
});

test('in a task the solution can be held against one’s own desk, once it was checked', async ({
  page,
}) => {
  await page.goto('/lessons/insert-or-send/');
  const task = page.locator('section.task').first();
  await task.scrollIntoViewIfNeeded();
  await expect(page.locator('astro-island:has(section.task)').first()).not.toHaveAttribute('ssr');
  const compare = task.getByRole('button', { name: 'Compare with before' });
  await compare.click();
  await expect(compare).toHaveAttribute('aria-expanded', 'true');
  const against = task.getByLabel('Against');
  await expect(against.getByRole('option', { name: 'one solution' })).toHaveCount(0);
  await task.getByRole('button', { name: 'Check', exact: true }).click();
  await against.selectOption('one solution');
  await expect(task.locator('.differences li').first()).toBeVisible();
  await expect(task.locator('.difference-mark').first()).toBeAttached();
});
