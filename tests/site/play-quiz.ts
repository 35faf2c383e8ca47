import type { Locator, Page } from '@playwright/test';
import { markQuestion, type Question, type Quiz } from '../../simulator/index.ts';
import { resultWord } from '../../src/text/index.ts';
import { plain, seeAlive, taskOnPage } from './course-pages.ts';
import { expect } from './fixture.ts';
import { pressButton, tabTo } from './keyboard.ts';
import { answersTo, giveAnswer } from './quiz-answers.ts';

async function answerBoth(form: Locator, question: Question): Promise<void> {
  await expect(form.locator('legend')).toContainText(plain(question.ask));
  const check = form.getByRole('button', { name: 'Check', exact: true });
  // An order stands there from the beginning; of the others there is nothing to check yet.
  await expect(check).toBeEnabled({ enabled: question.kind === 'order' });

  for (const [index, answer] of answersTo(question).entries()) {
    await giveAnswer(form, question, answer);
    if (index === 0 && answer.kind !== 'order') await form.page().keyboard.press('Enter');
    else await pressButton(check);
    const verdict = form.getByRole('status').last();
    const passed = index === 1;
    await expect(verdict).toContainText(`Attempt ${index + 1}. ${resultWord(passed)}`);
    for (const { reason } of markQuestion(question.id, question, answer).told) {
      await expect(verdict).toContainText(plain(reason));
    }
    const explanation = verdict.getByText(plain(question.explain), { exact: true });
    await expect(explanation).toHaveCount(passed ? 1 : 0);
  }
}

/** Answers a quiz by keyboard alone: each question says why a wrong answer fails, and passes the simulator's. */
export async function playQuiz(page: Page, { id, questions }: Quiz): Promise<void> {
  const quiz = taskOnPage(page, 'Quiz', id);
  const { section } = quiz;
  await tabTo(section.locator('form').first().locator('input, button').first());
  await seeAlive(quiz);
  for (const [index, question] of questions.entries()) {
    await answerBoth(section.locator('form').nth(index), question);
  }
}
