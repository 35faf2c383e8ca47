import type { Locator, Page } from '@playwright/test';
import { guardSentence, hearingSentence } from '../../src/text/index.ts';
import { violationsInBothThemes } from './axe.ts';
import { course, openTask } from './course-pages.ts';
import { expect, test } from './fixture.ts';
import { fieldOf, ownerSelect } from './keyboard.ts';

/** The players are made when Start is pressed; a busy machine takes its time over that. */
const STARTS_WITHIN = { timeout: 20_000 };

const rig = course.rigs.get('net-loft');
if (!rig) throw new Error('Expected the rig net-loft, but found none.');
const heard = (level: unknown, output = 'capture') =>
  hearingSentence(rig, { place: `out.${output}`, level } as Parameters<typeof hearingSentence>[1]);

/** Keeps all audio contexts of the page where {@link contextStates} finds them. */
async function keepContexts(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const kept: AudioContext[] = [];
    Reflect.set(globalThis, 'keptContexts', kept);
    globalThis.AudioContext = class extends AudioContext {
      constructor(options?: AudioContextOptions) {
        super(options);
        kept.push(this);
      }
    };
  });
}

const contextStates = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    (Reflect.get(globalThis, 'keptContexts') as AudioContext[]).map(({ state }) => state),
  );

async function openBench(page: Page): Promise<void> {
  await keepContexts(page);
  await page.goto('/bench/');
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  // What opens below a desk comes to life a little later than the desk.
  await page.waitForLoadState('networkidle');
}

const listenButton = (part: Page | Locator) =>
  part.getByRole('button', { name: 'Listen to this desk' });
const buttonNamed = (part: Page | Locator, name: string) =>
  part.getByRole('button', { name, exact: true });
const status = (part: Page | Locator) => part.locator('.listen [role="status"]');

async function start(part: Page | Locator): Promise<void> {
  await listenButton(part).click();
  await buttonNamed(part, 'Start').click();
}

test('nothing sounds before Start, and the caution is there first; by keyboard it starts and stops', async ({
  page,
}) => {
  await openBench(page);
  await listenButton(page).focus();
  await page.keyboard.press('Enter');
  await expect(listenButton(page)).toHaveAttribute('aria-expanded', 'true');
  await expect(page.locator('.listen .caution')).toContainText('Turn headphones and monitors down');
  await expect(buttonNamed(page, 'Start')).toBeVisible();
  expect(await contextStates(page)).toEqual([]);

  await page.keyboard.press('Tab');
  await expect(buttonNamed(page, 'Start')).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(status(page)).toHaveText(heard(0), STARTS_WITHIN);
  expect(await contextStates(page)).toEqual(['running']);
  await expect(buttonNamed(page, 'Stop')).toBeFocused();

  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  const volume = page.getByLabel('Volume');
  await expect(volume).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await expect(volume).toHaveAttribute('aria-valuetext', 'minus 16.0 decibels');

  await buttonNamed(page, 'Stop').focus();
  await page.keyboard.press('Space');
  await expect(status(page)).toHaveText('Stopped.');
  await expect.poll(() => contextStates(page)).toEqual(['closed']);
});

test('it says what is heard at another output, and follows the desk', async ({ page }) => {
  await openBench(page);
  await start(page);
  await expect(status(page)).toHaveText(heard(0), STARTS_WITHIN);
  await page.getByLabel('Listen at').selectOption('out.headphones-a');
  await expect(status(page)).toHaveText(heard(-Infinity, 'headphones-a'), STARTS_WITHIN);
  await ownerSelect({ page, id: 'bench' }).selectOption('desk.ch1');
  await fieldOf({ page, id: 'bench' }, 'desk.ch1.aux1').press('End');
  await expect(status(page)).toHaveText(heard(0, 'headphones-a'), STARTS_WITHIN);
  expect(await contextStates(page)).toEqual(['running']);
});

test('by a desk with a control room one listens there at first', async ({ page }) => {
  await page.goto('/bench/split-desk/');
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  // What opens below a desk comes to life a little later than the desk.
  await page.waitForLoadState('networkidle');
  await start(page);
  await expect(page.getByLabel('Listen at')).toHaveValue('desk.control.out');
  await expect(status(page)).toContainText('You hear the control room', { timeout: 20_000 });
});

