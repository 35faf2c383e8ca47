import type { Locator } from '@playwright/test';
import { grade, type Scenario, type Verdict } from '../../simulator/index.ts';
import {
  heardSentence,
  reasonSentence,
  resultWord,
  verdictSentence,
} from '../../src/text/index.ts';
import { course, openTask, pageOf, plain } from './course-pages.ts';
import { expect, test } from './fixture.ts';
import { moveByKeyboard, pressButton } from './keyboard.ts';

/** A verdict on the page says of each check whether it was passed, what was heard, and where not, why. */
async function expectVerdict(task: Locator, scenario: Scenario, verdict: Verdict, attempt: number) {
  const { rig } = scenario;
  await expect(task.locator('.verdict-head')).toHaveText(
    `Attempt ${attempt}. ${verdictSentence(verdict)}`,
  );
  const lines = task.locator('.checks > li');
  await expect(lines).toHaveCount(verdict.results.length);
  for (const [index, result] of verdict.results.entries()) {
    const line = lines.nth(index);
    await expect(line.locator('.check-word')).toHaveText(resultWord(result.holds));
    await expect(line.locator('.check-heard')).toHaveText(plain(heardSentence(rig, result)));
    const [first] = result.reasons;
    const reasons = line.locator('.check-reason');
    if (result.holds) await expect(reasons).toHaveCount(0);
    else if (first) await expect(reasons.first()).toHaveText(plain(reasonSentence(rig, first)));
  }
}

/** The first task of each page: the others have fields of the same kinds, and would take minutes more. */
const firstOfPages = [...course.scenarios.values()].filter(
  ({ id }, index, all) =>
    all.findIndex((other) => pageOf('Task', other.id) === pageOf('Task', id)) === index,
);

for (const scenario of firstOfPages) {
  const { id, rig, start, solution, debrief } = scenario;
  test(`${id}: by keyboard alone, Check fails the start with reasons, and passes the solution`, async ({
    page,
  }) => {
    const atStart = grade(scenario, start);
    const atEnd = grade(scenario, solution);
    expect([atStart.passed, atEnd.passed]).toEqual([false, true]);
    expect(atStart.results.some(({ holds, reasons }) => !holds && reasons.length > 0)).toBe(true);

    const { section: task, ...desk } = await openTask(page, 'Task', id);
    const check = task.getByRole('button', { name: 'Check', exact: true });
    await pressButton(check);
    await expectVerdict(task, scenario, atStart, 1);
    await expect(task.locator('.debrief')).toHaveCount(0);

    await moveByKeyboard(desk, { rig, board: start }, solution);
    await expect(task.locator('.verdict-note')).toHaveCount(1);
    await pressButton(check);
    await expectVerdict(task, scenario, atEnd, 2);
    await expect(task.locator('.verdict-note')).toHaveCount(0);
    await expect(task.locator('.debrief')).toHaveText(plain(debrief));
  });
}
