import type { Locator, Page } from '@playwright/test';
import { violationsInBothThemes } from './axe.ts';
import { expect, test } from './fixture.ts';

const picture = (page: Page): Locator => page.locator('.desk-drawing').first();

async function openFront(page: Page): Promise<void> {
  await page.goto('/');
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  // The ways come to life later than the desk.
  await page.waitForLoadState('networkidle');
}

/** How many lines are lit: those that are lit alike are one path. */
const litLines = (page: Page): Promise<number> =>
  picture(page)
    .locator('.light')
    .evaluateAll(
      (paths) =>
        paths
          .map((path) => path.getAttribute('d'))
          .join('')
          .split('M').length - 1,
    );

test('by keyboard: an output is followed back, and the picture says so', async ({ page }) => {
  await openFront(page);
  await expect(picture(page)).toHaveAccessibleName(/the way of Cello lit/);
  const forwards = await litLines(page);
  await page.getByLabel('Follow').focus();
  await page.keyboard.type('Capture');
  await expect(picture(page)).toHaveAccessibleName(/all that feeds Capture lit/);
  // The bass feeds the capture too; the headphones do not.
  expect(await litLines(page)).toBeGreaterThan(forwards);
  await page.getByLabel('Follow').selectOption({ label: 'Cello' });
  await expect(picture(page)).toHaveAccessibleName(/the way of Cello lit/);
  await expect.poll(() => litLines(page)).toBe(forwards);
});

test('one way of two is lit alone, until it is let go', async ({ page }) => {
  await openFront(page);
  const all = await litLines(page);
  const alone = page.getByRole('button', { name: 'Light alone: way 2 to Capture' });
  await alone.focus();
  await page.keyboard.press('Enter');
  await expect(alone).toHaveAttribute('aria-pressed', 'true');
  await expect(picture(page)).toHaveAccessibleName(/one way of Cello lit/);
  expect(await litLines(page)).toBeLessThan(all);
  expect(await violationsInBothThemes(page)).toEqual([]);
  await page.keyboard.press('Enter');
  await expect.poll(() => litLines(page)).toBe(all);
});

test('a strip on a subgroup and on the main bus is drawn double, a loop with beads', async ({
  page,
}) => {
  await page.goto('/glossary/');
  const drawn = (word: string) => page.locator(`#${word} .desk-drawing`);
  await expect(drawn('coherent-sum').locator('.light-parting').first()).toBeAttached();
  await expect(drawn('send').locator('.light-parting')).toHaveCount(0);
  await expect(drawn('loop').locator('.light-loop').first()).toBeAttached();
  await expect(drawn('send').locator('.light-loop')).toHaveCount(0);
});

test('a loop that one makes is told in words, with its gain', async ({ page }) => {
  await openFront(page);
  await page.getByLabel('Controls of').selectOption({ label: 'Strip R1 Plate return' });
  const send = page.locator('[data-address="desk.ret1.aux3"]');
  await send.focus();
  await page.keyboard.press('Backspace');
  await page.keyboard.press('End');
  for (let press = 0; press < 3; press += 1) await page.keyboard.press('PageDown');
  await expect(page.locator('.ways')).toContainText('feed one another in a loop');
  await expect(picture(page).locator('.light-loop').first()).toBeAttached();
});
