import { readdirSync } from 'node:fs';
import { violationsInBothThemes } from './axe.ts';
import { openTask } from './course-pages.ts';
import { expect, test } from './fixture.ts';
import { fieldOf } from './keyboard.ts';

test('a desk on the page about numbers measures noise, headroom, compressors and loops, and draws a response', async ({
  page,
}) => {
  test.setTimeout(60_000);
  const loop = await openTask(page, 'WalkThrough', 'round-and-round');
  const measured = loop.section.getByRole('region', { name: 'Measurements' });
  await expect(measured).toContainText('The noise in Capture is −');
  await expect(measured).toContainText('First to clip is');
  await expect(measured.getByRole('img')).toHaveCount(0);
  const next = loop.section.getByRole('button', { name: 'Next step' });
  for (let step = 1; step < 5; step += 1) await next.click();
  await expect(measured).toContainText('what circulates grows, and there is no level to give');

  const curve = await openTask(page, 'WalkThrough', 'along-the-curve');
  await expect(curve.section.getByRole('region', { name: 'Measurements' })).toContainText(
    'compressor is 4.5 dB.',
  );

  const comb = await openTask(page, 'WalkThrough', 'a-filter-and-a-comb');
  const picture = comb.section.locator('.response').getByRole('img');
  await expect(picture).toHaveAccessibleName(/least −\d+\.\d dB at 20 Hz\.$/);
  await fieldOf(comb, 'desk.ch1.insert.return').selectOption('none');
  await expect(picture).toHaveCount(0);
  await comb.section.getByRole('button', { name: 'Next step' }).click();
  await comb.section.getByRole('button', { name: 'Next step' }).click();
  await expect(picture).toHaveAccessibleName(/most \+6\.0 dB/);
  expect.soft(await violationsInBothThemes(page, '.measurements')).toEqual([]);
  await page.setViewportSize({ width: 320, height: 640 });
  await expect
    .poll(() => page.evaluate(() => document.documentElement.scrollWidth - innerWidth))
    .toBeLessThanOrEqual(0);
});

test('the page about numbers states what every comparison with another engine came to', async ({
  page,
}) => {
  await page.goto('/numbers/');
  const rows = page.getByRole('region', { name: /agrees with other engines/ }).locator('tbody tr');
  await expect(rows).toHaveCount(readdirSync('lessons/agreement').length);
});
