import { builtPages } from './built-pages.ts';
import { expect, test } from './fixture.ts';

/**
 * The most that a page may move by itself, by the measure of the W3C's Layout Instability draft; 0.1 counts as
 * good. A paragraph that takes a line less in the site's own font than in the one before it is 0.012.
 */
const MOST = 0.02;

/** Lessons are made of the same parts; two of them stand for all. */
const LESSONS = 2;
const lessons = builtPages().filter((address) => /^\/lessons\/./.test(address));
const PAGES = [
  ...builtPages().filter((address) => address === '/' || /^\/(bench|drills)\//.test(address)),
  ...lessons.slice(0, LESSONS),
];

for (const [screen, viewport] of [
  ['a desk', { width: 1280, height: 900 }],
  ['a phone', { width: 390, height: 844 }],
] as const) {
  test(`nothing on a page moves when it comes to life, on ${screen}`, async ({ page }) => {
    test.setTimeout(PAGES.length * 6_000);
    await page.setViewportSize(viewport);
    await page.addInitScript(() => {
      const moved = { total: 0 };
      Object.assign(window, { moved });
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) {
          // What moves within half a second of a key or a click was asked for.
          if (!Reflect.get(entry, 'hadRecentInput'))
            moved.total += Number(Reflect.get(entry, 'value'));
        }
      }).observe({ type: 'layout-shift', buffered: true });
    });
    for (const address of PAGES) {
      await test.step(address, async () => {
        await page.goto(address);
        await page.waitForLoadState('networkidle');
        const moved = await page.evaluate(() => Reflect.get(window, 'moved').total);
        expect.soft(moved, address).toBeLessThanOrEqual(MOST);
      });
    }
  });
}

test('a drawing stands where it stays before its names have come in', async ({ page }) => {
  let drawings = 0;
  for (const address of PAGES) {
    await test.step(address, async () => {
      await page.goto(address);
      const moved = await page.locator('.desk-picture').evaluateAll((pictures) =>
        pictures.map((picture) => {
          const [drawing, names] = picture.children;
          const leftOf = () => drawing?.getBoundingClientRect().left ?? 0;
          const after = leftOf();
          names?.remove();
          return leftOf() - after;
        }),
      );
      expect
        .soft(
          moved.filter((by) => by !== 0),
          address,
        )
        .toEqual([]);
      drawings += moved.length;
    });
  }
  expect(drawings).toBeGreaterThan(PAGES.length / 2);
});
