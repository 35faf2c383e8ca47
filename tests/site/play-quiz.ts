import type { Locator, Page } from '@playwright/test';
import {
  type OptionResult,
  optionResults,
  type Question,
  type Quiz,
} from '../../simulator/index.ts';
import { resultWord } from '../../src/text/index.ts';
import { optionsOf } from '../../src/text/question-options.ts';
import { plain, seeAlive, taskOnPage } from './course-pages.ts';
import { expect } from './fixture.ts';
import { pressButton, tabTo } from './keyboard.ts';

/** What a person reads beside an option: its statement, or its number. */
const textOf = (question: Question, { id }: OptionResult): string =>
  optionsOf(question).find((option) => option.id === id)?.text ?? '';

/** Goes into the radio buttons of a question and on by arrows to the option with this text. */
async function choose(form: Locator, text: string): Promise<void> {
  const { keyboard } = form.page();
  const radios = form.getByRole('radio');
  const chosen = radios.and(form.page().locator(':checked'));
  const isFresh = (await chosen.count()) === 0;
  await tabTo(isFresh ? radios.first() : chosen);
  if (isFresh) await keyboard.press('Space');
  const wanted = form.getByRole('radio', { name: text, exact: true });
  for (let press = await radios.count(); press > 0; press -= 1) {
    if (await wanted.isChecked()) return;
    await keyboard.press('ArrowDown');
  }
  await expect(wanted).toBeChecked();
}

async function answerBoth(form: Locator, question: Question): Promise<void> {
  await expect(form.locator('legend')).toContainText(plain(question.ask));
  const options = optionResults(question);
  const check = form.getByRole('button', { name: 'Check', exact: true });
  await expect(form.getByRole('radio')).toHaveCount(options.length);
  await expect(check).toBeDisabled();

  const wrong = options.find(({ holds }) => !holds);
  const right = options.find(({ holds }) => holds);
  let attempt = 0;
  for (const option of [wrong, right]) {
    if (!option) throw new Error(`Expected a right and a wrong option in ${question.id}.`);
    attempt += 1;
    await choose(form, textOf(question, option));
    if (attempt === 1) await form.page().keyboard.press('Enter');
    else await pressButton(check);
    const verdict = form.getByRole('status');
    const start = `Attempt ${attempt}. ${resultWord(option.holds)} ${option.reason}`;
    await expect(verdict).toContainText(plain(start));
    const explanation = verdict.getByText(plain(question.explain), { exact: true });
    await expect(explanation).toHaveCount(option.holds ? 1 : 0);
  }
}

/** Answers a quiz by keyboard alone: each question says why a wrong answer fails, and passes the simulator's. */
export async function playQuiz(page: Page, { id, questions }: Quiz): Promise<void> {
  const quiz = taskOnPage(page, 'Quiz', id);
  const { section } = quiz;
  await tabTo(section.getByRole('radio').first());
  await seeAlive(quiz);
  for (const [index, question] of questions.entries()) {
    await answerBoth(section.locator('form').nth(index), question);
  }
}
