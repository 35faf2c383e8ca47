import { readFileSync } from 'node:fs';
import type { Download, Page } from '@playwright/test';
import { drillOf, rightAnswer } from '../../simulator/index.ts';
import { parseAssignment } from '../../src/class/assignment.ts';
import { assignmentOfLink } from '../../src/class/assignment-link.ts';
import { gradeHandIn } from '../../src/class/grade-hand-in.ts';
import { parseHandIn } from '../../src/class/hand-in.ts';
import { optionsOf } from '../../src/text/question-options.ts';
import { violationsInLight } from './axe.ts';
import { course } from './course-pages.ts';
import { expect, test } from './fixture.ts';
import { pressButton } from './keyboard.ts';

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });
const textOf = async (download: Download): Promise<string> =>
  readFileSync((await download.path()) ?? '', 'utf8');

/** Presses something that hands a file over. @returns its text. */
async function saved(page: Page, name: string | RegExp): Promise<string> {
  const coming = page.waitForEvent('download');
  await pressButton(button(page, name));
  return textOf(await coming);
}

const QUIZ = course.quizzes.get('insert-or-send');
const question = QUIZ?.questions.find(({ id }) => id === 'sent-not-returned');
if (!QUIZ || !question) throw new Error('Expected the question that is assigned.');

test('from a link to a mark: made, done, left, gone on with, handed in, graded', async ({
  page,
  context,
}) => {
  await page.goto('/assign/');
  await page.getByLabel('Title').fill('Week three');
  await page.locator('summary', { hasText: /^Insert or send/ }).press('Enter');
  await page.getByLabel(new RegExp(`^${QUIZ.title}, question 1`)).check();
  await page.getByLabel('Concept').selectOption('pre-or-post');
  await pressButton(button(page, 'Add the drill'));
  await page.getByLabel(/^Points of Drill/).fill('3');
  await expect(page.getByText('2 tasks, 4 points in all.')).toBeVisible();
  expect(await violationsInLight(page)).toEqual([]);
  const file = await saved(page, 'Save as a file');
  await pressButton(button(page, 'Make a link'));
  const link = (await page.locator('.assign-link').textContent()) ?? '';
  const assignment = parseAssignment('the file', file);
  expect(await assignmentOfLink(new URL(link).hash)).toEqual(assignment);

  await page.goto(link);
  await page.getByLabel('Your learner code').fill('Ada-1');
  await page.keyboard.press('Enter');
  await expect(page.getByText('0 of 2 tasks passed')).toBeVisible();
  await expect(page.getByText('no network for them any more')).toBeVisible();
  await context.setOffline(true);
  await pressButton(button(page, /^Open Insert or send/));
  const answer = rightAnswer(question);
  const right = optionsOf(question).find(
    ({ id }) => answer?.kind === 'option' && id === answer.option,
  );
  await page.getByRole('radio', { name: right?.text ?? '' }).press('Space');
  await pressButton(button(page, 'Check'));
  await expect(page.getByText('1 of 2 tasks passed')).toBeVisible();
  await pressButton(button(page, /^Open Drill/));
  await pressButton(button(page, 'Check'));
  await expect(page.getByText(/^Attempt 1\. Not yet/)).toBeVisible();
  expect(await violationsInLight(page)).toEqual([]);

  await context.setOffline(false);
  await page.reload();
  await expect(page.getByText('1 of 2 tasks passed')).toBeVisible();
  await expect(page.getByText('1 attempt', { exact: false })).toHaveCount(2);
  const handedIn = parseHandIn('the file', await saved(page, 'Save the hand-in file'));
  await expect(page.getByText(/holds all that stands here/)).toBeVisible();
  const graded = gradeHandIn(assignment, course, handedIn);
  expect(graded).toMatchObject({ learner: 'ada-1', notes: [], share: graded.claimed });
  expect(graded.items[0]).toMatchObject({ share: 1, attempts: 1 });
  const [, drill] = assignment.items;
  if (drill?.task.kind !== 'drill' || drill.task.seeds.policy !== 'same')
    throw new Error('A drill.');
  const { concept, level, seeds } = drill.task;
  expect(handedIn.items.find(({ id }) => id === drill.id)?.seed).toBe(seeds.seed);
  expect(drillOf(concept, level, seeds.seed).seed).toBe(seeds.seed);

  await page.goto(link.replace('/assignment/', '/gradebook/'));
  await page
    .getByLabel('Hand-ins')
    .locator('input')
    .setInputFiles({
      name: 'ada.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(handedIn)),
    });
  const csv = await saved(page, 'CSV by learner and task');
  expect(csv.split('\r\n').filter((line) => line.startsWith('ada-1,'))).toHaveLength(2);
});

test('what is no assignment is refused in words, and what was open stays', async ({ page }) => {
  await page.goto('/assignment/#assignment=1.AAAA');
  await expect(page.getByRole('alert')).toContainText('The link');
  await page
    .getByLabel('Assignment', { exact: true })
    .locator('input[type=file]')
    .setInputFiles({
      name: 'mine.json',
      mimeType: 'application/json',
      buffer: Buffer.from('{"format": "tap-and-sum/setup"}'),
    });
  await expect(page.getByRole('alert')).toContainText(
    'expected "tap-and-sum/assignment", as an assignment has it, but found "tap-and-sum/setup"',
  );
});
