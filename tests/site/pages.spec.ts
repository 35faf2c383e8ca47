import type { Page } from '@playwright/test';
import { violationsInBothThemes, violationsInLight } from './axe.ts';
import { builtPages } from './built-pages.ts';
import { expect, test } from './fixture.ts';

/** Pages that share a browser tab: opening one takes longer than looking at a page. */
const BATCH = 4;

function batchesOf<T>(size: number, all: readonly T[]): T[][] {
  return Array.from({ length: Math.ceil(all.length / size) }, (_, batch) =>
    all.slice(batch * size, (batch + 1) * size),
  );
}

/** Lessons are made of the same parts. So the dark theme, in which only colours differ, is looked at on a few. */
const IN_BOTH_THEMES = 4;
const pagesLike = (address: RegExp) => builtPages().filter((one) => address.test(one));
const lessonPages = pagesLike(/^\/lessons\/[^/]+\/$/);
const isOneOfMany = (address: string): boolean => lessonPages.indexOf(address) >= IN_BOTH_THEMES;
/** A test-out repeats the task and the questions of its lesson. So the words in its drawings, which are many, are left out. */
const isRepeated = (address: string): boolean => address.endsWith('/test-out/');

async function checkPage(page: Page, address: string): Promise<void> {
  await page.setViewportSize({ width: 1280, height: 720 });
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
  await page.goto(address);
  await expect.soft(page.locator('h1')).toHaveCount(1);
  await expect.soft(page).toHaveTitle(/Tap & Sum/);
  const isLight = isOneOfMany(address) || isRepeated(address);
  const look = isLight ? violationsInLight : violationsInBothThemes;
  expect.soft(await look(page, isRepeated(address) ? 'main' : undefined)).toEqual([]);

  await page.setViewportSize({ width: 320, height: 640 });
  // An island draws itself anew for the new width; what counts is where that ends.
  await expect
    .poll(() => page.evaluate(() => document.documentElement.scrollWidth), {
      message: `${address} itself must not scroll sideways`,
    })
    .toBeLessThanOrEqual(320);
}

/** Test-outs are made of parts of lessons, so one is looked at. */
const [oneTestOut] = lessonPages.filter((address) => address.endsWith('/test-out/'));
const lookedAt = builtPages().filter(
  (address) => !address.endsWith('/test-out/') || address === oneTestOut,
);

for (const [number, addresses] of batchesOf(BATCH, lookedAt).entries()) {
  const title = `pages are named, accessible in both themes, and fit 320 px (batch ${number + 1})`;
  test(title, async ({ page }) => {
    test.setTimeout(addresses.length * 15_000);
    for (const address of addresses) {
      await test.step(address, () => checkPage(page, address));
    }
  });
}
