import type { Page } from '@playwright/test';
import { type Db, optionResults, type Question } from '../../simulator/index.ts';
import { NOTHING_KEPT, spokenGain } from '../../src/text/index.ts';
import { violationsInBothThemes } from './axe.ts';
import { course, openTask, type TaskOnPage } from './course-pages.ts';
import { expect, test } from './fixture.ts';
import { keepNothing, store, stored } from './kept-records.ts';
import { fieldOf, ownerSelect } from './keyboard.ts';
import { answersTo, giveAnswer } from './quiz-answers.ts';

const TASK = 'reverb-that-goes-too';
const KEY = `task-${TASK}`;
const quiz = course.quizzes.get('insert-or-send');
const [question] = quiz?.questions ?? [];
if (!quiz || !question) throw new Error('Expected the quiz insert-or-send, but found none.');
const QUESTION = `quiz-${quiz.id}-${question.id}`;

const openScenario = (page: Page) => openTask(page, 'Task', TASK);
const check = ({ section }: TaskOnPage) =>
  section.getByRole('button', { name: 'Check', exact: true }).click();
const keptWord = ({ section }: TaskOnPage) => section.locator('.kept-word');

/** Sets the level of the fourth strip's send to the third aux, and waits until that is kept. */
async function setSend(task: TaskOnPage, level: string): Promise<void> {
  await ownerSelect(task).selectOption('desk.ch4');
  const field = fieldOf(task, 'desk.ch4.aux3');
  await field.focus();
  await task.page.keyboard.type(level);
  await task.page.keyboard.press('Enter');
  await expect
    .poll(async () =>
      (await stored(task.page, 'tasks', KEY))?.drafts.map(({ text }) => text).join(),
    )
    .toContain(`"desk.ch4.aux3":${level}`);
}

async function expectSend(task: TaskOnPage, level: string): Promise<void> {
  await ownerSelect(task).selectOption('desk.ch4');
  await expect(fieldOf(task, 'desk.ch4.aux3')).toHaveAttribute('aria-valuetext', level);
}

/** Chooses an option of the first question and has it checked. */
async function answerFirst(page: Page, holds: boolean): Promise<void> {
  const form = page.locator(`form#${QUESTION}`);
  await form.locator(`input[value="${optionOf(question as Question, holds)}"]`).check();
  await form.getByRole('button', { name: 'Check', exact: true }).click();
  await expect(form.getByRole('status')).toContainText(holds ? 'Passed' : 'Not yet');
}

function optionOf(asked: Question, holds: boolean): string {
  const option = optionResults(asked).find((one) => one.holds === holds);
  if (!option) throw new Error(`Expected an option that ${holds ? 'holds' : 'fails'}.`);
  return option.id;
}

test.describe('a reload in the middle', () => {
  test('a task stands as it was left: its board, its hints, its attempts', async ({ page }) => {
    const task = await openScenario(page);
    await task.section.getByRole('button', { name: /hint/i }).click();
    await check(task);
    await expect(task.section.locator('.verdict-head')).toContainText('Attempt 1');
    await setSend(task, '-7.5');
    await page.reload();
    const again = await openScenario(page);
    await expect(keptWord(again)).toContainText('It stands as you left it on');
    await expect(keptWord(again)).toContainText('1 attempt, 1 hint');
    await expect(again.section.locator('.hints > li')).toHaveCount(1);
    await expectSend(again, spokenGain(-7.5 as Db));
    expect(Object.values((await stored(page, 'tasks', KEY))?.hints ?? {})).toEqual([1]);

    await again.section.getByRole('button', { name: 'Start again' }).click();
    await expectSend(again, spokenGain(-Infinity as Db));
  });

  test('an answer stays chosen until it is right; a right one is not filled in again', async ({
    page,
  }) => {
    await openTask(page, 'Quiz', quiz.id);
    await answerFirst(page, false);
    const draft = async () => (await stored(page, 'tasks', QUESTION))?.drafts[0];
    await expect.poll(async () => (await draft())?.text).toContain(optionOf(question, false));
    await page.reload();
    await openTask(page, 'Quiz', quiz.id);
    const form = page.locator(`form#${QUESTION}`);
    await expect(form.locator(`input[value="${optionOf(question, false)}"]`)).toBeChecked();

    await answerFirst(page, true);
    await expect.poll(async () => (await draft())?.isFinished).toBe(true);
    await page.reload();
    await openTask(page, 'Quiz', quiz.id);
    await expect(form).toContainText('2 attempts');
    await expect(form.locator('input:checked')).toHaveCount(0);
  });

  test('an attempt counts though the page is left in the very moment', async ({ page }) => {
    await openTask(page, 'Quiz', quiz.id);
    await answerFirst(page, false);
    const form = page.locator(`form#${QUESTION}`);
    await form.locator(`input[value="${optionOf(question as Question, true)}"]`).check();
    await Promise.all([
      page.waitForEvent('load'),
      form.getByRole('button', { name: 'Check', exact: true }).evaluate((button) => {
        (button as HTMLButtonElement).click();
        location.reload();
      }),
    ]);
    // What the page before did not come to, this one does.
    await openTask(page, 'Quiz', quiz.id);
    await expect(form).toContainText('2 attempts');
    const record = await stored(page, 'tasks', QUESTION);
    expect(Object.values(record?.attempts ?? {})).toEqual([2]);
    expect(record?.passedAt).toBeDefined();
  });

  for (const kind of ['predict', 'outputs', 'order'] as const) {
    test(`an answer to a question of the kind ${kind} comes back as it was given`, async ({
      page,
    }) => {
      const home = [...course.quizzes.values()].find(({ questions }) =>
        questions.some((one) => one.kind === kind),
      );
      const asked = home?.questions.find((one) => one.kind === kind);
      if (!home || !asked) throw new Error(`Expected a question of the kind ${kind}.`);
      const key = `quiz-${home.id}-${asked.id}`;
      const form = page.locator(`form#${key}`);
      const [wrong] = answersTo(asked);
      await openTask(page, 'Quiz', home.id);
      await expect(form).toBeVisible();
      await giveAnswer(form, asked, wrong);
      const kept = async () => (await stored(page, 'tasks', key))?.drafts[0]?.text;
      await expect.poll(kept).toContain(JSON.stringify(wrong));
      await page.reload();
      await openTask(page, 'Quiz', home.id);
      await expect(form.getByRole('button', { name: 'Check', exact: true })).toBeEnabled();
      await form.getByRole('button', { name: 'Check', exact: true }).click();
      await expect(form.getByRole('status').last()).toContainText('Not yet');
      await expect.poll(kept).toContain(JSON.stringify(wrong));
    });
  }

  test('a room of the bench stands as it was left, and asks nothing when it is left', async ({
    page,
  }) => {
    const asked: string[] = [];
    page.on('dialog', async (dialog) => {
      asked.push(dialog.type());
      await dialog.accept();
    });
    await page.goto('/bench/');
    await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
    const mute = page.locator('.sheet button[data-address$=".mute"]').first();
    await mute.click();
    await expect
      .poll(async () => (await stored(page, 'benches', 'net-loft'))?.drafts[0]?.text)
      .toContain('.mute');
    await page.reload();
    await expect(page.locator('.kept-word')).toContainText('It stands as you left it on');
    await expect(mute).toHaveAttribute('aria-pressed', 'true');
    expect(asked).toEqual([]);
  });

  test('a draft that does not fit its task is put aside, and the task begins anew', async ({
    page,
  }) => {
    const first = await openScenario(page);
    await setSend(first, '-7.5');
    const record = await stored(page, 'tasks', KEY);
    const drafts = [{ ...record?.drafts[0], text: '{"board":{"desk.none.fader":-6}}' }];
    await page.goto('/glossary/');
    await store(page, 'tasks', KEY, { ...record, drafts });
    const task = await openScenario(page);
    await expect.poll(async () => (await stored(page, 'tasks', KEY))?.drafts).toEqual([]);
    await expectSend(task, spokenGain(-Infinity as Db));
    await page.goto('/progress/');
    await expect(page.locator('.aside > li')).toContainText(`draft of ${KEY}`);
  });
});

