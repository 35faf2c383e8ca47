import type { Locator, Page } from '@playwright/test';
import { lockedControls } from '../../simulator/index.ts';
import { course, openTask } from './course-pages.ts';
import { expect, test } from './fixture.ts';
import { chooseOption, fieldOf, ownerSelect, pressButton, tabTo } from './keyboard.ts';

const BENCH = 'bench';

async function openBench(page: Page) {
  await page.goto('/bench/');
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  const desk = { page, id: BENCH };
  await chooseOption(ownerSelect(desk), 'desk.ch3');
  return desk;
}

/** Presses keys one by one; after each a field reads out what is given. */
async function pressAndHear(field: Locator, steps: readonly (readonly [string, string])[]) {
  for (const [key, heard] of steps) {
    await field.page().keyboard.press(key);
    await expect(field, key).toHaveAttribute('aria-valuetext', heard);
  }
}

test('the keys of a gain: arrows 0.5 dB, with Shift 0.1, Page 6, Home and End the ends, Backspace the default', async ({
  page,
}) => {
  const desk = await openBench(page);
  const fader = fieldOf(desk, 'desk.ch3.fader');
  await tabTo(fader);
  await pressAndHear(fader, [
    ['ArrowDown', 'minus 0.5 decibels'],
    ['ArrowLeft', 'minus 1.0 decibels'],
    ['ArrowUp', 'minus 0.5 decibels'],
    ['ArrowRight', '0.0 decibels'],
    ['Shift+ArrowUp', 'plus 0.1 decibels'],
    ['Shift+ArrowDown', '0.0 decibels'],
    ['PageDown', 'minus 6.0 decibels'],
    ['PageDown', 'minus 12.0 decibels'],
    ['PageUp', 'minus 6.0 decibels'],
    ['Home', 'closed'],
    ['ArrowDown', 'closed'],
    ['ArrowUp', 'minus 60.0 decibels'],
    ['ArrowDown', 'closed'],
    ['End', 'plus 10.0 decibels'],
    ['ArrowUp', 'plus 10.0 decibels'],
    ['Backspace', '0.0 decibels'],
  ]);

  const trim = fieldOf(desk, 'desk.ch3.trim');
  await tabTo(trim);
  await page.keyboard.press('Home');
  await expect(trim).not.toHaveAttribute('aria-valuetext', 'closed');
  await page.keyboard.press('Backspace');
  await expect(trim).toHaveAttribute('aria-valuetext', '0.0 decibels');
});

test('a number can be typed at a gain: with a point or a comma; Enter takes it, Escape does not', async ({
  page,
}) => {
  const desk = await openBench(page);
  const fader = fieldOf(desk, 'desk.ch3.fader');
  const figure = page.getByRole('button', { name: 'Type over fader' });
  const entry = page.getByRole('textbox', { name: 'fader in dB' });
  for (const [typed, heard] of [
    ['-3,5', 'minus 3.5 decibels'],
    ['+2', 'plus 2.0 decibels'],
    ['-12.3 dB', 'minus 12.3 decibels'],
    ['-inf', 'closed'],
    ['0', '0.0 decibels'],
  ] as const) {
    await tabTo(fader);
    await page.keyboard.type(typed);
    await expect(entry).toHaveValue(typed);
    await page.keyboard.press('Enter');
    await expect(figure).toBeFocused();
    await expect(fader).toHaveAttribute('aria-valuetext', heard);
  }
  await tabTo(fader);
  await page.keyboard.type('-8');
  await page.keyboard.press('Escape');
  await expect(entry).toHaveCount(0);
  await expect(figure).toHaveText('0.0 dB');
  await expect(fader).toHaveAttribute('aria-valuetext', '0.0 decibels');

  // At the figure itself a digit does the same, and so does Enter. What is left with Tab is taken.
  await expect(figure).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(entry).toBeFocused();
  await page.keyboard.press('Tab');
  await expect(entry).toHaveCount(0);
  await expect(fader).toHaveAttribute('aria-valuetext', '0.0 decibels');
  await tabTo(figure);
  await page.keyboard.type('-7');
  await page.keyboard.press('Tab');
  await expect(fader).toHaveAttribute('aria-valuetext', 'minus 7.0 decibels');

  // Out of range: refused with its range, and the figure falls back.
  await tabTo(fader);
  await page.keyboard.type('99');
  await page.keyboard.press('Enter');
  await expect(figure).toHaveText('−7.0 dB');
  await expect(page.locator('.refusal')).toContainText('+10.0 dB');
});

