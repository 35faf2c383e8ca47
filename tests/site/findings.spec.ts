import AxeBuilder from '@axe-core/playwright';
import { expect, test } from './fixture.ts';

test('the bench lists what is found, and shows where it is', async ({ page }) => {
  await page.goto('/bench/');
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  const list = page.getByRole('region', { name: 'What an engineer would point at' });
  await expect(list).toContainText('Nothing.');

  const owner = page.locator('.sheet select').first();
  await owner.selectOption('desk.ch1');
  const assign = page.locator('.sheet [data-address="desk.ch1.sub1"]').first();
  await assign.click();
  await expect(list.getByRole('listitem')).toHaveCount(1);
  await expect(list).toContainText('Tenor arrives twice in Capture');
  const { violations } = await new AxeBuilder({ page })
    .setLegacyMode()
    .include('.findings')
    .analyze();
  expect(violations.map(({ id }) => id)).toEqual([]);

  await owner.selectOption('desk.ch8');
  await list.getByRole('button', { name: 'Show me' }).click();
  await expect(owner).toHaveValue('desk.ch1');
  await expect(assign).toBeFocused();
});
