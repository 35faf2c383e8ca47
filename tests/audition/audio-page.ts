import { readFileSync } from 'node:fs';
import { stripTypeScriptTypes } from 'node:module';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from '@playwright/test';
import type { Browser as FoundBrowser } from '../config/find-browser.ts';

/** Where the page finds the modules of this project. Nothing is asked of any network. */
const HOME = 'http://127.0.0.1/';
const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** A page in a browser of its own that calls functions of this project. */
export interface AudioPage {
  /**
   * Calls a function of a module there. The module and all that it imports may not need a package.
   *
   * @param module its path from the root of the project.
   */
  readonly call: <Argument, Result>(
    module: string,
    name: string,
    argument: Argument,
  ) => Promise<Result>;
  readonly close: () => Promise<void>;
}

export async function openAudioPage(found: FoundBrowser): Promise<AudioPage> {
  const args = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const env = { ...(process.env as Record<string, string>), ...found.env };
  const browser: Browser = await chromium.launch({
    executablePath: found.executablePath,
    args,
    env,
  });
  const page = await browser.newPage();
  await page.route(`${HOME}**`, (route) => {
    const path = new URL(route.request().url()).pathname.slice(1);
    if (path === '') return route.fulfill({ contentType: 'text/html', body: '<title>Audio' });
    const body = stripTypeScriptTypes(readFileSync(`${ROOT}${path}`, 'utf8'));
    return route.fulfill({ contentType: 'text/javascript', body });
  });
  await page.goto(HOME);
  return {
    // As text, since an import that is written here would be taken for one of this file.
    call: (module, name, argument) =>
      page.evaluate(
        `import('/${module}').then((module) => module.${name}(${JSON.stringify(argument)}))`,
      ),
    close: () => browser.close(),
  };
}
