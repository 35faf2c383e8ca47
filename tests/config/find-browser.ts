import { existsSync } from 'node:fs';
import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';

/** A Chromium to run the browser tests in. */
export interface Browser {
  readonly executablePath: string;
  /** Where it comes from, for a person. */
  readonly origin: string;
  /** What it needs in its environment besides what is there. */
  readonly env: Readonly<Record<string, string>>;
}

const SYSTEM_NAMES = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];

/** Where the packaged browser is unpacked, once for each installation. */
const UNPACKED = fileURLToPath(new URL('../../node_modules/.cache/browser', import.meta.url));

/**
 * Where the packaged browser finds its fonts. Its own file names fixed folders outside the project,
 * and a Chromium that finds no font at all does not say so but crashes.
 */
const FONTS_CONF = `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${UNPACKED}/fonts</dir>
  <cachedir>${UNPACKED}/fonts-cache</cachedir>
</fontconfig>
`;

/**
 * Finds a Chromium: the one that `PLAYWRIGHT_CHROMIUM_PATH` names, else Playwright's own, else on Linux
 * x64 the one inside an npm package, which is unpacked on first use, else the system's. The packaged one
 * is the same everywhere, and twice as fast as some that systems bring.
 *
 * @throws Error when `PLAYWRIGHT_CHROMIUM_PATH` names no file, or when there is no browser at all.
 */
export async function findBrowser(): Promise<Browser> {
  const named = process.env['PLAYWRIGHT_CHROMIUM_PATH'];
  if (named) {
    if (existsSync(named)) return plain(named, 'named by PLAYWRIGHT_CHROMIUM_PATH');
    throw new Error(`PLAYWRIGHT_CHROMIUM_PATH must name a browser, but there is no file ${named}.`);
  }
  if (existsSync(chromium.executablePath())) {
    return plain(chromium.executablePath(), "Playwright's own");
  }
  if (process.platform === 'linux' && process.arch === 'x64') return unpackedBrowser();
  const installed = (process.env['PATH'] ?? '')
    .split(delimiter)
    .flatMap((folder) => SYSTEM_NAMES.map((name) => join(folder, name)))
    .find((path) => existsSync(path));
  if (installed) return plain(installed, "the system's");
  throw new Error(
    [
      'NO BROWSER for the browser tests.',
      'Looked for PLAYWRIGHT_CHROMIUM_PATH, for the one of Playwright, and on the PATH for',
      `${SYSTEM_NAMES.join(', ')}. The packaged one runs on Linux x64 only.`,
      'Install one with: npx playwright install chromium',
    ].join('\n'),
  );
}

const plain = (executablePath: string, origin: string): Browser => ({
  executablePath,
  origin,
  env: {},
});

/** The packaged browser, with the libraries and fonts that a bare machine lacks. */
async function unpackedBrowser(): Promise<Browser> {
  if (!existsSync(UNPACKED)) {
    // The package unpacks into the system's temporary folder. Give it one of its own, and move that
    // into place when it is whole: an interrupted run then leaves nothing half done behind.
    const partial = `${UNPACKED}.${process.pid}`;
    await mkdir(partial, { recursive: true });
    await unpackInto(partial);
    await writeFile(join(partial, 'fonts', 'fonts.conf'), FONTS_CONF);
    await rename(partial, UNPACKED).catch(() => rm(partial, { recursive: true }));
  }
  return {
    executablePath: join(UNPACKED, 'chromium'),
    origin: 'from the package @sparticuz/chromium',
    env: {
      FONTCONFIG_PATH: join(UNPACKED, 'fonts'),
      LD_LIBRARY_PATH: join(UNPACKED, 'al2023', 'lib'),
    },
  };
}

/** Unpacks the packaged browser, and leaves the environment of this process as it was. */
async function unpackInto(folder: string): Promise<void> {
  const meanwhile = {
    TMPDIR: folder,
    // Without this the package leaves its libraries out. It is read when the package is imported.
    AWS_LAMBDA_JS_RUNTIME: 'nodejs24.x',
  };
  const before = { ...process.env };
  Object.assign(process.env, meanwhile);
  try {
    const { default: packaged } = await import('@sparticuz/chromium');
    await packaged.executablePath();
  } finally {
    // Variable by variable: another object in place of `process.env` would leave the real ones as they are,
    // and whatever asks the system for its temporary folder would be sent into one that has moved away.
    for (const name of new Set([...Object.keys(process.env), ...Object.keys(before)])) {
      const value = before[name];
      if (value === undefined) delete process.env[name];
      else process.env[name] = value;
    }
  }
}
