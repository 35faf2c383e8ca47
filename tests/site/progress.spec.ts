import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { optionResults } from '../../simulator/index.ts';
import { NOTHING_KEPT } from '../../src/text/index.ts';
import { violationsInBothThemes } from './axe.ts';
import { course, openTask } from './course-pages.ts';
import { expect, test } from './fixture.ts';
import { keepNothing, store } from './kept-records.ts';

const DAY = 24 * 60 * 60 * 1000;
const START = Date.UTC(2026, 5, 1, 12);
const quiz = course.quizzes.get('before-or-after-the-fader');
if (!quiz) throw new Error('Expected the quiz before-or-after-the-fader, but found none.');
/** The first questions of the two concepts that are mistaken for one another. */
const [pre, post] = ['pre-fader', 'post-fader'].map((concept) =>
  quiz.questions.find((one) => one.concept === concept),
);
if (!pre || !post) throw new Error('Expected questions on both taps, but found none.');

/** Answers questions of the quiz, right or wrong. */
async function answerAll(page: Page, answers: readonly (readonly [typeof pre, boolean])[]) {
  await openTask(page, 'Quiz', quiz?.id ?? '');
  for (const [question, holds] of answers) {
    const form = page.locator(`form#quiz-${quiz?.id}-${question?.id}`);
    const option = question && optionResults(question).find((one) => one.holds === holds);
    await form.locator(`input[value="${option?.id}"]`).check();
    await form.getByRole('button', { name: 'Check', exact: true }).click();
    await expect(form).toContainText('1 attempt');
  }
}

const row = (page: Page, term: string) =>
  page
    .getByRole('region', { name: 'Concepts' })
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name: term, exact: true }) });

async function openProgress(page: Page): Promise<void> {
  await page.goto('/progress/');
  await expect(page.getByRole('heading', { name: 'Backup' })).toBeVisible();
}

const importText = (page: Page, name: string, text: string) =>
  page
    .getByLabel('Backup file')
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });

/** Exports everything. @returns the text of the file. */
async function exportText(page: Page): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Export everything', exact: true }).click(),
  ]);
  return readFileSync(await download.path(), 'utf8');
}

async function expectAccessible(page: Page, state: string): Promise<void> {
  expect.soft(await violationsInBothThemes(page, 'main'), state).toEqual([]);
}

test('what was passed is known, and due when its day comes, with what it is mistaken for beside it', async ({
  page,
}) => {
  test.setTimeout(60_000);
  await page.clock.setFixedTime(START);
  await answerAll(page, [[pre, true]]);
  await openProgress(page);
  await expect(row(page, 'pre-fader')).toContainText('Known');
  await expect(row(page, 'pre-fader')).toContainText('Within a day');
  await expect(row(page, 'post-fader')).toContainText('Not tried');
  await expect(page.locator('.review')).toHaveCount(0);

  await page.clock.setFixedTime(START + DAY / 2);
  await answerAll(page, [[post, true]]);
  await page.clock.setFixedTime(START + DAY);
  await openProgress(page);
  await expect(row(page, 'pre-fader')).toContainText('Due');
  await expect(row(page, 'post-fader')).toContainText('Known');
  const asked = page.locator('.review > li');
  await expect(asked.first()).toContainText('Asks for: pre-fader.');
  await expect(asked.nth(1)).toContainText('Asks for: post-fader, to tell it from pre-fader.');
  // Another task than the one that was passed.
  await expect(asked.first().getByRole('link')).not.toHaveAttribute(
    'href',
    new RegExp(`-${pre.id}$`),
  );
  await expectAccessible(page, 'a review');

  await asked.first().getByRole('link').click();
  await expect(page).toHaveURL(/lessons/);
  await page.goto('/lessons/');
  await expect(page.locator('li[data-lesson="before-or-after-the-fader"] .done')).toHaveText(
    /^2 of \d+ passed$/,
  );
});

test('a reset asks first and can be undone; a backup brings back what was reset', async ({
  page,
}) => {
  test.setTimeout(60_000);
  await answerAll(page, [
    [pre, true],
    [post, false],
  ]);
  await openProgress(page);
  const text = await exportText(page);
  await expect(page.getByText('Exported:')).toBeVisible();
  await expect(page.getByText('The last export was on')).toBeVisible();
  const unit = page.locator('details.unit', { hasText: 'Before or after the fader' });
  await unit.locator('summary').click();
  await expect(unit).toContainText('1 of');
  await expectAccessible(page, 'a lesson open');

  const reset = unit.getByRole('button', { name: 'Reset this lesson…' });
  const dialog = page.getByRole('dialog');
  await reset.click();
  await expectAccessible(page, 'asked');
  await page.keyboard.press('Escape');
  await expect(dialog).toHaveCount(0);
  await expect(unit).toContainText('1 of');

  await reset.click();
  await dialog.getByRole('button', { name: 'Reset', exact: true }).click();
  await expect(unit).toContainText('0 of');
  await expect(row(page, 'pre-fader')).toContainText('Not tried');
  await page.getByRole('button', { name: 'Undo the reset' }).click();
  await expect(unit).toContainText('1 of');
  await expect(row(page, 'pre-fader')).toContainText('Known');

  await page.getByRole('button', { name: 'Reset everything…' }).click();
  await dialog.getByRole('button', { name: 'Reset', exact: true }).click();
  await expect(unit).toContainText('0 of');
  for (let time = 0; time < 2; time += 1) {
    await importText(page, 'backup.json', text);
    await expect(page.getByText('Imported:')).toBeVisible();
    await expect(unit).toContainText('1 of');
  }
  const again = JSON.parse(await exportText(page));
  expect({ ...again, savedAt: 0 }).toEqual({ ...JSON.parse(text), savedAt: 0 });
});

