import { type Locator, type Page, test as withoutRules } from '@playwright/test';
import { grade } from '../../simulator/index.ts';
import { verdictSentence } from '../../src/text/index.ts';
import { violationsInBothThemes } from './axe.ts';
import { course, openTask } from './course-pages.ts';
import { expect, test } from './fixture.ts';

/** The file of a part of the code: its name begins with that of its module. */
const fileOf = (module: string) => new RegExp(`/_astro/${module}\\.[^/]+\\.js$`);

/** Holds a file back until the returned function is called. */
async function holdBack(page: Page, module: string): Promise<() => void> {
  const { promise: released, resolve: release } = Promise.withResolvers<void>();
  await page.route(fileOf(module), async (route) => {
    await released;
    await route.continue();
  });
  return release;
}

/** Makes the browser say that it is offline before the page loads, until the returned function is called. */
async function beOffline(page: Page): Promise<() => Promise<void>> {
  await page.addInitScript(() => {
    Object.defineProperty(navigator, 'onLine', { value: false, configurable: true });
  });
  return () => page.evaluate(() => void Reflect.deleteProperty(navigator, 'onLine'));
}

const scenario = course.scenarios.get('reverb-that-goes-too');
if (!scenario) throw new Error('Expected the scenario reverb-that-goes-too, but found none.');
const atStart = `Attempt 1. ${verdictSentence(grade(scenario, scenario.start))}`;

const pressCheck = (task: Locator) =>
  task.getByRole('button', { name: 'Check', exact: true }).click();
const pressMute = (section: Locator) =>
  section.locator('.sheet button[data-address$=".mute"]').first().click();

async function openBench(page: Page): Promise<void> {
  await page.goto('/bench/');
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
}

test('a click in the moment in which a task comes to life is not lost', async ({ page }) => {
  await page.addInitScript(() => {
    // It is told before anything is painted.
    new MutationObserver((changes) => {
      for (const { target } of changes) {
        if (!(target instanceof Element) || target.hasAttribute('ssr')) continue;
        target.querySelector<HTMLButtonElement>('.task-bar .button-main')?.click();
      }
    }).observe(document, { subtree: true, attributeFilter: ['ssr'] });
  });
  const { section: task } = await openTask(page, 'Task', scenario.id);
  await expect(task.locator('.verdict-head')).toHaveText(atStart);
});

test.describe('while a part of the code is on its way', () => {
  test('Check gives its verdict as soon as it is there, of the desk as it stood then', async ({
    page,
  }) => {
    const release = await holdBack(page, 'judging');
    const { section: task } = await openTask(page, 'Task', scenario.id);
    await pressCheck(task);
    await expect(task).toContainText('The results come in a moment');
    await pressMute(task);
    release();
    await expect(task.locator('.verdict-head')).toHaveText(atStart);
    await expect(task.locator('.verdict-note')).toContainText('The desk was moved since');
    await expect(task).not.toContainText('in a moment');
  });

  test('a click at a button that the server rendered is done as soon as it is there', async ({
    page,
  }) => {
    const release = await holdBack(page, 'SectionButtons');
    await openBench(page);
    const strips = page.getByRole('button', { name: 'Strips 1–8' });
    await strips.click();
    await expect(strips).toHaveAttribute('aria-pressed', 'true');
    release();
    await expect(strips).toHaveAttribute('aria-pressed', 'false');
    await expect(page.locator('.folded')).toHaveCount(1);
  });

  test('keys that open a field for a figure are in it as soon as it is there', async ({ page }) => {
    const release = await holdBack(page, 'FigureEntry');
    await openBench(page);
    const fader = page.locator('.sheet [data-address$=".fader"]');
    await fader.focus();
    await page.keyboard.type('-7,5');
    release();
    const entry = page.getByRole('textbox', { name: 'fader in dB' });
    await expect(entry).toHaveValue('-7,5');
    await expect(entry).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(fader).toHaveAttribute('aria-valuetext', 'minus 7.5 decibels');
  });

  test('a figure that was typed and taken by then is set as soon as its field is there', async ({
    page,
  }) => {
    const release = await holdBack(page, 'FigureEntry');
    await openBench(page);
    const fader = page.locator('.sheet [data-address$=".fader"]');
    await fader.focus();
    await page.keyboard.type('-7,5 dB');
    await page.keyboard.press('Enter');
    release();
    await expect(fader).toHaveAttribute('aria-valuetext', 'minus 7.5 decibels');
    await expect(page.getByRole('button', { name: 'Type over fader' })).toBeFocused();
  });

  test('an answer is judged as soon as it is there', async ({ page }) => {
    const release = await holdBack(page, 'judging');
    const { section: quiz } = await openTask(page, 'Quiz', 'insert-or-send');
    const question = quiz.locator('form').first();
    await question.getByRole('radio').first().check();
    await pressCheck(question);
    await expect(question).toContainText('The results come in a moment');
    release();
    await expect(question.getByRole('status')).toContainText('Attempt 1.');
  });

  test('ways stay as the page was rendered, and one that was opened stays open', async ({
    page,
  }) => {
    const release = await holdBack(page, 'PathTable');
    const { section: task } = await openTask(page, 'Task', scenario.id);
    const way = task.locator('.paths details').first();
    const before = await task.locator('.paths').textContent();
    await way.locator('summary').click();
    const fetched = page.waitForResponse(fileOf('PathTable'));
    release();
    await fetched;
    // It brings more files of its own before it comes to life.
    await page.waitForLoadState('networkidle');
    await expect(task.locator('.paths')).toHaveText(before ?? '');
    await task.locator('.sheet input[type="range"]').first().press('ArrowDown');
    await expect(task.locator('.paths')).not.toHaveText(before ?? '');
    await expect(way).toHaveAttribute('open');
  });

  test('ways that hold no longer give way to a word that they come', async ({ page }) => {
    const release = await holdBack(page, 'PathTable');
    await openBench(page);
    const ways = page.getByRole('region', { name: 'Ways as text' });
    await expect(ways).toContainText('Cello reaches Capture');
    await page.getByLabel('Follow').selectOption('alto');
    await expect(ways).toContainText('The ways come in a moment');
    await expect(ways).not.toContainText('Cello');
    release();
    await expect(ways).toContainText('Alto reaches Capture');
    await expect(ways).not.toContainText('in a moment');
  });

  test('a step of a walk-through says what is heard as soon as it is there', async ({ page }) => {
    const release = await holdBack(page, 'HeardList');
    const { section: walk } = await openTask(page, 'WalkThrough', 'insert-or-send');
    await walk.getByRole('button', { name: 'Next step' }).click();
    await expect(walk.locator('.step')).toContainText('The levels come in a moment');
    await expect(walk.locator('.heard > li')).toHaveCount(0);
    release();
    await expect(walk.locator('.heard > li')).not.toHaveCount(0);
  });
});