test('a pan can be typed: its side and how far it is turned', async ({ page }) => {
  const desk = await openBench(page);
  const pan = fieldOf(desk, 'desk.ch3.pan');
  const entry = page.getByRole('textbox', { name: 'pan in percent' });
  for (const [typed, heard] of [
    ['30 left', '30 percent left'],
    ['+12', '12 percent right'],
    ['0', 'centre'],
  ] as const) {
    await tabTo(pan);
    await page.keyboard.type(typed);
    await page.keyboard.press('Enter');
    await expect(pan).toHaveAttribute('aria-valuetext', heard);
  }
  // A number alone does not say a side.
  await page.keyboard.type('30');
  await page.keyboard.press('Enter');
  await expect(page.locator('.figure-word')).toContainText('found “30”');
  await entry.press('Escape');
  await expect(pan).toHaveAttribute('aria-valuetext', 'centre');
});

test('the keys of a pan, a switch and a tap; Undo, Redo and Ctrl+Z take them back one by one', async ({
  page,
}) => {
  const desk = await openBench(page);
  const pan = fieldOf(desk, 'desk.ch3.pan');
  await tabTo(pan);
  await pressAndHear(pan, [
    ['ArrowLeft', '5 percent left'],
    ['Shift+ArrowLeft', '6 percent left'],
    ['ArrowRight', '1 percent left'],
    ['End', 'full right'],
    ['Home', 'full left'],
    ['Backspace', 'centre'],
    ['ArrowUp', '5 percent right'],
  ]);

  const mute = page.locator('button[data-address="desk.ch3.mute"]');
  await tabTo(mute);
  await page.keyboard.press('Space');
  await expect(mute).toHaveAttribute('aria-pressed', 'true');
  await expect(mute).toHaveAccessibleName('Mute');

  const before = page.locator('input[name="bench-desk.ch3.aux1.tap"][value="pre"]');
  const after = page.locator('input[name="bench-desk.ch3.aux1.tap"][value="post"]');
  await tabTo(after);
  await page.keyboard.press('ArrowUp');
  await expect(before).toBeChecked();
  await expect(before).toBeFocused();

  await page.keyboard.press('Control+z');
  await expect(after).toBeChecked();
  await page.keyboard.press('Control+z');
  await expect(mute).toHaveAttribute('aria-pressed', 'false');
  await page.keyboard.press('Control+Shift+Z');
  await expect(mute).toHaveAttribute('aria-pressed', 'true');
  await pressButton(page.getByRole('button', { name: 'Undo' }));
  await expect(mute).toHaveAttribute('aria-pressed', 'false');
  await pressButton(page.getByRole('button', { name: 'Redo' }));
  await expect(mute).toHaveAttribute('aria-pressed', 'true');
});

test('an arrow on a cord opens its list; an output in use is refused with the reason, and nothing is pulled', async ({
  page,
}) => {
  const desk = await openBench(page);
  const input = fieldOf(desk, 'desk.ch3.in');
  const refusal = page.locator('.refusal');
  await expect(refusal).toBeEmpty();

  await tabTo(input);
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await expect(input).toHaveValue('converter.out3');
  await page.keyboard.press('Escape');
  await expect(input).toHaveValue('converter.out3');

  await chooseOption(input, 'converter.out1', { isTaken: false });
  await expect(refusal).toContainText('Output 1');
  await expect(refusal).toContainText('Strip 1 Tenor');
  await expect(input).toHaveValue('converter.out3');

  // The cord of an insert send, seen from the jack: the plate's input is taken.
  const send = fieldOf(desk, 'desk.ch3.insert.send');
  await chooseOption(send, 'rack.comp.in');
  await expect(refusal).toBeEmpty();
  await chooseOption(send, 'rack.plate.in', { isTaken: false });
  await expect(refusal).toContainText('the plate');
  await expect(send).toHaveValue('rack.comp.in');
  await chooseOption(send, 'rack.line.in');
  await page.keyboard.press('Control+z');
  await expect(send).toHaveValue('rack.comp.in');
  await page.keyboard.press('Control+z');
  await expect(send).toHaveValue('none');
});

