import type { Page } from '@playwright/test';
import { unitText } from '../../src/text/index.ts';
import { course, worksIn } from './course-pages.ts';
import { expect, test } from './fixture.ts';
import { stored } from './kept-records.ts';
import { pressButton } from './keyboard.ts';
import { playQuiz } from './play-quiz.ts';
import { playTask } from './play-task.ts';
import { playWalkThrough } from './play-walk-through.ts';

/** How many tasks and questions a lesson counts. */
const countIn = (lesson: string): number =>
  worksIn(lesson).reduce((sum, { component, id }) => {
    if (component === 'Task') return sum + 1;
    return component === 'Quiz' ? sum + (course.quizzes.get(id)?.questions.length ?? 0) : sum;
  }, 0);

/** What the last question of a lesson is kept under. */
function keyOfLast(lesson: string): string {
  const works = worksIn(lesson);
  const { id = '' } = works.findLast(({ component }) => component === 'Quiz') ?? {};
  return `quiz-${id}-${course.quizzes.get(id)?.questions.at(-1)?.id}`;
}

/** All that a lesson has to be done, in the order of its page. */
async function finishLesson(page: Page, lesson: string): Promise<void> {
  for (const { component, id } of worksIn(lesson)) {
    const [walkThrough, scenario, quiz] = [
      component === 'WalkThrough' ? course.walkThroughs.get(id) : undefined,
      component === 'Task' ? course.scenarios.get(id) : undefined,
      component === 'Quiz' ? course.quizzes.get(id) : undefined,
    ];
    await test.step(`${component} ${id}`, async () => {
      if (walkThrough) await playWalkThrough(page, walkThrough);
      if (scenario) await playTask(page, scenario);
      if (quiz) await playQuiz(page, quiz);
    });
  }
}

test('the whole course in one session by keyboard alone: every step, both tasks and each question of each lesson', async ({
  page,
}) => {
  test.setTimeout(600_000);
  const [first = '', ...others] = course.lessons;
  await page.goto('/lessons/');
  await pressButton(page.locator(`.course-map [data-lesson="${first}"] a`).first());
  for (const lesson of [first, ...others]) {
    await expect(page).toHaveURL(`/lessons/${lesson}/`);
    await test.step(lesson, () => finishLesson(page, lesson));
    // The attempt at the last question is kept a moment after it is judged.
    const last = keyOfLast(lesson);
    await expect.poll(async () => (await stored(page, 'tasks', last))?.passedAt).toBeDefined();
    if (lesson !== course.lessons.at(-1))
      await pressButton(page.locator('.lesson-nav [rel="next"]'));
  }
  await page.goto('/lessons/');
  await expect(page.locator('.course-map .done')).toHaveText(
    course.lessons.map(countIn).map((count) => unitText(count, count, true)),
  );
  // The half-done task is a step on the way: a test-out does not ask for it.
  await page.goto(`/lessons/${first}/test-out/`);
  const asked = countIn(first) - 1;
  await expect(page.locator('.done')).toHaveText(unitText(asked, asked, true));
});
