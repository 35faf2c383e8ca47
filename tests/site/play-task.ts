import type { Locator, Page } from '@playwright/test';
import { grade, type Scenario, type Verdict } from '../../simulator/index.ts';
import {
  heardSentence,
  reasonSentence,
  resultWord,
  verdictSentence,
} from '../../src/text/index.ts';
import { plain, seeAlive, taskOnPage } from './course-pages.ts';
import { expect } from './fixture.ts';
import { moveByKeyboard, pressButton, tabTo } from './keyboard.ts';

/** A verdict on the page says of each check whether it was passed, what was heard, and where not, why. */
async function expectVerdict(task: Locator, scenario: Scenario, verdict: Verdict, attempt: number) {
  const { rig } = scenario;
  const { results } = verdict;
  await expect(task.locator('.verdict-head')).toHaveText(
    `Attempt ${attempt}. ${verdictSentence(verdict)}`,
  );
  await expect(task.locator('.check-word')).toHaveText(
    results.map(({ holds }) => resultWord(holds)),
  );
  await expect(task.locator('.check-heard')).toHaveText(
    results.map((result) => plain(heardSentence(rig, result))),
  );
  const first = task.locator('.check-heard + .check-reason');
  await expect(first).toHaveText(
    results.flatMap(({ holds, reasons: [reason] }) =>
      holds || !reason ? [] : [plain(reasonSentence(rig, reason))],
    ),
  );
}

/** Solves a task by keyboard alone: Check fails the start with reasons, and passes the solution. */
export async function playTask(page: Page, scenario: Scenario): Promise<void> {
  const { id, rig, start, solution, debrief } = scenario;
  const [atStart, atEnd] = [grade(scenario, start), grade(scenario, solution)];
  expect([atStart.passed, atEnd.passed]).toEqual([false, true]);
  expect(atStart.results.some(({ holds, reasons }) => !holds && reasons.length > 0)).toBe(true);

  const desk = taskOnPage(page, 'Task', id);
  const { section: task } = desk;
  const check = task.getByRole('button', { name: 'Check', exact: true });
  await tabTo(check);
  await seeAlive(desk);
  await pressButton(check);
  await expectVerdict(task, scenario, atStart, 1);
  await expect(task.locator('.debrief')).toHaveCount(0);

  await moveByKeyboard(desk, { rig, board: start }, solution);
  await expect(task.locator('.verdict-note')).toHaveCount(1);
  await pressButton(check);
  await expectVerdict(task, scenario, atEnd, 2);
  await expect(task.locator('.verdict-note')).toHaveCount(0);
  await expect(task.locator('.debrief')).toHaveText(plain(debrief));
}