test('two tabs: neither writes over what the other left, and each can take it up', async ({
  page,
  context,
}) => {
  test.setTimeout(60_000);
  const other = await context.newPage();
  const [one, two] = [await openScenario(page), await openScenario(other)];
  await setSend(one, '-7.5');
  await setSend(two, '-12');
  await check(one);
  await expect(one.section.locator('.verdict-head')).toContainText('Attempt 1');
  await check(two);
  await expect(two.section.locator('.verdict-head')).toContainText('Attempt 1');
  await expect
    .poll(async () => Object.values((await stored(page, 'tasks', KEY))?.attempts ?? {}))
    .toEqual([2]);
  const texts = async () =>
    (await stored(page, 'tasks', KEY))?.drafts.map(({ text }) => text) ?? [];
  await expect
    .poll(async () => (await texts()).filter((text) => /aux3":(-7.5|-12)\b/.test(text)).length)
    .toBe(2);

  await expect(keptWord(one).last()).toContainText('Another try');
  expect(await violationsInBothThemes(page, `section.task:has(#${one.id}-title)`)).toEqual([]);
  await one.section.getByRole('button', { name: 'Go on with that' }).click();
  await expectSend(one, spokenGain(-12 as Db));
});

test('where the browser keeps nothing, a task says so and goes on, and the bench asks before it is left', async ({
  page,
}) => {
  await keepNothing(page);
  const task = await openScenario(page);
  await expect(keptWord(task)).toHaveText(NOTHING_KEPT);
  expect(await violationsInBothThemes(page, `section.task:has(#${task.id}-title)`)).toEqual([]);
  await check(task);
  await expect(task.section.locator('.verdict-head')).toContainText('Attempt 1');

  const asked: string[] = [];
  page.on('dialog', async (dialog) => {
    asked.push(dialog.type());
    await dialog.accept();
  });
  await page.goto('/bench/');
  await expect(page.locator('.kept-word')).toHaveText(NOTHING_KEPT);
  await page.locator('.sheet button[data-address$=".mute"]').first().click();
  await page.getByRole('link', { name: 'Glossary' }).click();
  await expect(page).toHaveURL(/glossary/);
  expect(asked).toEqual(['beforeunload']);
});

test('after the first task that is passed, the browser is asked once to keep it all', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const asked = Number(sessionStorage.getItem('asked') ?? 0);
    navigator.storage.persist = async () => {
      sessionStorage.setItem('asked', String(asked + 1));
      return true;
    };
  });
  const asked = () => page.evaluate(() => sessionStorage.getItem('asked'));
  const form = page.locator(`form#${QUESTION}`);
  await openTask(page, 'Quiz', quiz.id);
  await answerFirst(page, false);
  await expect(form).toContainText('1 attempt');
  expect(await asked()).toBeNull();
  await answerFirst(page, true);
  await expect.poll(asked).toBe('1');
  await page.reload();
  await openTask(page, 'Quiz', quiz.id);
  await answerFirst(page, true);
  await expect(form).toContainText('3 attempts');
  expect(await asked()).toBe('1');
});
