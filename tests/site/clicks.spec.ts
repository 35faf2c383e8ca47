import type { Locator, Page } from '@playwright/test';
import { controls, db, faderPosition, movesBetween, type Rig } from '../../simulator/index.ts';
import type { Point } from '../../src/drawing/drawing.ts';
import { GUTTER, layOut } from '../../src/drawing/lay-out.ts';
import { course, openTask } from './course-pages.ts';
import { expect, test } from './fixture.ts';
import { fieldOf, ownerSelect } from './keyboard.ts';

test.describe('with a finger', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

  test('alto-and-the-plate is solved by taps alone, one strip at a time on the screen', async ({
    page,
  }) => {
    const scenario = course.scenarios.get('alto-and-the-plate');
    if (!scenario) throw new Error('Expected the scenario alto-and-the-plate, but found none.');
    const { section, ...desk } = await openTask(page, 'Task', scenario.id);
    const columns = section.locator('.desk-drawing .mark');
    await expect(columns).toHaveCount(3); // one strip, the subgroup, the main bus

    for (const { control, to } of movesBetween(scenario.rig, scenario.start, scenario.solution)) {
      await ownerSelect(desk).selectOption(control.owner);
      const field = fieldOf(desk, control.address);
      if (control.kind === 'cord') await field.selectOption(String(to));
      else await tapGain(field, Number(to));
    }
    // The plate was opened last; beside it stands the strip that was opened before.
    await expect(section.locator('.desk-drawing .mark').first()).toHaveText('R1');
    await section.getByRole('button', { name: 'Check', exact: true }).tap();
    await expect(section.locator('.verdict-head')).toContainText('Passed');
    await expect(section.locator('.check-not-yet')).toHaveCount(0);
  });
});

/** Touches a range near a gain, and then its buttons until it stands there. */
async function tapGain(range: Locator, wanted: number): Promise<void> {
  const box = await range.boundingBox();
  if (!box) throw new Error(`Expected ${range} to be on the screen, but it is not.`);
  await range.tap({ position: { x: box.width * faderPosition(db(wanted)), y: box.height / 2 } });
  const field = range.locator('xpath=..');
  const figure = async () => {
    const shown = await field.getByRole('button', { name: 'Type over' }).textContent();
    return Number(shown?.replace('−', '-').replace(' dB', ''));
  };
  expect(Math.abs((await figure()) - wanted)).toBeLessThan(3);
  for (let tap = 0; tap < 8 && Math.abs((await figure()) - wanted) > 0.3; tap += 1) {
    await field
      .getByRole('button')
      .nth((await figure()) > wanted ? 0 : 1)
      .tap();
  }
  expect(Math.abs((await figure()) - wanted)).toBeLessThan(0.4);
}

/** Where a point of a drawing lies in its picture, which begins right of the names. */
const inPicture = ({ x, y }: Point): Point => ({ x: x - GUTTER, y });

/** The drawing of the front page, and a way to touch a place of it. */
async function openFrontDesk(page: Page) {
  await page.goto('/');
  await expect(page.locator('astro-island[ssr]')).toHaveCount(0);
  const rig = course.rigs.get('net-loft') as Rig;
  const show = ['desk.ch3', 'desk.ch8', 'desk.ret1', 'desk.aux1', 'desk.aux3', 'desk.main'];
  const cello = layOut(rig, show).columns.find(({ owner }) => owner === 'desk.ch3');
  if (!cello) throw new Error('Expected strip 3 in the drawing of the front page, but found none.');
  const svg = page.locator('.desk-drawing');
  const desk = { page, id: 'front' };
  return { rig, cello, svg, desk };
}

test('in the drawing, a click on the other wire switches a tap, one on a dot an assign, one in a slot sets a fader', async ({
  page,
}) => {
  const { cello, svg, desk } = await openFrontDesk(page);
  const pre = page.locator('input[name="front-desk.ch3.aux1.tap"][value="pre"]');
  const [send] = cello.sends.filter(({ address }) => address === 'desk.ch3.aux1');
  const main = cello.assigns.find(({ address }) => address === 'desk.ch3.main');
  const [slot] = cello.faders;
  if (!send || !main || !slot)
    throw new Error('Expected a send, an assign and a fader on strip 3.');

  await ownerSelect(desk).selectOption('desk.ch8');
  await svg.click({ position: inPicture(send.after) });
  await expect(ownerSelect(desk)).toHaveValue('desk.ch3');
  await expect(pre).not.toBeChecked();
  await svg.click({ position: inPicture(send.before) });
  await expect(pre).toBeChecked();

  const assign = page.locator('button[data-address="desk.ch3.main"]');
  await expect(assign).toHaveAttribute('aria-pressed', 'true');
  await svg.click({ position: inPicture(main.at) });
  await expect(assign).toHaveAttribute('aria-pressed', 'false');
  await svg.click({ position: inPicture(main.at) });
  await expect(assign).toHaveAttribute('aria-pressed', 'true');

  const at = (gain: number) => ({
    x: slot.x - GUTTER,
    y: slot.bottom - faderPosition(db(gain)) * (slot.bottom - slot.top),
  });
  const figure = page.getByRole('button', { name: 'Type over fader' });
  await svg.click({ position: at(-10) });
  await expect(figure).toHaveText(/^−(9\.[6-9]|10\.[0-4]) dB$/);
  await svg.click({ position: at(0.2) });
  await expect(figure).toHaveText('0.0 dB');
});

