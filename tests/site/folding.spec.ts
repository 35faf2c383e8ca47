import { violationsInBothThemes } from './axe.ts';
import { expect, test } from './fixture.ts';

test('strips that are folded stand as a row of levels, and follow what is turned', async ({
  page,
}) => {
  await page.goto('/bench/');
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  const strips = page.getByRole('button', { name: 'Strips 1–8' });
  await expect(strips).toHaveAttribute('aria-pressed', 'true');
  const before = await page.locator('.desk-drawing .hit-fader').count();
  await strips.focus();
  await page.keyboard.press('Enter');
  await expect(strips).toHaveAttribute('aria-pressed', 'false');
  const cello = page.locator('.folded').getByRole('button', { name: /Strip 3 Cello/ });
  await expect(cello).toContainText('+3.0 dBu');
  expect(await page.locator('.desk-drawing .hit-fader').count()).toBeLessThan(before);

  // What is folded can be turned all the same: it opens in the sheet.
  await cello.focus();
  await page.keyboard.press('Enter');
  await page.locator('.sheet [data-address="desk.ch3.fader"]').press('PageDown');
  await expect(cello).toContainText('−3.0 dBu');
  expect(await violationsInBothThemes(page)).toEqual([]);

  await strips.focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('.folded')).toHaveCount(0);
  await expect(page.locator('.desk-drawing .hit-fader')).toHaveCount(before);
});
