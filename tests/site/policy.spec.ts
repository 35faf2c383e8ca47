import { expect, type Page, test } from '@playwright/test';
import { test as quietTest } from './fixture.ts';

/** Directives that refuse something while `act` runs in the page. */
async function refusals(page: Page, act: () => void): Promise<string[]> {
  await page.goto('/');
  await page.evaluate(() => {
    const seen: string[] = [];
    Reflect.set(globalThis, 'refusals', seen);
    addEventListener('securitypolicyviolation', (event) => seen.push(event.effectiveDirective));
  });
  await page.evaluate(act).catch(() => undefined);
  await expect.poll(() => page.evaluate(() => Reflect.get(globalThis, 'refusals'))).not.toEqual([]);
  return page.evaluate(() => Reflect.get(globalThis, 'refusals'));
}

test('the policy refuses a string that would become markup', async ({ page }) => {
  const found = await refusals(page, () => {
    document.body.innerHTML = '<p>from a string</p>';
  });
  expect(found).toContain('require-trusted-types-for');
});

test('the policy refuses a style written on an element', async ({ page }) => {
  const found = await refusals(page, () => {
    document.querySelector('main')?.setAttribute('style', 'color: red');
  });
  expect(found).toContain('style-src-attr');
});

test('the policy refuses a request to another origin', async ({ page }) => {
  const found = await refusals(page, () => {
    fetch('http://127.0.0.1:9/').catch(() => undefined);
  });
  expect(found).toContain('connect-src');
});

test('the policy refuses a frame', async ({ page }) => {
  const found = await refusals(page, () => {
    const frame = document.createElement('iframe');
    frame.src = '/404.html';
    document.body.append(frame);
  });
  expect(found).toContain('frame-src');
});

quietTest.fail('a page that breaks the policy fails its test', async ({ page }) => {
  await page.goto('/');
  await page.evaluate(() => document.querySelector('main')?.setAttribute('style', 'color: red'));
});

quietTest.fail('a page that asks another origin fails its test', async ({ page }) => {
  await page.goto('/');
  await page.evaluate(() => fetch('http://127.0.0.1:9/').catch(() => undefined));
});
