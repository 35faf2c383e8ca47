import AxeBuilder from '@axe-core/playwright';
import { outputPlace, paths, simulate } from '../../simulator/index.ts';
import { pathRows, pathStory } from '../../src/text/index.ts';
import { course, pageOf } from './course-pages.ts';
import { expect, test } from './fixture.ts';

/** The walk-through of a lesson, with the ways of what its first step follows. */
const walks = [...course.walkThroughs.values()].flatMap(({ id, rig, steps, start }) => {
  if (!pageOf('WalkThrough', id).startsWith('/lessons/')) return [];
  const setup = { rig, board: steps[0]?.board ?? start };
  const solution = simulate(setup);
  const ways = rig.outputs.flatMap((output) =>
    paths(solution, steps[0]?.follow ?? '', outputPlace(output.id)),
  );
  return [{ id, setup, ways }];
});
const walk = walks.find(({ ways }) => ways.length > 1);
if (!walk) throw new Error('Expected a walk-through that begins with several ways, found none.');
const { id, setup, ways } = walk;

test('every way is told in a sentence, with its stages in order under it', async ({ page }) => {
  await page.goto(pageOf('WalkThrough', id));
  const list = page.locator('section.walk-through .paths');
  await list.scrollIntoViewIfNeeded();
  expect(ways.length).toBeGreaterThan(1);
  const told = list.locator('details');
  await expect(told.locator('summary')).toHaveText(ways.map((way) => pathStory(setup, way)));
  for (const [index, way] of ways.entries()) {
    const one = told.nth(index);
    await expect(one.getByRole('table')).toBeHidden();
    await one.locator('summary').click();
    const rows = pathRows(setup, way).map(({ name, before, did, level }) =>
      [name, before, did, level].join(''),
    );
    await expect(one.getByRole('columnheader')).toHaveCount(4);
    await expect(one.locator('tbody').getByRole('row')).toHaveText(rows);
  }
});

test('ways that are unfolded fit on a screen of 320 px, and break no rule', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 800 });
  await page.goto(pageOf('WalkThrough', id));
  const list = page.locator('section.walk-through .paths');
  for (const summary of await list.locator('summary').all()) await summary.click();
  await expect(list.getByRole('table')).toHaveCount(ways.length);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
  const { violations } = await new AxeBuilder({ page })
    .setLegacyMode()
    .include('section.walk-through .ways')
    .analyze();
  expect(violations.map(({ id: rule }) => rule)).toEqual([]);
});

test('on paper the stages of every way stand, folded or not', async ({ page }) => {
  await page.goto(pageOf('WalkThrough', id));
  await page.emulateMedia({ media: 'print' });
  const tables = page.locator('section.walk-through .paths table');
  await expect(tables).toHaveCount(ways.length);
  for (const table of await tables.all()) {
    expect((await table.boundingBox())?.height ?? 0).toBeGreaterThan(50);
  }
});