test.describe('without a connection', () => {
  const tryAgain = (section: Locator) => section.getByRole('button', { name: 'Try again' });

  for (const [again, attempt] of [
    ['Try again', 1],
    ['Check', 2],
  ] as const) {
    test(`Check says what is missing, and ${again} gives the verdict later`, async ({ page }) => {
      const connect = await beOffline(page);
      const { section: task } = await openTask(page, 'Task', scenario.id);
      await pressCheck(task);
      const results = task.getByRole('alert').filter({ hasText: 'The results' });
      await expect(results).toContainText('could not be fetched');
      expect(await violationsInBothThemes(page, '.problem')).toEqual([]);
      await connect();
      const button = again === 'Check' ? task.locator('.task-bar') : results;
      await button.getByRole('button', { name: again, exact: true }).click();
      await expect(task.locator('.verdict-head')).toHaveText(
        atStart.replace('Attempt 1', `Attempt ${attempt}`),
      );
      await expect(results).toHaveCount(0);
    });
  }

  test('an answer is kept, and judged later', async ({ page }) => {
    const connect = await beOffline(page);
    const { section: quiz } = await openTask(page, 'Quiz', 'insert-or-send');
    const question = quiz.locator('form').first();
    const option = question.getByRole('radio').first();
    await option.check();
    await pressCheck(question);
    await expect(question.getByRole('alert')).toContainText('could not be fetched');
    await connect();
    await tryAgain(question).click();
    await expect(question.getByRole('status')).toContainText('Attempt 1.');
    await expect(option).toBeChecked();
  });

  test('the desk goes on, and ways and findings come later, of the desk as it stands then', async ({
    page,
  }) => {
    const connect = await beOffline(page);
    await openBench(page);
    const ways = page.getByRole('region', { name: 'Ways as text' });
    const comes = (what: string) => page.getByRole('alert').filter({ hasText: what });
    await expect(ways).toContainText('The ways could not be fetched');
    await expect(ways).toContainText('Cello reaches Capture');
    await page.locator('.sheet select').first().selectOption('desk.ch1');
    await page.locator('.sheet [data-address="desk.ch1.sub1"]').first().click();
    await expect(ways).not.toContainText('Cello');
    const names = page.locator('.desk-drawing .name');
    await expect(names.filter({ hasText: 'Plate return' })).toBeVisible();
    await expect(names.filter({ hasText: 'Box main mix' })).toHaveCount(0);
    await connect();
    const late = ['The findings', 'The measurements', 'The recall sheet', 'The box and the rack'];
    for (const one of [ways, ...late.map(comes)]) await tryAgain(one).click();
    await expect(names.filter({ hasText: 'Box main mix' })).toHaveCount(1);
    await expect(ways).toContainText('Cello reaches Capture');
    await expect(page.locator('.findings')).toContainText('Tenor arrives twice in Capture');
    await expect(tryAgain(page.locator('main'))).toHaveCount(0);
    await expect(page.getByRole('button', { name: 'Undo', exact: true })).toBeEnabled();
  });

  test('the setup is kept, and can be saved later', async ({ page, context }) => {
    await openBench(page);
    await page.waitForLoadState('networkidle');
    await context.setOffline(true);
    const save = page.getByRole('button', { name: 'Save the setup' });
    await save.click();
    await expect(page.locator('.problem')).toContainText('could not be fetched');
    await context.setOffline(false);
    const download = page.waitForEvent('download');
    await save.click();
    await download;
    await expect(page.locator('.problem')).toHaveCount(0);
  });
});

withoutRules('a fetch that fails is told, and the page keeps to its policy', async ({ page }) => {
  const refused: string[] = [];
  page.on('console', (message) => {
    if (/policy|trusted/i.test(message.text())) refused.push(message.text());
  });
  await page.route(fileOf('judging'), (route) => route.abort());
  const { section: task } = await openTask(page, 'Task', scenario.id);
  await pressCheck(task);
  await expect(task.locator('.problem')).toContainText('The results could not be fetched');
  expect(refused).toEqual([]);
});
