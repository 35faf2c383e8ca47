import type { Locator, Page } from '@playwright/test';
import { levelOf, outputPlace, part, type Rig, simulate } from '../../simulator/index.ts';
import { levelText } from '../../src/text/index.ts';
import { violationsInBothThemes } from './axe.ts';
import { course } from './course-pages.ts';
import { expect, test } from './fixture.ts';
import { keepNothing } from './kept-records.ts';
import { chooseOption, fieldOf, ownerSelect, pressButton, tabTo } from './keyboard.ts';

const split = course.rigs.get('split-desk') as Rig;
const netLoft = course.rigs.get('net-loft') as Rig;

async function openRoom(page: Page, address: string) {
  await page.goto(address);
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  return { page, id: 'bench' };
}

test('from the bench a link leads to each room, and says which one is open', async ({ page }) => {
  await openRoom(page, '/bench/');
  const rooms = page.getByRole('navigation', { name: 'Rooms of the bench' });
  await expect(rooms.getByRole('link')).toHaveCount(course.bench.length);
  for (const { rig: id } of course.bench) {
    const rig = course.rigs.get(id) as Rig;
    await rooms.getByRole('link', { name: rig.label, exact: true }).click();
    await expect(rooms.locator('[aria-current="page"]')).toHaveText(rig.label);
    await expect(
      page.getByRole('heading', { level: 2, name: rig.label, exact: true }),
    ).toBeVisible();
    await expect(page.locator('.desk-drawing .mark').first()).toHaveText(
      rig.desk.strips[0]?.mark ?? '',
    );
  }
});

test('where the browser keeps nothing, another room is opened without a question only while nothing is lost', async ({
  page,
}) => {
  await keepNothing(page);
  const desk = await openRoom(page, '/bench/split-desk/');
  // That nothing is kept is known a little later.
  await page.waitForLoadState('networkidle');
  const asked: string[] = [];
  let answer: 'accept' | 'dismiss' = 'dismiss';
  page.on('dialog', async (dialog) => {
    asked.push(dialog.type());
    await dialog[answer]();
  });
  const other = page.getByRole('link', { name: 'The in-line desk' });
  await ownerSelect(desk).selectOption('desk.ch2');
  await page.locator('button[data-address="desk.ch2.mute"]').click();
  await other.click();
  await expect.poll(() => asked).toEqual(['beforeunload']);
  await expect(page).toHaveURL(/split-desk/);
  await expect(page.locator('button[data-address="desk.ch2.mute"]')).toHaveAttribute(
    'aria-pressed',
    'true',
  );

  // Saved, it is not lost.
  await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the setup' }).click(),
  ]);
  answer = 'accept';
  await other.click();
  await expect(page).toHaveURL(/in-line-desk/);
  expect(asked).toEqual(['beforeunload']);
});

test('solo in place and before the fader by keyboard: the others are cut, or only the control room listens', async ({
  page,
}) => {
  const desk = await openRoom(page, '/bench/split-desk/');
  await page.getByLabel('Follow').focus();
  await chooseOption(page.getByLabel('Follow'), 'alto');
  await chooseOption(ownerSelect(desk), 'desk.ch4');
  const solo = page.locator('button[data-address="desk.ch4.solo"]');
  await pressButton(solo);
  await expect(solo).toHaveAttribute('aria-pressed', 'true');
  const strips = split.desk.strips.filter(({ id }) => /^ch/.test(id));
  await expect(page.locator('.desk-drawing .box-word-cut')).toHaveCount(strips.length);
  const status = page.locator('.desk .announced');
  await expect(status).toContainText('The solo of Strip 4 Cello, on.');
  await expect(status).toContainText('Solo cuts');
  await expect(page.locator('.read-outs tbody tr').first()).toContainText('silent');

  // What is cut says so in words, too.
  await chooseOption(ownerSelect(desk), 'desk.ch2');
  await expect(page.locator('.sheet-note')).toHaveText('The solo of another strip cuts this one.');
  expect(await violationsInBothThemes(page, '.desk')).toEqual([]);

  await chooseOption(ownerSelect(desk), 'desk.control');
  await chooseOption(fieldOf(desk, 'desk.control.mode'), 'pfl');
  await expect(page.locator('.desk-drawing .box-word-cut')).toHaveCount(0);
  await expect(page.locator('.sheet-note')).toHaveText('It listens to what is soloed.');
  const solution = simulate({
    rig: split,
    board: { 'desk.ch4.solo': true, 'desk.control.mode': 'pfl' },
  });
  const rows = page.locator('.read-outs tbody tr');
  for (const [index, { id, stereo }] of split.outputs.entries()) {
    const place = outputPlace(id);
    const leg = stereo ? part(place, 'l') : place;
    await expect(rows.nth(index).locator('td').nth(1)).toContainText(
      levelText(levelOf(solution, 'alto', leg)),
    );
  }
});

