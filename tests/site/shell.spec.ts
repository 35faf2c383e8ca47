import { expect, test } from './fixture.ts';

const paper = () => getComputedStyle(document.documentElement).backgroundColor;

test('a chosen theme outlives a reload and stands before the page is drawn', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'light' });
  await page.goto('/');
  const light = await page.evaluate(paper);
  await page.getByLabel('Theme', { exact: true }).selectOption('Dark');
  const dark = await page.evaluate(paper);
  expect(dark).not.toBe(light);

  await page.reload({ waitUntil: 'commit' });
  await expect(page.locator('body')).toBeAttached();
  expect(await page.evaluate(() => document.documentElement.dataset['theme'])).toBe('dark');
  await expect(page.getByLabel('Theme', { exact: true })).toHaveValue('dark');

  await page.getByLabel('Theme', { exact: true }).selectOption('System');
  expect(await page.evaluate(paper)).toBe(light);
});

test('without script the page reads on and offers no theme', async ({ browser, baseURL }) => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(`${baseURL}/`);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expect(page.getByLabel('Theme', { exact: true })).toBeHidden();
  await context.close();
});

test('the first Tab offers to skip to the content, and Enter goes there', async ({ page }) => {
  await page.goto('/');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('link', { name: 'Skip to the content' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.locator('main')).toBeFocused();
});

test('an address that leads nowhere says so', async ({ page }) => {
  await page.goto('/404.html');
  await expect(page.getByRole('link', { name: 'Go back to the start' })).toBeVisible();
});