test('one task can be reset alone', async ({ page }) => {
  await answerAll(page, [
    [pre, true],
    [post, true],
  ]);
  await openProgress(page);
  const unit = page.locator('details.unit', { hasText: 'Before or after the fader' });
  await unit.locator('summary').click();
  await unit
    .getByRole('row')
    .filter({ has: page.locator(`a[href$="-${pre.id}"]`) })
    .getByRole('button')
    .click();
  await page.getByRole('dialog').getByRole('button', { name: 'Reset', exact: true }).click();
  await expect(unit).toContainText('1 of');
  await expect(row(page, 'pre-fader')).toContainText('Not tried');
  await expect(row(page, 'post-fader')).toContainText('Known');
});

for (const [what, text] of [
  ['no JSON', 'a: [1'],
  ['another format', '{"format": "tap-and-sum/setup", "version": 1}'],
  ['a key that JavaScript treats specially', '{"__proto__": {"format": "tap-and-sum/progress"}}'],
  ['too long', ' '.repeat(4 * 1024 * 1024 + 1)],
] as const) {
  test(`a file that is ${what} changes nothing, and what is wrong with it is said`, async ({
    page,
  }) => {
    await openProgress(page);
    const before = await exportText(page);
    await importText(page, 'a-backup-with-a-long-name-that-was-renamed-by-hand.json', text);
    await expect(page.locator('ul.problem > li').first()).toContainText('expected');
    await expectAccessible(page, what);
    const after = JSON.parse(await exportText(page));
    expect({ ...after, savedAt: 0 }).toEqual({ ...JSON.parse(before), savedAt: 0 });
  });
}

test('records that do not fit are put aside with their reason, can be exported, and the rest opens', async ({
  page,
}) => {
  test.setTimeout(60_000);
  await answerAll(page, [[pre, true]]);
  await page.goto('/glossary/');
  await store(page, 'tasks', 'task-broken', { version: 1, id: 'task-broken', attempts: 'many' });
  await openProgress(page);
  const aside = page.locator('.aside > li');
  await expect(aside).toHaveCount(1);
  await expect(aside).toContainText('task task-broken at attempts: expected');
  await expect(row(page, 'pre-fader')).toContainText('Known');

  const backup = JSON.parse(await exportText(page));
  await importText(
    page,
    'mixed.json',
    JSON.stringify({ ...backup, tasks: [...backup.tasks, { version: 9, id: 'task-new' }] }),
  );
  await expect(page.getByText('1 record could not be read')).toBeVisible();
  await expect(aside).toHaveCount(2);
  await expectAccessible(page, 'records put aside');
  await page.setViewportSize({ width: 320, height: 640 });
  await expect
    .poll(() => page.evaluate(() => document.documentElement.scrollWidth - innerWidth))
    .toBeLessThanOrEqual(0);

  const [download] = await Promise.all([
    page.waitForEvent('download'),
    aside.first().getByRole('button', { name: 'Export' }).click(),
  ]);
  expect(JSON.parse(readFileSync(await download.path(), 'utf8'))).toMatchObject({
    data: { id: 'task-broken', attempts: 'many' },
  });
  await aside.first().getByRole('button', { name: 'Remove' }).click();
  await expect(aside).toHaveCount(1);
});

test('a backup can be dropped on the page', async ({ page }) => {
  await openProgress(page);
  const text = await exportText(page);
  const transfer = await page.evaluateHandle((content) => {
    const data = new DataTransfer();
    data.items.add(new File([content], 'dropped.json', { type: 'application/json' }));
    return data;
  }, text);
  await page.locator('.drop').dispatchEvent('drop', { dataTransfer: transfer });
  await expect(page.getByText('Imported: 0 records.')).toBeVisible();
});

test('where the browser keeps nothing, the page says so', async ({ page }) => {
  await keepNothing(page);
  await page.goto('/progress/');
  await expect(page.getByRole('alert')).toHaveText(NOTHING_KEPT);
  await expectAccessible(page, 'nothing is kept');
});
