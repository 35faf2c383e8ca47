import type { Locator, Page } from '@playwright/test';
import {
  judge,
  levelAt,
  levelOf,
  outputPlace,
  part,
  simulate,
  type WalkThrough,
} from '../../simulator/index.ts';
import { levelText, shownSentence } from '../../src/text/index.ts';
import { plain, seeAlive, taskOnPage } from './course-pages.ts';
import { expect } from './fixture.ts';
import { pressButton, tabTo } from './keyboard.ts';

/** The page shows a step: its words, what is heard, and the levels that the simulator computes for its board. */
async function expectStep(section: Locator, { id, rig, steps }: WalkThrough, index: number) {
  const step = steps[index];
  if (!step) throw new RangeError(`Expected a step of ${id}, but got ${index}.`);
  const setup = { rig, board: step.board };
  const solution = simulate(setup);
  await expect(section.locator('.step-count')).toHaveText(`Step ${index + 1} of ${steps.length}`);
  await expect(section.locator('.step p').nth(1)).toHaveText(plain(step.say));

  const heard = step.heard.map((claim) => judge(claim, { setup, solution }));
  expect(heard.filter(({ holds }) => !holds)).toEqual([]);
  await expect(section.locator('.heard > li')).toHaveText(
    heard.map((judgement) => plain(shownSentence(rig, judgement))),
  );
  const rows = rig.outputs.map((output) => {
    const place = outputPlace(output.id);
    const places = output.stereo ? [place, part(place, 'l'), part(place, 'r')] : [place];
    return [
      ...places.map((one) => levelAt(solution, one)),
      ...places.map((one) => levelOf(solution, step.follow, one)),
    ].map((level) => levelText(level));
  });
  await expect(section.locator('.read-outs .leg')).toContainText(rows.flat());
}

/** Goes through by keyboard alone: every step says what the simulator computes, forth and back. */
export async function playWalkThrough(page: Page, walkThrough: WalkThrough): Promise<void> {
  const { id, steps } = walkThrough;
  const walk = taskOnPage(page, 'WalkThrough', id);
  const { section } = walk;
  const next = section.getByRole('button', { name: 'Next step' });
  await tabTo(next);
  await seeAlive(walk);
  await expectStep(section, walkThrough, 0);
  for (let index = 1; index < steps.length; index += 1) {
    await pressButton(next);
    await expectStep(section, walkThrough, index);
  }
  await expect(next).toBeDisabled();
  await pressButton(section.getByRole('button', { name: 'Back' }));
  await expectStep(section, walkThrough, steps.length - 2);
}
