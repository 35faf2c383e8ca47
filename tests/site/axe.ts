import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

const WCAG = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** Rules that depend on the theme: between the two only colours differ. */
const COLOUR_RULES = ['color-contrast', 'link-in-text-block'];

/** One line for each element that axe objects to, so that a failure can be read. */
async function violationsBy(axe: AxeBuilder): Promise<string[]> {
  // The legacy mode does without a second page and takes a third of the time. It looks into no
  // frame of another origin, and the policy allows no frame at all.
  const { violations } = await axe.setLegacyMode().analyze();
  return violations.flatMap(({ id, help, nodes }) =>
    nodes.map((node) => `${id}: ${help} at ${node.target.join(' ')}`),
  );
}

/** Of a part, all but the words in drawings: they are many, and stand the same on a page as it is opened. */
const within = (page: Page, part: string | undefined): AxeBuilder => {
  // To describe what it does not object to would take longer than to look at it.
  const axe = new AxeBuilder({ page }).options({ resultTypes: ['violations'] });
  return part ? axe.include(part).exclude('.desk-drawing text') : axe;
};

/** Shows the page in a theme. Buttons change over to it, and would be looked at halfway there. */
async function showIn(page: Page, colorScheme: 'light' | 'dark'): Promise<void> {
  await page.emulateMedia({ colorScheme });
  await page.waitForFunction(() =>
    document.getAnimations().every(({ playState }) => playState !== 'running'),
  );
}

/** What axe objects to by WCAG 2.2 AA, with the page light; of a part of it where one is named. */
export async function violationsInLight(page: Page, part?: string): Promise<string[]> {
  await showIn(page, 'light');
  return violationsBy(within(page, part).withTags(WCAG));
}

/** What axe objects to, with the page light and then dark. */
export async function violationsInBothThemes(page: Page, part?: string): Promise<string[]> {
  const light = await violationsInLight(page, part);
  await showIn(page, 'dark');
  const dark = await violationsBy(within(page, part).withRules(COLOUR_RULES));
  await showIn(page, 'light');
  return [...light, ...dark.map((line) => `dark: ${line}`)];
}
