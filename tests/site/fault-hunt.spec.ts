import type { Page } from '@playwright/test';
import { faultId, type Hunt, hunt as huntOf, ownerOf, readPlace } from '../../simulator/index.ts';
import { HUNT_ROOM, type HuntChoice, huntLink } from '../../src/share/hunt-link.ts';
import { complaintWords, faultText, placeName, readingText } from '../../src/text/index.ts';
import { violationsInBothThemes } from './axe.ts';
import { course, plain } from './course-pages.ts';
import { expect, test } from './fixture.ts';
import { chooseOption, pressButton } from './keyboard.ts';

const rig = course.rigs.get(HUNT_ROOM);
if (!rig) throw new Error('Expected the room of the hunts.');

/** Opens a hunt by its link, and waits until it has come to life. */
async function openHunt(page: Page, choice: HuntChoice): Promise<Hunt> {
  const hunt = huntOf(rig as NonNullable<typeof rig>, choice.level, choice.seed);
  await page.goto(`/fault-hunt/${huntLink(choice)}`);
  await expect(page.locator('.hunt-complaint p').last()).toHaveText(
    `“${plain(complaintWords(hunt.setup.rig, hunt.complaint))}”`,
  );
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  // What plays the hunt comes later.
  await page.waitForLoadState('networkidle');
  return hunt;
}

/** Where the best strategy reads, until one suspect is left. */
function bestPlaces({ places, tests, strategy, suspects, hidden }: Hunt): string[] {
  let fitting: readonly number[] = suspects.map((_, index) => index);
  const read: string[] = [];
  for (let step = strategy.bestFor(fitting); step; step = strategy.bestFor(fitting)) {
    const outcomes = tests[step.test] ?? [];
    fitting = fitting.filter((suspect) => outcomes[suspect] === outcomes[hidden]);
    read.push(places[step.test] ?? '');
  }
  return read;
}

const where = (page: Page) => page.getByLabel('Where', { exact: true });

test('by keyboard alone: a hunt is solved as the best strategy would, and the debrief says so', async ({
  page,
}) => {
  const hunt = await openHunt(page, { level: 2, seed: 'k7x2' });
  await pressButton(page.getByRole('button', { name: 'Take the meter' }));
  const places = bestPlaces(hunt);
  for (const [index, place] of places.entries()) {
    await chooseOption(where(page), ownerOf(place));
    await chooseOption(page.getByLabel('Read behind'), place);
    await pressButton(page.getByRole('button', { name: 'Read the level' }));
    const { found, meant } = readPlace(hunt, place);
    const row = page.locator('.hunt tbody tr').nth(index);
    await expect(row).toContainText(placeName(hunt.setup.rig, place).slice(1));
    await expect(row.locator('td').nth(1)).toHaveText(readingText(meant));
    await expect(row.locator('td').nth(2)).toHaveText(readingText(found));
  }
  await chooseOption(where(page), ownerOf(hunt.fault.at));
  await chooseOption(page.getByLabel('What is wrong'), faultId(hunt.fault));
  await pressButton(page.getByRole('button', { name: 'That is it' }));
  await expect(page.getByRole('status')).toHaveText('That is it. The room works again.');
  await pressButton(page.getByRole('button', { name: 'Look back' }));
  const debrief = page.locator('.hunt-debrief');
  await expect(debrief).toContainText('100 of 100');
  await expect(debrief.getByText('Well chosen.')).toHaveCount(places.length);
  await expect(debrief).toContainText(faultText(hunt.setup, hunt.fault));
  expect(await violationsInBothThemes(page, '.hunt')).toEqual([]);
});

test('a wrong accusation says what speaks against it, and the hunt goes on', async ({ page }) => {
  const hunt = await openHunt(page, { level: 1, seed: 'k7x2' });
  await page.getByRole('button', { name: 'Take the meter' }).click();
  const other = hunt.suspects.find((_, index) => index !== hunt.hidden)?.faults[0];
  if (!other) throw new Error('Expected a second suspect.');
  await where(page).selectOption(ownerOf(other.at));
  await page.getByLabel('What is wrong').selectOption(faultId(other));
  await page.getByRole('button', { name: 'That is it' }).click();
  await expect(page.getByRole('status')).toContainText(
    'That is not it. It fitted all that you knew',
  );
  expect(await violationsInBothThemes(page, '.hunt')).toEqual([]);
  await page.getByRole('button', { name: 'Give up' }).click();
  await expect(page.locator('.hunt-debrief')).toContainText('Not found');
});

test('the drawing is unlit, takes the meter where it is touched, and marks what was read', async ({
  page,
}) => {
  await openHunt(page, { level: 1, seed: 'k7x2' });
  await page.getByRole('button', { name: 'Take the meter' }).click();
  const drawing = page.locator('.hunt .desk-drawing');
  await expect(drawing.locator('.light, .wire-unknown')).toHaveCount(0);
  await drawing.locator('.hit-fader').first().click();
  const [owner, place] = [
    await where(page).inputValue(),
    await page.getByLabel('Read behind').inputValue(),
  ];
  expect(place).toBe(`${owner}.fader`);
  // Nothing was turned.
  await page.getByRole('button', { name: 'Read the level' }).click();
  await expect(drawing.locator('.hunt-marks text')).toHaveText(['1']);
});

test('a reload in the middle of a hunt goes on where it was left', async ({ page }) => {
  await openHunt(page, { level: 1, seed: 'k7x2' });
  await page.getByRole('button', { name: 'Take the meter' }).click();
  await page.getByRole('button', { name: 'Read the level' }).click();
  await page.getByLabel('Read behind').selectOption({ index: 1 });
  await page.getByRole('button', { name: 'Read the level' }).click();
  const readings = await page.locator('.hunt tbody tr').allInnerTexts();
  expect(readings).toHaveLength(2);
  // It is kept a quarter of a second after the last step.
  await page.waitForTimeout(600);
  await page.reload();
  await expect(page.getByText('It stands as you left it')).toBeVisible();
  expect(await page.locator('.hunt tbody tr').allInnerTexts()).toEqual(readings);
  // Another hunt of the level begins from its own beginning.
  await openHunt(page, { level: 1, seed: 'b3' });
  await expect(page.getByRole('button', { name: 'Take the meter' })).toBeVisible();
});

test('a new hunt has an address of its own; a damaged one says what is wrong with it', async ({
  page,
}) => {
  await openHunt(page, { level: 1, seed: 'k7x2' });
  await page.getByRole('combobox', { name: 'Level', exact: true }).selectOption('3');
  await expect(page).toHaveURL(/#hunt=1\.3\.[a-z0-9]+$/);
  await page.goto('/fault-hunt/#hunt=1.9.abc');
  await expect(page.getByRole('alert')).toContainText('expected a level from 1 to 5');
  await expect(page.locator('.hunt-complaint')).toBeVisible();
});

test('a link can ask for a new hunt of a level; the way back leads past it', async ({ page }) => {
  await page.goto('/glossary/');
  await page.goto('/fault-hunt/#new-hunt=3');
  await expect(page.getByRole('combobox', { name: 'Level', exact: true })).toHaveValue('3');
  await expect(page).toHaveURL(/#hunt=1\.3\.[a-z0-9]+$/);
  await page.goBack();
  await expect(page).toHaveURL(/glossary/);
  await page.goto('/fault-hunt/#new-hunt=9');
  await expect(page.locator('.problem')).toContainText('a level from 1 to');
});
