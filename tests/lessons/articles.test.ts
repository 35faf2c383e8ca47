import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { articleSchema } from '../../src/course/index.ts';
import { ALLOWED_FIGURES } from './allowed-figures.ts';
import { faultsOf } from './components.ts';
import { figuresIn } from './figures.ts';
import type { Lesson } from './lesson.ts';
import { articles, repeated } from './the-course.ts';

const settingsIn = ({ components }: Lesson): (readonly [string, unknown])[] =>
  components.flatMap(({ props }) => Object.entries(props['board'] ?? {}));

describe.each(articles)('$file', (article) => {
  const allowed = ALLOWED_FIGURES[article.slug] ?? [];

  test('its head is as the site reads it', () => {
    expect(articleSchema.safeParse(article.frontmatter).error?.issues ?? []).toEqual([]);
  });

  test('its components are sound: ids exist, boards fit their rig, there is something to read', () => {
    expect(article.components.length).toBeGreaterThan(0);
    expect(article.components.flatMap(faultsOf)).toEqual([]);
  });

  test('headings are of the second and third level, and stand once', () => {
    const headings = article.pieces.filter((piece) => piece.kind === 'heading');
    expect(headings.filter(({ depth }) => depth < 2 || depth > 3)).toEqual([]);
    expect(repeated(headings.map(({ text }) => text))).toEqual([]);
  });

  test('each section with a desk has a formula, a source and a figure that is computed', () => {
    const sections = readFileSync(article.file, 'utf8').split(/^## /m);
    const withDesk = sections.filter((section) => section.includes('<WalkThrough '));
    expect(withDesk.length).toBeGreaterThan(0);
    const lacks = withDesk.flatMap((section) =>
      [/<Formula>/, /<Source /, /<Reading /]
        .filter((piece) => !piece.test(section))
        .map((piece) => `${section.slice(0, section.indexOf('\n'))}: ${piece.source}`),
    );
    expect(lacks).toEqual([]);
  });

  test('it computes nothing and leads nowhere outside the site', () => {
    expect(article.code).toEqual([]);
    expect(article.links.filter((link) => !/^(#|\/(?!\/))/.test(link))).toEqual([]);
  });

  test('each figure in its prose is one that it is allowed to write out, and each of those is there', () => {
    const figures = new Set(article.prose.flatMap(figuresIn).map(({ text }) => text));
    expect([...figures].sort()).toEqual(allowed.map(({ figure }) => figure).sort());
  });

  test.each(allowed)('it may write out $figure', ({ figure, settingOf, reason }) => {
    if (settingOf === undefined) return expect(reason).toBeTruthy();
    const [value] = figuresIn(figure).map((one) => one.value);
    expect(settingsIn(article)).toContainEqual([settingOf, value]);
  });
});