test('a fader that is dragged faster than frames come is drawn once a frame, and ends where it was let go', async ({
  page,
}) => {
  const { cello, svg } = await openFrontDesk(page);
  const [slot] = cello.faders;
  if (!slot) throw new Error('Expected a fader on strip 3.');
  await svg.scrollIntoViewIfNeeded();
  const box = await svg.boundingBox();
  if (!box) throw new Error('Expected the drawing on the screen.');
  const x = box.x + slot.x - GUTTER;
  const at = (gain: number): number =>
    box.y + slot.bottom - faderPosition(db(gain)) * (slot.bottom - slot.top);
  await page.mouse.move(x, at(0));
  await page.mouse.down();
  // All of them come before the next frame.
  const drawn = await page.evaluate(
    async ({ x, heights }) => {
      const hit = document.elementFromPoint(x, heights[0] ?? 0);
      const cap = hit?.parentElement?.querySelector('.cap');
      if (!hit || !cap) throw new Error('Expected a fader there, found none.');
      let times = 0;
      const observer = new MutationObserver(() => {
        times += 1;
      });
      observer.observe(cap, { attributes: true, attributeFilter: ['y'] });
      await new Promise((resolve) => requestAnimationFrame(resolve));
      for (const clientY of heights) {
        hit.dispatchEvent(new PointerEvent('pointermove', { clientX: x, clientY, bubbles: true }));
        await Promise.resolve();
      }
      const atOnce = times;
      for (let frame = 0; frame < 4; frame += 1) {
        await new Promise((resolve) => requestAnimationFrame(resolve));
      }
      await new Promise((resolve) => setTimeout(resolve, 100));
      observer.disconnect();
      return { atOnce, inAll: times };
    },
    { x, heights: [-3, -5, -7, -14, -20].map(at) },
  );
  expect(drawn.atOnce).toBeLessThanOrEqual(1);
  expect(drawn.inAll).toBe(2);
  await page.mouse.up();
  const figure = page.getByRole('button', { name: 'Type over fader' });
  await expect(figure).toHaveText(/^−(19|20)\.\d dB$/);
});

test('a field that goes while it is dragged leaves undo as it was', async ({ page }) => {
  await openFrontDesk(page);
  const fader = page.getByRole('slider', { name: 'Fader' });
  await fader.scrollIntoViewIfNeeded();
  const box = await fader.boundingBox();
  if (!box) throw new Error('Expected a fader in the sheet.');
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 4, box.y + box.height / 2);
  await expect(page.getByRole('button', { name: 'Type over fader' })).toHaveText(/^−/);
  // As a second finger does, before the first one leaves.
  await page.getByLabel('Controls of').selectOption({ label: 'Strip 8 Bass' });
  const undo = page.getByRole('button', { name: 'Undo' });
  await expect(undo).toBeEnabled();
  await undo.focus();
  await page.keyboard.press('Enter');
  await expect(undo).toBeDisabled();
  await page.mouse.up();
});

test('a fader that is dragged in the drawing comes back with one undo', async ({ page }) => {
  const { cello, svg, desk } = await openFrontDesk(page);
  const [slot] = cello.faders;
  if (!slot) throw new Error('Expected a fader on strip 3.');
  await svg.scrollIntoViewIfNeeded();
  const box = await svg.boundingBox();
  if (!box) throw new Error('Expected the drawing on the screen.');
  const at = (gain: number): [number, number] => [
    box.x + slot.x - GUTTER,
    box.y + slot.bottom - faderPosition(db(gain)) * (slot.bottom - slot.top),
  ];
  await page.mouse.move(...at(0));
  await page.mouse.down();
  for (const gain of [-3, -7, -14, -20]) await page.mouse.move(...at(gain));
  await page.mouse.up();
  const figure = page.getByRole('button', { name: 'Type over fader' });
  await expect(figure).toHaveText(/^−(19|20)\.\d dB$/);

  const undo = page.getByRole('button', { name: 'Undo' });
  await undo.click();
  await expect(figure).toHaveText('0.0 dB');
  await expect(undo).toBeDisabled();
  await page.getByRole('button', { name: 'Redo' }).click();
  await expect(figure).toHaveText(/^−(19|20)\.\d dB$/);

  // Where the last drag ended the next one may end as well.
  await page.mouse.move(...at(0));
  await page.mouse.down();
  await expect(figure).toHaveText('0.0 dB');
  await page.mouse.move(...at(-20));
  await page.mouse.up();
  await expect(figure).toHaveText(/^−(19|20)\.\d dB$/);

  // So does one in the sheet.
  const range = fieldOf(desk, 'desk.ch3.fader');
  const track = await range.boundingBox();
  if (!track) throw new Error('Expected the range on the screen.');
  const [left, middle] = [track.x, track.y + track.height / 2];
  await page.mouse.move(left + track.width * 0.2, middle);
  await page.mouse.down();
  for (const share of [0.3, 0.45, 0.6]) await page.mouse.move(left + track.width * share, middle);
  // Let go beside it, as hands do.
  await page.mouse.move(left + track.width * 0.6, middle + 60);
  await page.mouse.up();
  await expect(figure).not.toHaveText(/^−(19|20)\.\d dB$/);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(figure).toHaveText(/^−(19|20)\.\d dB$/);
});

test('on a phone, opening a bus leaves the strip beside it where it is', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  const { rig, desk, svg } = await openFrontDesk(page);
  expect(controls(rig).has('desk.main.fader')).toBe(true);
  await ownerSelect(desk).selectOption('desk.ch8');
  await expect(svg.locator('.mark').first()).toHaveText('8');
  await ownerSelect(desk).selectOption('desk.main');
  await expect(svg.locator('.mark').first()).toHaveText('8');
});