test('what is too loud is turned down and says so, and a loop that grows is muted', async ({
  page,
}) => {
  await openBench(page);
  await start(page);
  await expect(status(page)).toHaveText(heard(0), STARTS_WITHIN);
  const desk = { page, id: 'bench' };
  await ownerSelect(desk).selectOption('desk.main');
  await fieldOf(desk, 'desk.main.fader').press('End');
  const words = guardSentence(-1 as Parameters<typeof guardSentence>[0]).split('.')[0] ?? '';
  await expect(page.locator('.listen')).toContainText(words);
  await ownerSelect(desk).selectOption('desk.ret1');
  await fieldOf(desk, 'desk.ret1.aux3').press('End');
  await expect(status(page)).toHaveText(heard(undefined), STARTS_WITHIN);
});

test('it stops when the page goes out of sight, and says so', async ({ page }) => {
  await openBench(page);
  await start(page);
  await expect(status(page)).toHaveText(heard(0), STARTS_WITHIN);
  await page.evaluate(() => {
    Object.defineProperty(document, 'hidden', { value: true, configurable: true });
    document.dispatchEvent(new Event('visibilitychange'));
  });
  await expect(status(page)).toHaveText('Stopped, since the page went out of sight.');
  await expect.poll(() => contextStates(page)).toEqual(['closed']);

  await page.evaluate(() => Reflect.deleteProperty(document, 'hidden'));
  await buttonNamed(page, 'Start').click();
  await expect(status(page)).toHaveText(heard(0), STARTS_WITHIN);
  await page.evaluate(() => dispatchEvent(new Event('pagehide')));
  await expect.poll(() => contextStates(page)).toEqual(['closed', 'closed']);
});

test('of two desks on a page only one sounds', async ({ page }) => {
  await keepContexts(page);
  const { section: task } = await openTask(page, 'Task', 'reverb-that-goes-too');
  const walk = page.locator('section.walk-through').first();
  await walk.scrollIntoViewIfNeeded();
  await expect(page.locator('astro-island[ssr]', { has: walk })).toHaveCount(0);
  await start(task);
  await expect(status(task)).toContainText('You hear');
  await start(walk);
  await expect(status(task)).toHaveText('Stopped, since another desk plays.');
  await expect(status(walk)).toContainText('You hear');
  await expect.poll(() => contextStates(page)).toEqual(['closed', 'running']);
});

test('a browser without Web Audio says so, and the desk works', async ({ page }) => {
  await page.addInitScript(() => Reflect.deleteProperty(globalThis, 'AudioContext'));
  await page.goto('/bench/');
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  // What opens below a desk comes to life a little later than the desk.
  await page.waitForLoadState('networkidle');
  await listenButton(page).click();
  await expect(page.locator('.listen')).toContainText('This browser has no Web Audio');
  await expect(buttonNamed(page, 'Start')).toHaveCount(0);
  await ownerSelect({ page, id: 'bench' }).selectOption('desk.ch1');
  await fieldOf({ page, id: 'bench' }, 'desk.ch1.fader').press('ArrowDown');
  await expect(buttonNamed(page, 'Undo')).toBeEnabled();
});

test('what one listens with is accessible, silent and sounding, wide and on a phone', async ({
  page,
}) => {
  await openBench(page);
  await listenButton(page).click();
  await expect(buttonNamed(page, 'Start')).toBeVisible();
  expect.soft(await violationsInBothThemes(page, '.listen')).toEqual([]);
  await buttonNamed(page, 'Start').click();
  await expect(status(page)).toHaveText(heard(0), STARTS_WITHIN);
  await page.getByText('What you hear').click();
  await page.setViewportSize({ width: 320, height: 640 });
  expect.soft(await violationsInBothThemes(page, '.listen')).toEqual([]);
  const sideways = () =>
    page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  await expect.poll(sideways).toBeLessThanOrEqual(0);
});