test('what is opened in the sheet is brought into sight in a desk wider than the window', async ({
  page,
}) => {
  const desk = await openRoom(page, '/bench/split-desk/');
  const picture = page.locator('.desk-scroll');
  /** Whether a word of the drawing lies between the left and the right edge of its box. */
  const isSeen = async (word: Locator) => {
    const [inner, outer] = await Promise.all([word.boundingBox(), picture.boundingBox()]);
    if (!inner || !outer) return false;
    return inner.x >= outer.x && inner.x + inner.width <= outer.x + outer.width;
  };
  const strip = page.locator('.desk-drawing .mark', { hasText: /^24$/ });
  expect(await isSeen(strip)).toBe(false);
  await ownerSelect(desk).selectOption('desk.ch24');
  await expect.poll(() => isSeen(strip)).toBe(true);
  // The names of the rows stick to the left edge: they are there with the frame that scrolls.
  await expect.poll(() => isSeen(page.locator('.desk-names .row-name').first())).toBe(true);
  const main = page.locator('.desk-drawing .name', { hasText: 'Box main mix' });
  await ownerSelect(desk).selectOption('box.main');
  await expect.poll(() => isSeen(main)).toBe(true);
  await ownerSelect(desk).selectOption('desk.ch1');
  await expect.poll(() => isSeen(main)).toBe(false);
});

test('box and rack are drawn around the desk until they are folded, and a track can be turned there', async ({
  page,
}) => {
  const desk = await openRoom(page, '/bench/');
  const names = page.locator('.desk-drawing .name');
  const cello = names.filter({ hasText: 'Cello' });
  await expect(cello).toHaveCount(2);
  await expect(page.locator('.rail-dot-cord')).toHaveCount(netLoft.desk.strips.length);
  // What a hand takes lies over the words. The drawing may still scroll to the strip that is open.
  await expect(async () => {
    await cello.first().click({ force: true });
    await expect(ownerSelect(desk)).toHaveValue('box.cello', { timeout: 500 });
  }).toPass();
  const mutes = page.locator('.desk-drawing .box-word', { hasText: 'mute' });
  await mutes.first().click({ force: true });
  await expect(page.locator('button[data-address="box.tenor.mute"]')).toHaveAttribute(
    'aria-pressed',
    'true',
  );
  await page.getByRole('button', { name: 'Rack', exact: true }).click();
  await expect(names.filter({ hasText: 'Line' })).toHaveCount(0);
  const box = page.getByRole('button', { name: 'Box', exact: true });
  await expect(box).toHaveAttribute('aria-pressed', 'true');
  await box.click();
  await expect(box).toHaveAttribute('aria-pressed', 'false');
  await expect(cello).toHaveCount(1);
  await expect(page.locator('.desk-drawing .from').first()).toHaveText('out 1');
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 } });

  test('an in-line strip is shown with both of its paths', async ({ page }) => {
    const desk = await openRoom(page, '/bench/in-line-desk/');
    await ownerSelect(desk).selectOption('desk.two7');
    const marks = page.locator('.desk-drawing .mark');
    await expect(marks.nth(0)).toHaveText('7a');
    await expect(marks.nth(1)).toHaveText('7b');
    const first = page.locator('select').and(fieldOf(desk, 'desk.two7.path'));
    await tabTo(first);
    await expect(first).toHaveValue('first');
  });
});
