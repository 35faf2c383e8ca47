import type { Locator, Page } from '@playwright/test';
import {
  type Board,
  type Control,
  type ControlValue,
  controls,
  cordFrom,
  movesBetween,
  NONE,
  numberAt,
  type Setup,
  withValues,
} from '../../simulator/index.ts';
import { expect } from './fixture.ts';

/** More presses of Tab than any page needs. */
const MOST_TABS = 800;

/**
 * Presses Tab, or Shift+Tab where it lies behind, until an element has the focus. Nothing else moves it.
 *
 * It looks only after as many presses as there seem to be stops on the way, and goes on from there.
 */
export async function tabTo(target: Locator): Promise<void> {
  const { keyboard } = target.page();
  for (let pressed = 0; pressed < MOST_TABS; ) {
    const stops = await target.evaluate(stopsBetween);
    if (stops === 0) return;
    for (let press = 0; press < Math.abs(stops); press += 1) {
      await keyboard.press(stops < 0 ? 'Shift+Tab' : 'Tab');
    }
    pressed += Math.abs(stops);
  }
  throw new Error(`Expected Tab to lead to ${target}, but it did not within ${MOST_TABS} presses.`);
}

/** Runs in the page: about how many stops of Tab from what has the focus to an element; behind it, negative. */
function stopsBetween(target: Element): number {
  const focused = document.activeElement;
  if (focused === target) return 0;
  if (!focused || focused === document.body) return 1;
  const isStop = (element: HTMLElement) =>
    element.tabIndex >= 0 && !element.matches(':disabled') && element.checkVisibility();
  const candidates = document.querySelectorAll<HTMLElement>(
    'a[href], button, input:not([type="radio"]), input:checked, select, summary, [tabindex]',
  );
  const stops = [...candidates].filter(isStop);
  const [from, to] = [focused, target].map((element) => stops.indexOf(element as HTMLElement));
  if (from !== undefined && to !== undefined && from >= 0 && to >= 0) return to - from;
  const position = focused.compareDocumentPosition(target);
  return position & Node.DOCUMENT_POSITION_PRECEDING ? -1 : 1;
}

/** Goes to a button and presses it. */
export async function pressButton(button: Locator): Promise<void> {
  await tabTo(button);
  await button.page().keyboard.press('Enter');
}

/**
 * Goes to a native select, opens its list, and chooses an option by arrows and Enter. It then stands
 * there, or where the desk is not going to take it, where it stood.
 */
export async function chooseOption(
  select: Locator,
  value: string,
  { isTaken = true } = {},
): Promise<void> {
  await tabTo(select);
  const standing = await select.inputValue();
  const by = await select.evaluate((element, wanted) => {
    const { options, selectedIndex } = element as HTMLSelectElement;
    const index = [...options].findIndex((option) => option.value === wanted);
    return index < 0 ? undefined : index - selectedIndex;
  }, value);
  if (by === undefined)
    throw new Error(`Expected an option ${value} at ${select}, but found none.`);
  if (by === 0) return;
  const { keyboard } = select.page();
  await keyboard.press('Alt+ArrowDown');
  for (let press = 0; press < Math.abs(by); press += 1) {
    await keyboard.press(by > 0 ? 'ArrowDown' : 'ArrowUp');
  }
  await keyboard.press('Enter');
  await expect(select).toHaveValue(isTaken ? value : standing);
}

/** A desk on a page, by the id that its fields begin with. */
export interface DeskOnPage {
  readonly page: Page;
  readonly id: string;
}

/** The field of a control in the sheet of a desk. */
export const fieldOf = ({ page, id }: DeskOnPage, address: string): Locator =>
  page.locator(`[id="${id}-${address}"]`);

/** The select that opens an owner in the sheet of a desk. */
export const ownerSelect = ({ page, id }: DeskOnPage): Locator => page.locator(`#${id}-owner`);

/**
 * Moves every control that stands differently on two boards, each with the keys of its kind, in the
 * sheet of a desk that stands as `from` now. A cord that is in the way of another is pulled first.
 */
export async function moveByKeyboard(desk: DeskOnPage, from: Setup, to: Board): Promise<void> {
  let now = from;
  const set = async (control: Control, value: ControlValue) => {
    await setByKeyboard(desk, now, control, value);
    now = { rig: now.rig, board: withValues(now.rig, now.board, { [control.address]: value }) };
  };
  for (const { control, to: value } of movesBetween(from.rig, from.board, to)) {
    if (control.kind === 'cord' && value !== NONE) {
      const held = cordFrom(now, String(value));
      const holder = held === undefined ? undefined : controls(from.rig).get(held);
      if (holder && holder !== control) await set(holder, NONE);
    }
    await set(control, value);
  }
  // A cord that was pulled to make room may have to be plugged somewhere else.
  for (const { control, to: value } of movesBetween(from.rig, now.board, to)) {
    await set(control, value);
  }
}

/** Sets one control with the keys of its kind, after opening its owner in the sheet. */
async function setByKeyboard(
  desk: DeskOnPage,
  now: Setup,
  control: Control,
  value: ControlValue,
): Promise<void> {
  const { keyboard } = desk.page;
  const { address, kind, owner } = control;
  const owners = ownerSelect(desk);
  if ((await owners.inputValue()) !== owner) await chooseOption(owners, owner);
  const field = fieldOf(desk, address);
  switch (kind) {
    case 'gain':
      await tabTo(field);
      await keyboard.type(value === -Infinity ? '-inf' : String(value));
      await keyboard.press('Enter');
      return;
    case 'pan': {
      await tabTo(field);
      for (const key of panKeys(numberAt(now, address), Number(value))) await keyboard.press(key);
      return;
    }
    case 'switch':
      await tabTo(
        desk.page.locator(`.desk:has(#${desk.id}-owner) button[data-address="${address}"]`),
      );
      await keyboard.press('Space');
      return;
    case 'choice':
      if (address.endsWith('.tap')) await turnRadio(desk, address, String(value));
      else await chooseOption(field, String(value));
      return;
    case 'cord':
      await chooseOption(field, String(value));
  }
}

/** The keys that turn a pan, from an end if that is shorter. Arrows go 0.05, with Shift 0.01. */
function panKeys(from: number, to: number): string[] {
  const steps = (start: number): string[] => {
    const hundredths = Math.round((to - start) * 100);
    const side = hundredths > 0 ? 'Right' : 'Left';
    const [coarse, fine] = [Math.trunc(Math.abs(hundredths) / 5), Math.abs(hundredths) % 5];
    return [
      ...Array<string>(coarse).fill(`Arrow${side}`),
      ...Array<string>(fine).fill(`Shift+Arrow${side}`),
    ];
  };
  const routes = [steps(from), ['Home', ...steps(-1)], ['End', ...steps(1)]];
  return routes.reduce((best, route) => (route.length < best.length ? route : best));
}

/** Goes to the chosen one of some radio buttons, as Tab does, and on to another by arrows. */
async function turnRadio({ page, id }: DeskOnPage, address: string, value: string): Promise<void> {
  const group = page.locator(`input[name="${id}-${address}"]`);
  await tabTo(group.and(page.locator(':checked')));
  const wanted = group.and(page.locator(`[value="${value}"]`));
  for (let press = 0; press < (await group.count()); press += 1) {
    if (await wanted.isChecked()) return;
    await page.keyboard.press('ArrowDown');
  }
  await expect(wanted).toBeChecked();
}
