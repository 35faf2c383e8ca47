import { existsSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { afterEach, expect, test, vi } from 'vitest';
import { findBrowser } from './find-browser.ts';

afterEach(() => vi.unstubAllEnvs());

test('findBrowser() takes the browser that PLAYWRIGHT_CHROMIUM_PATH names', async () => {
  vi.stubEnv('PLAYWRIGHT_CHROMIUM_PATH', process.execPath);
  const browser = await findBrowser();
  expect(browser.executablePath).toBe(process.execPath);
});

test('findBrowser() takes no other when that one is missing', async () => {
  vi.stubEnv('PLAYWRIGHT_CHROMIUM_PATH', '/nowhere/chromium');
  await expect(findBrowser()).rejects.toThrow('/nowhere/chromium');
});

test('findBrowser() leaves a temporary folder behind that exists, also when it unpacked a browser', async () => {
  await findBrowser();
  expect(existsSync(tmpdir())).toBe(true);
});
