import type { Page } from '@playwright/test';
import { optionResults } from '../../simulator/index.ts';
import { violationsInBothThemes } from './axe.ts';
import { course, openTask } from './course-pages.ts';
import { expect, test } from './fixture.ts';
import { fieldOf, ownerSelect } from './keyboard.ts';

const PHONE = { width: 390, height: 844 };

/** The page itself does not scroll sideways, however narrow; only boxes in it do. */
async function expectNoSidewaysScroll(page: Page): Promise<void> {
  // A desk draws itself anew after it has seen its new width.
  await expect
    .poll(
      () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
      'the page must not scroll sideways',
    )
    .toBeLessThanOrEqual(0);
}

test('a task is accessible in its states: not yet, hints, ways as text, passed, on a phone', async ({
  page,
}) => {
  test.setTimeout(60_000);
  const { section, ...desk } = await openTask(page, 'Task', 'reverb-that-goes-too');
  const part = `section.task:has(#${desk.id}-title)`;
  const expectAccessible = async (state: string) => {
    expect.soft(await violationsInBothThemes(page, part), state).toEqual([]);
  };
  const check = section.getByRole('button', { name: 'Check', exact: true });
  await check.click();
  const hint = section.getByRole('button', { name: /hint/i });
  while ((await hint.count()) > 0) await hint.click();
  await section.getByText('Ways as text').click();
  for (const way of await section.locator('.paths summary').all()) await way.click();
  await expect(section.locator('.check-not-yet').first()).toBeVisible();
  await expectAccessible('not yet, hints, ways open');

  await page.setViewportSize({ width: 320, height: 640 });
  await expectNoSidewaysScroll(page);
  await page.setViewportSize(PHONE);
  await ownerSelect(desk).selectOption('desk.ch5');
  await expect(section.locator('.desk-drawing .mark').first()).toHaveText('5');
  await expectNoSidewaysScroll(page);
  await section.getByRole('button', { name: 'Set one solution' }).click();
  await check.click();
  await expect(section.locator('.debrief')).toBeVisible();
  await expectAccessible('a phone, another strip chosen, passed');
  await page.setViewportSize({ width: 320, height: 640 });
  await expectNoSidewaysScroll(page);
});

test('the bench is accessible while an edit is refused and a file cannot be used', async ({
  page,
}) => {
  await page.goto('/bench/');
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  await fieldOf({ page, id: 'bench' }, 'desk.ch3.in').selectOption('converter.out1');
  await expect(page.locator('.refusal')).not.toBeEmpty();
  await page.getByLabel('Setup file').setInputFiles({
    name: 'a-file-with-a-name-that-is-long-enough-to-need-several-lines-on-a-phone.yaml',
    mimeType: 'text/plain',
    buffer: Buffer.from('a: [1'),
  });
  await expect(page.locator('.problem')).toBeVisible();
  expect.soft(await violationsInBothThemes(page, 'main')).toEqual([]);
  await page.setViewportSize({ width: 320, height: 640 });
  await expectNoSidewaysScroll(page);
});

test('a quiz and a walk-through are accessible after answers and a step, wide and on a phone', async ({
  page,
}) => {
  test.setTimeout(60_000);
  const quiz = course.quizzes.get('insert-or-send');
  if (!quiz) throw new Error('Expected the quiz insert-or-send, but found none.');
  const { section } = await openTask(page, 'Quiz', quiz.id);
  for (const [index, word] of ['check-not-yet', 'check-passed'].entries()) {
    const question = quiz.questions[index];
    const option = question && optionResults(question).find(({ holds }) => holds === (index === 1));
    if (!option) throw new Error(`Expected an option for ${word}, but found none.`);
    const form = section.locator('form').nth(index);
    await form.locator(`input[value="${option.id}"]`).check();
    await form.getByRole('button', { name: 'Check', exact: true }).click();
    await expect(form.locator(`.${word}`)).toBeVisible();
  }
  const walk = page.locator('section.walk-through');
  await walk.scrollIntoViewIfNeeded();
  await expect(page.locator('astro-island[ssr]', { has: walk })).toHaveCount(0);
  await walk.getByRole('button', { name: 'Next step' }).click();
  await expect(walk.locator('.step-count')).toContainText('2');
  expect.soft(await violationsInBothThemes(page, 'section.quiz')).toEqual([]);
  await page.setViewportSize(PHONE);
  await expectNoSidewaysScroll(page);
  expect.soft(await violationsInBothThemes(page, 'article')).toEqual([]);
  await page.setViewportSize({ width: 320, height: 640 });
  await expectNoSidewaysScroll(page);
});

