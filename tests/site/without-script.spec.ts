import { levelAt, levelOf, outputPlace, part, paths, simulate } from '../../simulator/index.ts';
import { levelText, pathsSentence } from '../../src/text/index.ts';
import { course, pageOf, plain } from './course-pages.ts';
import { expect, test } from './fixture.ts';

test.use({ javaScriptEnabled: false });

test('without script a page of the course shows its prose, pictures, levels and ways, as they were computed at build', async ({
  page,
}) => {
  for (const walkThrough of course.walkThroughs.values()) {
    const { id, rig, steps } = walkThrough;
    const [first] = steps;
    if (!first) throw new Error(`Expected a step of ${id}, but found none.`);
    await page.goto(pageOf('WalkThrough', id));
    await expect(page.locator('article .passage > p').first()).toBeVisible();
    for (const picture of await page.locator('figure.picture').all()) {
      await expect(picture.getByRole('img')).toBeVisible();
      // Of a straight line there is nothing to see for Playwright, which wants an area.
      expect(await picture.locator('.light').count()).toBeGreaterThan(0);
    }
    for (const computed of await page.locator('.computed').allTextContents()) {
      expect(computed).toMatch(/\d|silent/);
    }

    const title = page.locator(`#walk-${id}-title`);
    const section = page.locator('section.walk-through', { has: title });
    const setup = { rig, board: first.board };
    const solution = simulate(setup);
    await expect(section.getByText(plain(first.say))).toBeVisible();
    const places = rig.outputs.flatMap(({ id: output, stereo }) => {
      const place = outputPlace(output);
      return stereo ? [place, part(place, 'l'), part(place, 'r')] : [place];
    });
    for (const one of places) {
      await expect(section.locator('.read-outs')).toContainText(levelText(levelAt(solution, one)));
    }
    await section.getByText('Ways as text').click();
    for (const output of rig.outputs) {
      const place = outputPlace(output.id);
      const ways = paths(solution, first.follow, place);
      const level = levelOf(solution, first.follow, place);
      const words = pathsSentence(rig, { source: first.follow, output: place, ways, level });
      await expect(
        section.locator('.paths').getByText(plain(words), { exact: true }),
      ).toBeVisible();
    }
  }
});
