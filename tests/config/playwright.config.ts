import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';
import { findBrowser } from './find-browser.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

// Workers read this file again and inherit the environment: what is decided once is kept there.
const isFirstReading = process.env['SITE_TEST_PORT'] === undefined;
// Not 4321, where `npm start` serves, and another one for a run beside this one.
process.env['SITE_TEST_PORT'] ??= String(4400 + (process.pid % 500));
const port = process.env['SITE_TEST_PORT'];

const browser = await findBrowser();
// Goldens are of one browser, the packaged one: others draw letters a little differently.
process.env['SITE_TEST_BROWSER'] = browser.origin;
if (isFirstReading) console.log(`Browser: ${browser.executablePath} (${browser.origin})`);

export default defineConfig({
  testDir: '../site',
  testMatch: '**/*.spec.ts',
  snapshotPathTemplate: '{testDir}/goldens/{arg}{ext}',
  outputDir: `${root}/node_modules/.cache/playwright`,
  fullyParallel: true,
  forbidOnly: Boolean(process.env['CI']),
  workers: 2,
  retries: 0,
  reporter: [
    [process.stdout.isTTY ? 'line' : 'dot'],
    ['json', { outputFile: `${root}/node_modules/.cache/tests/browser.json` }],
  ],
  use: {
    baseURL: `http://127.0.0.1:${port}`,
    launchOptions: {
      executablePath: browser.executablePath,
      args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
      env: { ...process.env, ...browser.env },
    },
  },
  webServer: {
    // The site as it was built last: `npm run build` first.
    command: `node src/cli/astro.ts preview --ignore-lock --port ${port}`,
    cwd: root,
    url: `http://127.0.0.1:${port}/`,
    reuseExistingServer: false,
    stdout: 'ignore',
  },
});
