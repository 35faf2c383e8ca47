import type { Page } from '@playwright/test';
import { violationsInBothThemes } from './axe.ts';
import { expect, test } from './fixture.ts';

const outputJack = (page: Page, jack: string) => page.locator(`[data-output="${jack}"]`);
const inputJack = (page: Page, jack: string) => page.locator(`[data-input="${jack}"]`);
/** The field of an input jack in the sheet, which says what is plugged. */
const CELLO_IN = 'desk.ch3.in';

async function openPatch(page: Page, address = '/'): Promise<void> {
  await page.goto(address);
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  // What opens below a desk comes to life a little later than the desk.
  await page.waitForLoadState('networkidle');
  await page.getByRole('button', { name: 'Plug cords by hand' }).click();
  await expect(page.locator('.patch-panel')).toBeVisible();
}

const cordInto = (page: Page) => page.locator(`.sheet [data-address="${CELLO_IN}"]`);

test('two clicks: the plug is pulled, and goes where the second click says', async ({ page }) => {
  await openPatch(page);
  await inputJack(page, CELLO_IN).click();
  await expect(cordInto(page)).toHaveValue('none');
  await expect(page.locator('.patch-word')).toContainText('a cord from Output 3');
  await inputJack(page, 'desk.ch3.insert.return').click();
  await expect(page.locator('.sheet [data-address="desk.ch3.insert.return"]')).toHaveValue(
    'converter.out3',
  );
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await expect(cordInto(page)).toHaveValue('converter.out3');
});

test('by keyboard: an output is taken and plugged, Escape drops one that is held', async ({
  page,
}) => {
  await openPatch(page);
  await inputJack(page, CELLO_IN).focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Escape');
  await expect(page.locator('.patch-word')).toContainText('Choose an output');
  await outputJack(page, 'converter.out12').focus();
  await page.keyboard.press('Enter');
  await expect(outputJack(page, 'converter.out12')).toHaveAttribute('aria-pressed', 'true');
  await inputJack(page, CELLO_IN).focus();
  await page.keyboard.press('Enter');
  await expect(cordInto(page)).toHaveValue('converter.out12');
});

test('an input that is taken refuses a second plug, and says why', async ({ page }) => {
  await openPatch(page);
  await outputJack(page, 'converter.out12').click();
  await inputJack(page, CELLO_IN).click();
  await expect(page.locator('.refusal')).not.toBeEmpty();
  await expect(cordInto(page)).toHaveValue('converter.out3');
});

test('by drag: from a socket to an input', async ({ page }) => {
  await openPatch(page);
  await inputJack(page, CELLO_IN).click();
  await page.keyboard.press('Escape');
  const from = outputJack(page, 'converter.out3').locator('.socket');
  await from.scrollIntoViewIfNeeded();
  const start = await from.boundingBox();
  const end = await inputJack(page, CELLO_IN).boundingBox();
  if (!start || !end) throw new Error('Expected both jacks on the screen.');
  await page.mouse.move(start.x + 16, start.y + 16);
  await page.mouse.down();
  await page.mouse.move(end.x - 30, end.y + 16, { steps: 4 });
  await expect(page.locator('.cord-held')).toBeVisible();
  await page.mouse.move(end.x + 20, end.y + 16);
  await page.mouse.up();
  await expect(page.locator('.cord-held')).toHaveCount(0);
  await expect(cordInto(page)).toHaveValue('converter.out3');
});

test('with a finger: two taps plug a cord on a phone', async ({ browser }) => {
  const phone = await browser.newContext({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    baseURL: test.info().project.use.baseURL ?? '',
  });
  const page = await phone.newPage();
  await openPatch(page);
  await inputJack(page, CELLO_IN).tap();
  await inputJack(page, 'desk.ch3.insert.return').tap();
  await expect(page.locator('.sheet [data-address="desk.ch3.insert.return"]')).toHaveValue(
    'converter.out3',
  );
  await phone.close();
});

test('on a patchbay: a plug in a half-normalled input breaks its normal, and the drag ends at its socket', async ({
  page,
}) => {
  await openPatch(page, '/bench/bay-room/');
  await expect(page.locator('.bay-broken')).toHaveCount(0);
  await outputJack(page, 'converter.out4').locator('.socket').hover();
  await page.mouse.down();
  const end = await inputJack(page, CELLO_IN).locator('.socket').boundingBox();
  if (!end) throw new Error('Expected the input on the screen.');
  await page.mouse.move(end.x + 10, end.y + 16, { steps: 4 });
  const tip = await page.locator('.cord-held').evaluate((cord: SVGPathElement) => {
    const { x, y } = cord.getPointAtLength(cord.getTotalLength());
    const { left = 0, top = 0 } = cord.ownerSVGElement?.getBoundingClientRect() ?? {};
    return { x: x + left, y: y + top };
  });
  expect(Math.abs(tip.x - end.x - 10) + Math.abs(tip.y - end.y - 16)).toBeLessThan(3);
  await page.mouse.up();
  await expect(page.locator('.bay-broken')).toHaveCount(1);
  await expect(inputJack(page, CELLO_IN)).toHaveAccessibleName(/cord from Output 4.*broken by/);
  expect(await violationsInBothThemes(page)).toEqual([]);
});

test('the jacks break no rule, in either theme', async ({ page }) => {
  await openPatch(page);
  await outputJack(page, 'converter.out12').click();
  expect(await violationsInBothThemes(page)).toEqual([]);
});