test('with forced colours what is lit, muted or pressed still differs; with reduced motion nothing moves', async ({
  page,
}) => {
  await page.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce' });
  await page.goto('/');
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  const look = (selector: string, property: 'stroke' | 'fill' | 'background-color') =>
    page
      .locator(selector)
      .first()
      .evaluate((element, name) => getComputedStyle(element).getPropertyValue(name), property);
  const system = await page.evaluate(() => {
    const read = (colour: string) => {
      const probe = document.createElement('p');
      probe.style.setProperty('forced-color-adjust', 'none');
      probe.style.setProperty('background-color', colour);
      document.body.append(probe);
      const { backgroundColor } = getComputedStyle(probe);
      probe.remove();
      return backgroundColor;
    };
    return { lit: read('Highlight'), paper: read('Canvas') };
  });
  expect(await look('.light', 'stroke')).toBe(system.lit);
  expect(await look('.light-casing', 'stroke')).toBe(system.paper);
  expect(await look('.wire-strip', 'stroke')).not.toBe(system.paper);
  await page.locator('button[data-address$=".mute"]').first().click();
  await expect
    .poll(() => look('button[aria-pressed="true"]', 'background-color'), 'also under the pointer')
    .toBe(system.lit);
  expect(await look('button[aria-pressed="false"]', 'background-color')).not.toBe(system.lit);
  expect(await look('.word-box-on', 'fill')).not.toBe(
    await look('.word-box:not(.word-box-on)', 'fill'),
  );
  expect(await look('.send-before', 'fill')).not.toBe(system.paper);

  const slow = await page.evaluate(() =>
    [...document.querySelectorAll('*')].flatMap((element) => {
      const { transitionDuration, animationDuration } = getComputedStyle(element);
      const times = [transitionDuration, animationDuration].flatMap((list) => list.split(','));
      return times.some((time) => Number.parseFloat(time) > 0.001) ? [element.tagName] : [];
    }),
  );
  expect(slow).toEqual([]);
});

for (const [address, size] of [
  ['/bench/', { width: 1280, height: 720 }],
  ['/lessons/before-or-after-the-fader/', { width: 320, height: 640 }],
] as const) {
  test(`on ${address} at ${size.width} px, whatever Tab leads to can be seen`, async ({ page }) => {
    test.setTimeout(60_000);
    await page.setViewportSize(size);
    await page.goto(address);
    // All of it is alive before: Tab can be quicker than what wakes when it is seen.
    for (const island of await page.locator('astro-island').all()) {
      await island.evaluate((element) => element.firstElementChild?.scrollIntoView());
      await expect(island).not.toHaveAttribute('ssr');
    }
    // Tab goes on from what was scrolled to last.
    await page.locator('a').first().focus();
    const seen = new Set<string>();
    let last = '';
    for (let press = 0; press < 1000 && last !== 'body'; press += 1) {
      await page.keyboard.press('Tab');
      const { name, isSeen } = await page.evaluate(lookAtFocus);
      expect.soft(isSeen, name).toBe(true);
      seen.add(name);
      last = name;
    }
    expect(seen.size).toBeGreaterThan(30);
    expect(last, 'Tab leads through the page and out of it').toBe('body');
  });
}

/** Runs in the page: what has the focus, and whether its middle, or the middle of its label, is on the screen and on top. */
function lookAtFocus(): { name: string; isSeen: boolean } {
  const element = document.activeElement;
  if (!element || element === document.body) return { name: 'body', isSeen: true };
  const labels = element instanceof HTMLInputElement ? [...(element.labels ?? [])] : [];
  const isOnTop = (one: Element) => {
    const box = [...one.getClientRects()].find(({ width, height }) => width > 0 && height > 0);
    if (!box) return false;
    const [left, right] = [Math.max(0, box.left), Math.min(innerWidth, box.right)];
    const [top, bottom] = [Math.max(0, box.top), Math.min(innerHeight, box.bottom)];
    if (left >= right || top >= bottom) return false;
    const there = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
    return there !== null && (one.contains(there) || there.contains(one));
  };
  const { tagName, id, textContent } = element;
  const label = element.getAttribute('aria-label') ?? '';
  const name = `${tagName} ${id || label || textContent?.trim().slice(0, 30)}`;
  return { name, isSeen: [element, ...labels].some(isOnTop) };
}
