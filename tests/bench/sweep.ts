import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page } from '@playwright/test';
import { findBrowser } from '../config/find-browser.ts';
import { paceMs, quantile } from './measure.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const PORT = 4399;
/** By how much the processor is slowed down, so that a fast machine stands for a phone. */
const SLOWER = 4;
const MOVES = 60;
/** Sweeps of each desk, since one alone goes by what else the machine does at the time. */
export const SWEEPS = 5;

/** A desk to sweep: the page, the selector of the desk, and which of its faders is taken. */
export interface SweptPage {
  readonly address: string;
  readonly desk: string;
  readonly fader: number;
}

/** All figures of a sheet as one text. */
const FIGURES = (figures: Element[]) => figures.map(({ textContent }) => textContent).join(' ');

/** What a sweep came to, in milliseconds from a move of the pointer to the frame that shows it. */
export interface Sweep {
  readonly median: number;
  readonly p95: number;
}

/** Of all sweeps of a desk, by their 95th percentiles: the least, and the one in the middle. */
export interface Sweeps {
  readonly quietest: Sweep;
  readonly middle: Sweep;
  /** By how much the machine was slower before or after one of them than before or after another, as a ratio. */
  readonly unrest: number;
}

/**
 * Drags the fader of a strip up and down in the drawing, as a hand would, on the built site in a Chromium
 * whose processor is slowed down four times. Each move is timed from its dispatch by the browser to the
 * end of the frame that shows it: a task that is posted from the animation frame after it. Each sweep is
 * made on a page that was just opened, where the fader was touched once, so that its strip is open.
 *
 * @returns the sweeps of each page; nothing, with the reason, where there is no browser or no built site.
 */
export async function sweep(
  pages: readonly SweptPage[],
): Promise<readonly Sweeps[] | { readonly skipped: string }> {
  if (!existsSync(`${ROOT}/dist/index.html`)) return { skipped: 'no built site: npm run build' };
  const found = await findBrowser().catch((error: unknown) => String(error));
  if (typeof found === 'string') return { skipped: found };
  const server = await serve();
  let browser: Browser | undefined;
  try {
    browser = await chromium.launch({
      executablePath: found.executablePath,
      args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
      env: { ...process.env, ...found.env } as Record<string, string>,
    });
    const sweeps: Sweeps[] = [];
    for (const swept of pages) {
      const ofPage: Sweep[] = [];
      const paces = [paceMs()];
      for (let times = 0; times < SWEEPS; times += 1) {
        const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
        ofPage.push(await sweepPage(page, swept));
        await page.close();
        paces.push(paceMs());
      }
      sweeps.push({ ...ofAll(ofPage), unrest: Math.max(...paces) / Math.min(...paces) });
    }
    return sweeps;
  } finally {
    await browser?.close();
    server.kill();
  }
}

function ofAll(sweeps: readonly Sweep[]): Omit<Sweeps, 'unrest'> {
  const sorted = sweeps.toSorted((one, other) => one.p95 - other.p95);
  const [quietest, middle] = [sorted[0], sorted[Math.floor(sorted.length / 2)]];
  if (!quietest || !middle) throw new Error('Expected at least one sweep, found none.');
  return { quietest, middle };
}

async function sweepPage(page: Page, { address, desk, fader }: SweptPage): Promise<Sweep> {
  await page.goto(`http://127.0.0.1:${PORT}${address}`);
  const drawing = page.locator(desk).locator('.desk-drawing').first();
  await drawing.scrollIntoViewIfNeeded();
  await drawing.evaluate(
    (element) =>
      new Promise<void>((resolve) => {
        const wait = () => {
          if (element.closest('astro-island[ssr]')) setTimeout(wait, 50);
          else resolve();
        };
        wait();
      }),
  );
  // What comes later is there then, so that it is swept with the rest.
  await page.waitForTimeout(1500);
  const cap = page.locator(desk).locator('.hit-fader').nth(fader);
  await cap.scrollIntoViewIfNeeded();
  await page.waitForTimeout(500);
  const box = await cap.boundingBox();
  if (!box) throw new Error(`Expected a fader on ${address} in ${desk}, found none.`);
  const client = await page.context().newCDPSession(page);
  await client.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  await page.evaluate(() => {
    const times: number[] = [];
    Object.assign(window, { sweepTimes: times });
    window.addEventListener(
      'pointermove',
      (event) => {
        const begun = event.timeStamp;
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => times.push(performance.now() - begun);
          port2.postMessage(undefined);
        });
      },
      { capture: true },
    );
  });
  const x = box.x + box.width / 2;
  const at = (share: number) => box.y + box.height * (0.25 + 0.5 * share);
  await page.mouse.move(x, at(0));
  await page.mouse.down();
  await page.mouse.up();
  await page.waitForTimeout(1000);
  await page.mouse.down();
  await page.evaluate(() => Reflect.get(window, 'sweepTimes').splice(0));
  const shown = new Set<string>();
  const figure = page.locator(desk).locator('.sheet .figure-field');
  for (let move = 0; move < MOVES; move += 1) {
    await page.mouse.move(x, at((1 - Math.cos((move / MOVES) * 4 * Math.PI)) / 2));
    await page.waitForTimeout(16);
    if (move % 7 === 0) shown.add((await figure.evaluateAll(FIGURES)) as string);
  }
  await page.mouse.up();
  if (shown.size < 3) throw new Error(`Expected a fader that moves on ${address}, found none.`);
  const times: number[] = await page.evaluate(() => Reflect.get(window, 'sweepTimes'));
  await client.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  return { median: quantile(0.5, times), p95: quantile(0.95, times) };
}

/** Serves the built site. @returns the process, which has to be ended. */
async function serve(): Promise<ChildProcess> {
  const server = spawn(
    process.execPath,
    ['src/cli/astro.ts', 'preview', '--ignore-lock', '--port', String(PORT)],
    { cwd: ROOT, stdio: 'ignore' },
  );
  for (let tries = 0; tries < 100; tries += 1) {
    await new Promise((resolve) => setTimeout(resolve, 100));
    const answers = await fetch(`http://127.0.0.1:${PORT}/`).then(
      ({ ok }) => ok,
      () => false,
    );
    if (answers) return server;
  }
  server.kill();
  throw new Error(`Expected the site on port ${PORT} within ten seconds, found no answer.`);
}