test('a locked control is disabled and says that it is locked', async ({ page }) => {
  const scenario = course.scenarios.get('tenor-in-line');
  if (!scenario) throw new Error('Expected the scenario tenor-in-line, but found none.');
  const locked = lockedControls(scenario.rig, scenario.open);
  for (const address of ['fader', 'mute', 'pan', 'aux3.tap', 'insert.send']) {
    const isControl = address !== 'insert.send';
    expect(locked.has(`desk.ch1.${address}`), address).toBe(isControl);
  }
  const { section, ...desk } = await openTask(page, 'Task', scenario.id);
  await ownerSelect(desk).selectOption('desk.ch1');

  const fader = fieldOf(desk, 'desk.ch1.fader');
  await expect(fader).toBeDisabled();
  await expect(section.getByRole('slider', { name: 'Fader (locked)' })).toBeVisible();
  const mute = section.locator('button[data-address="desk.ch1.mute"]');
  await expect(mute).toBeDisabled();
  await expect(mute).toHaveText('Mute (locked)');
  const tap = section.getByRole('group', { name: 'locked' });
  for (const group of await tap.all()) {
    await expect(group.getByRole('radio').first()).toBeDisabled();
    await expect(group.locator('.lock')).toBeVisible();
  }
  expect(await tap.count()).toBe(2);
  await expect(fieldOf(desk, 'desk.ch1.insert.return')).toBeEnabled();

  // The drawing offers no handle for it either.
  await section.locator('.desk-drawing').click({ position: { x: 1, y: 1 } });
  await expect(section.getByRole('button', { name: 'Undo' })).toBeDisabled();
});

test('what was moved is read out once, about half a second after the last of several edits', async ({
  page,
}) => {
  const desk = await openBench(page);
  await tabTo(fieldOf(desk, 'desk.ch3.fader'));
  await page.evaluate(() => {
    const region = document.querySelector('.desk .announced');
    if (!region) throw new Error('Expected a status region in the desk.');
    const said: { text: string; at: number }[] = [];
    const note = () => said.push({ text: region.textContent ?? '', at: performance.now() });
    new MutationObserver(note).observe(region, {
      childList: true,
      characterData: true,
      subtree: true,
    });
    addEventListener(
      'keydown',
      () => Reflect.set(globalThis, 'pressedAt', performance.now()),
      true,
    );
    Reflect.set(globalThis, 'said', said);
  });
  for (const key of ['PageDown', 'ArrowDown', 'ArrowDown']) await page.keyboard.press(key);
  const region = page.locator('.desk .announced');
  await expect(region).toContainText('minus 7.0 decibels');
  await expect(region).toContainText('Cello at Capture: minus 4.0 dBu');
  await page.waitForTimeout(700);
  const heard = await page.evaluate(() => {
    const said: { text: string; at: number }[] = Reflect.get(globalThis, 'said');
    const pressedAt: number = Reflect.get(globalThis, 'pressedAt');
    // A region that is written anew with the same text says nothing.
    const news = said.filter(({ text }, index) => text !== (said[index - 1]?.text ?? ''));
    return news.map(({ at }) => at - pressedAt);
  });
  expect(heard).toHaveLength(1);
  expect(heard[0]).toBeGreaterThan(450);
  expect(heard[0]).toBeLessThan(1500);
});

test('the wheel turns a control that has the focus, and only that', async ({ page }) => {
  await page.goto('/');
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  const fader = page.locator('.sheet [data-address="desk.ch3.fader"]');
  await fader.hover();
  await page.mouse.wheel(0, 100);
  await expect(fader).toHaveAttribute('aria-valuetext', '0.0 decibels');
  await fader.focus();
  await fader.hover();
  const scrolled = await page.evaluate(() => scrollY);
  await page.mouse.wheel(0, 100);
  await expect(fader).toHaveAttribute('aria-valuetext', 'minus 0.5 decibels');
  expect(await page.evaluate(() => scrollY)).toBe(scrolled);
});

test('what is typed and is no number is said to be none, and stays to be mended', async ({
  page,
}) => {
  await page.goto('/');
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  await page.getByRole('button', { name: 'Type over fader' }).click();
  const figure = page.getByRole('textbox', { name: 'fader in dB' });
  await expect(figure).toBeFocused();
  await figure.fill('loud');
  await figure.press('Enter');
  await expect(page.locator('.figure-word').filter({ hasText: 'found “loud”' })).toBeVisible();
  await expect(figure).toHaveAttribute('aria-invalid', 'true');
  await expect(figure).toHaveValue('loud');
  // Begun anew at the fader, it is typed over.
  await page.locator('.sheet [data-address="desk.ch3.fader"]').focus();
  await page.keyboard.type('-6');
  await expect(figure).toHaveValue('-6');
  await figure.press('Enter');
  await expect(figure).toHaveCount(0);
  await expect(page.locator('.sheet [data-address="desk.ch3.fader"]')).toHaveAttribute(
    'aria-valuetext',
    'minus 6.0 decibels',
  );
});
