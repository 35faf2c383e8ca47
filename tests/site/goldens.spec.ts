import type { Locator, Page } from '@playwright/test';
import { expect, test } from './fixture.ts';

/**
 * Pictures of eight states, as somebody looked at them and found them right. They are drawn anew with
 * `npm run test:site -- goldens --update-snapshots`, and then have to be looked at again.
 */
const TOLERANCE = { maxDiffPixelRatio: 0.01, animations: 'disabled' } as const;
const PHONE = { width: 390, height: 844 };

test.skip(
  () => !process.env['SITE_TEST_BROWSER']?.includes('@sparticuz/chromium'),
  'SKIPPED: goldens are of the packaged browser, and another one was found.',
);

async function open(page: Page, address: string): Promise<Locator> {
  await page.goto(address);
  await page.waitForLoadState('networkidle');
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  return page.locator('.desk-scroll').first();
}

async function openWord(page: Page, word: string): Promise<Locator> {
  await page.goto('/glossary/');
  await page.locator(`#${word}`).getByText('See it on a desk').click();
  const drawing = page.locator(`#${word} .desk-scroll`);
  // Wherever the word stands in the page, its picture then stands at a whole pixel.
  await drawing.evaluate((element) => {
    Object.assign(element.style, { position: 'fixed', inset: '0 auto auto 0', zIndex: '9' });
  });
  return drawing;
}

test('the front page, light', async ({ page }) => {
  await expect(await open(page, '/')).toHaveScreenshot('front-light.png', TOLERANCE);
});

test('the front page on a phone, dark', async ({ page }) => {
  await page.setViewportSize(PHONE);
  await page.emulateMedia({ colorScheme: 'dark' });
  await expect(await open(page, '/')).toHaveScreenshot('front-phone-dark.png', TOLERANCE);
});

test('the bench with box and rack', async ({ page }) => {
  await page.setViewportSize({ width: 1600, height: 1400 });
  await expect(await open(page, '/bench/')).toHaveScreenshot('bench.png', TOLERANCE);
});

test('an output followed back', async ({ page }) => {
  const drawing = await open(page, '/');
  await page.getByLabel('Follow').selectOption({ label: 'Capture' });
  await expect(drawing).toHaveScreenshot('output-back.png', TOLERANCE);
});

test('one way of two', async ({ page }) => {
  const drawing = await open(page, '/');
  await page.getByRole('button', { name: 'Light alone: way 2 to Capture' }).click();
  await expect(drawing).toHaveScreenshot('one-way.png', TOLERANCE);
});

test('two copies of one sound', async ({ page }) => {
  await expect(await openWord(page, 'coherent-sum')).toHaveScreenshot('doubled.png', TOLERANCE);
});

test('a loop', async ({ page }) => {
  await expect(await openWord(page, 'loop')).toHaveScreenshot('loop.png', TOLERANCE);
});

test('what differs from before', async ({ page }) => {
  const drawing = await open(page, '/');
  await page.getByRole('button', { name: 'Compare with before' }).click();
  await expect(page.locator('.differences')).toBeVisible();
  await page.locator('.sheet [data-address="desk.ch3.fader"]').press('PageDown');
  await page.locator('.sheet h4').first().click();
  await expect(page.locator('.difference-mark')).toHaveCount(1);
  await expect(drawing).toHaveScreenshot('difference.png', TOLERANCE);
});
