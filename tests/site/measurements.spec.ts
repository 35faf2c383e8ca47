import type { Page } from '@playwright/test';
import { levelAt, outputPlace, part, simulate } from '../../simulator/index.ts';
import { levelText, scaleIn } from '../../src/text/index.ts';
import { violationsInBothThemes } from './axe.ts';
import { course } from './course-pages.ts';
import { expect, test } from './fixture.ts';
import { chooseOption, fieldOf, ownerSelect, pressButton, tabTo } from './keyboard.ts';

const netLoft = () => {
  const rig = course.rigs.get('net-loft');
  if (!rig) throw new Error('Expected the rig net-loft, but found none.');
  return rig;
};

/** The bench, with what is measured there come to life. */
async function openBench(page: Page) {
  const later = page.waitForResponse(/Measurements\.[^/]+\.js$/);
  await page.goto('/bench/');
  await later;
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  return { page, id: 'bench' };
}

test('the unit of levels is chosen by keyboard, for read-outs, ways, meters and plots alike', async ({
  page,
}) => {
  await openBench(page);
  const rig = netLoft();
  const level = levelAt(simulate({ rig, board: {} }), part(outputPlace('capture'), 'l'));
  for (const unit of ['dBFS', 'V', 'dBV'] as const) {
    await chooseOption(page.getByLabel('Levels in'), unit);
    const text = levelText(level, 1, scaleIn(rig, unit));
    await expect(page.locator('.read-outs .leg').nth(1)).toContainText(text);
    await expect(page.locator('.meter-figures').first()).toContainText(text);
    for (const part of ['.read-outs', '.paths', '.meters ul', '.plots'])
      await expect(page.locator(part)).not.toContainText('dBu');
  }
});

test('meters follow the desk and what is opened, stand still while frozen, and are no live region', async ({
  page,
}) => {
  const desk = await openBench(page);
  const meters = page.getByRole('region', { name: 'Meters' });
  const capture = meters.getByRole('listitem').filter({ hasText: 'Capture left' });
  const freeze = meters.getByRole('button', { name: 'Freeze' });
  await chooseOption(ownerSelect(desk), 'desk.ch3');
  await expect(meters).toContainText('Strip 3 Cello trim');
  const type = async (gain: string) => {
    await tabTo(fieldOf(desk, 'desk.ch3.fader'));
    await page.keyboard.type(gain);
    await page.keyboard.press('Enter');
  };
  const before = await capture.textContent();
  await type('-20');
  await expect(capture).not.toHaveText(before ?? '');

  const held = await meters.locator('ul').innerHTML();
  await pressButton(freeze);
  await expect(freeze).toHaveAttribute('aria-pressed', 'true');
  await type('6');
  await chooseOption(ownerSelect(desk), 'desk.aux1');
  expect(await meters.locator('ul').innerHTML()).toBe(held);
  await pressButton(freeze);
  await expect(freeze).toHaveAttribute('aria-pressed', 'false');
  await expect(meters).toContainText('Aux 1');
  expect(await meters.locator('ul').innerHTML()).not.toBe(held);

  const live = '[aria-live], [role="status"], [role="alert"], [role="log"], [role="timer"]';
  await expect(page.locator('.measurements').locator(live)).toHaveCount(0);
});

test('each plot is named and has its numbers as a table, in both themes, on a phone and with forced colours', async ({
  page,
}) => {
  test.setTimeout(60_000);
  const desk = await openBench(page);
  await fieldOf(desk, 'desk.ch3.insert.return').selectOption('rack.comp.out');
  await ownerSelect(desk).selectOption('rack.comp');
  await fieldOf(desk, 'rack.comp.in').selectOption('desk.ch3.insert.send');
  const plots = page.getByRole('region', { name: 'Plots' });
  await expect(plots.getByRole('img')).toHaveCount(2);
  await expect(plots.getByRole('img').first()).toHaveAccessibleName(/^Cello starts at \+3\.0 dBu/);
  await expect(plots.getByRole('img').last()).toHaveAccessibleName(/compressor hears .* ratio/);
  for (const numbers of await plots.getByText('The numbers').all()) await numbers.click();
  await expect(plots.getByRole('table')).toHaveCount(2);
  await expect(plots.getByRole('rowheader', { name: 'Strip 3 Cello fader' })).toBeVisible();
  await expect(plots.getByRole('rowheader', { name: '(now)' })).toBeVisible();
  expect.soft(await violationsInBothThemes(page, '.measurements')).toEqual([]);

  await page.getByLabel('Cello to').selectOption('headphones-a');
  await expect(plots).toContainText('It does not arrive there.');
  await page.getByLabel('Cello to').selectOption('capture');
  await page.emulateMedia({ forcedColors: 'active' });
  for (const width of [390, 320]) {
    await page.setViewportSize({ width, height: 844 });
    await expect
      .poll(() => page.evaluate(() => document.documentElement.scrollWidth - innerWidth))
      .toBeLessThanOrEqual(0);
  }
  expect.soft(await violationsInBothThemes(page, '.measurements')).toEqual([]);
});

test('a desk of a lesson has its meters too, when they are asked for', async ({ page }) => {
  await page.goto('/');
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  await page.waitForLoadState('networkidle');
  const button = page.getByRole('button', { name: 'Meters and plots' });
  await button.focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('section.meters').getByText('Capture').first()).toBeVisible();
  expect(await violationsInBothThemes(page)).toEqual([]);
});
