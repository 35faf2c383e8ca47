import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { contrast, distance, type Vision } from './colour.ts';

const css = readFileSync(new URL('../../src/styles/tokens.css', import.meta.url), 'utf8');
const THEMES = ['light', 'dark'] as const;
type Theme = (typeof THEMES)[number];

/** The colour of a token in a theme, as the first rule of tokens.css gives it. */
function colour(token: string, theme: Theme): string {
  const written = `--${token}: light-dark\\((#[0-9a-f]{6}), (#[0-9a-f]{6})\\)`;
  const [, light, dark] = new RegExp(written).exec(css) ?? [];
  const found = theme === 'light' ? light : dark;
  if (!found) throw new Error(`tokens.css must give --${token} as light-dark(#rrggbb, #rrggbb).`);
  return found;
}

const SURFACES = ['paper', 'raised', 'sunk'];
const TEXTS = ['ink', 'ink-soft', 'followed-ink', 'passed', 'not-yet'];
const SIGNALS = ['before-fader', 'after-fader', 'subgroup'];

const inEachTheme = <T>(rows: readonly T[]) =>
  THEMES.flatMap((theme) => rows.map((row) => ({ theme, row })));

describe('the palette', () => {
  test.each(inEachTheme([...TEXTS, ...SIGNALS]))('$row reads as text, $theme: 4.5:1', (line) => {
    for (const surface of SURFACES) {
      const ratio = contrast(colour(line.row, line.theme), colour(surface, line.theme));
      expect(ratio, surface).toBeGreaterThanOrEqual(4.5);
    }
  });

  test.each(inEachTheme(['line']))('$row is seen as a line, $theme: 3:1', ({ theme, row }) => {
    for (const surface of SURFACES) {
      expect(contrast(colour(row, theme), colour(surface, theme))).toBeGreaterThanOrEqual(3);
    }
  });

  test.each(THEMES)('the followed source is seen by its core or by its casing, %s', (theme) => {
    for (const surface of SURFACES) {
      const [core, casing] = ['followed', 'followed-casing'].map((token) =>
        contrast(colour(token, theme), colour(surface, theme)),
      );
      expect(Math.max(core ?? 0, casing ?? 0), surface).toBeGreaterThanOrEqual(3);
    }
    const edge = contrast(colour('followed', theme), colour('followed-casing', theme));
    expect(edge).toBeGreaterThanOrEqual(3);
  });

  const visions: Vision[] = ['usual', 'protanopia', 'deuteranopia', 'tritanopia'];
  test.each(inEachTheme(visions))('signals are told apart, $theme, $row: ΔE of 20', (line) => {
    const all = [...SIGNALS, 'followed'];
    for (const [index, one] of all.entries()) {
      for (const other of all.slice(index + 1)) {
        const apart = distance(colour(one, line.theme), colour(other, line.theme), line.row);
        expect(apart, `${one} and ${other}`).toBeGreaterThanOrEqual(20);
      }
    }
  });
});

test('contrast() of black and white is 21, of a colour with itself 1', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
  expect(contrast('#167356', '#167356')).toBeCloseTo(1, 6);
});
