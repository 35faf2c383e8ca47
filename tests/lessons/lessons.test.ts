import { describe, expect, test } from 'vitest';
import { drillOf, lockedControls } from '../../simulator/index.ts';
import { testOutOf } from '../../src/components/lesson/test-out.ts';
import { lessonSchema } from '../../src/course/index.ts';
import { readDrillName } from '../../src/share/drill-link.ts';
import { ALLOWED_FIGURES } from './allowed-figures.ts';
import { faultsOf } from './components.ts';
import { countIn } from './counts.ts';
import { figuresIn } from './figures.ts';
import type { Lesson, Piece } from './lesson.ts';
import { articles, course, glossary, lessons, repeated } from './the-course.ts';

const WORDS = { least: 500, most: 900 };
const QUESTIONS = { least: 3, most: 5 };

/** The second half of every lesson: examples before tasks, tasks before questions, then what stays. */
const PATTERN = [
  '## Walk through it',
  'words',
  '<WalkThrough>',
  '## Half done:',
  'words',
  '<Task>',
  '## On your own:',
  'words',
  '<Task>',
  '## Quiz',
  '<Quiz>',
  '## What to try on your own desk',
  'words',
  '## Common mistakes',
  'words',
  '## When it comes back',
  'words',
];
/** Pieces that may stand anywhere. */
const ANYWHERE = ['<Picture>', '<Caution>'];

function nameOf(piece: Piece): string {
  if (piece.kind === 'words') return 'words';
  if (piece.kind === 'component') return `<${piece.component.name}>`;
  const text = piece.text.replace(/^(Half done:|On your own:) .+$/, '$1');
  return `${'#'.repeat(piece.depth)} ${text}`;
}

/** The pieces of a lesson by name, with words that follow words as one. */
function namesOf({ pieces }: Lesson): string[] {
  const names = pieces.map(nameOf).filter((name) => !ANYWHERE.includes(name));
  return names.filter((name, index) => name !== 'words' || names[index - 1] !== 'words');
}

const idsIn = ({ components }: Lesson, name: string): string[] =>
  components.filter((one) => one.name === name).map(({ props }) => String(props['id']));

const idsOfFindings = ({ components }: Lesson): unknown[] =>
  components.filter(({ name }) => name === 'Finding').map(({ props }) => props['code']);

const settingsIn = ({ components }: Lesson): (readonly [string, unknown])[] =>
  components.flatMap(({ props }) => Object.entries(props['board'] ?? {}));

describe.each(lessons)('$file', (lesson) => {
  const allowed = ALLOWED_FIGURES[lesson.slug] ?? [];

  test('its head is as the site reads it', () => {
    const { success, error } = lessonSchema.safeParse(lesson.frontmatter);
    expect(error?.issues ?? []).toEqual([]);
    expect(success).toBe(true);
  });

  test('its concepts are words of the glossary, and it leads to each of them', () => {
    const { concepts } = lessonSchema.parse(lesson.frontmatter);
    const words = glossary.map(({ id }) => id);
    const terms = idsIn(lesson, 'Term');
    expect(repeated(concepts)).toEqual([]);
    expect(concepts.filter((id) => !words.includes(id) || !terms.includes(id))).toEqual([]);
  });

  test('what it needs are lessons that come earlier in the course', () => {
    const { needs } = lessonSchema.parse(lesson.frontmatter);
    const earlier = course.lessons.slice(0, course.lessons.indexOf(lesson.slug));
    expect(repeated(needs)).toEqual([]);
    expect(needs.filter((slug) => !earlier.includes(slug))).toEqual([]);
  });

  test('its components are sound: ids exist, boards fit their rig, what is moved is shown', () => {
    expect(lesson.components.length).toBeGreaterThan(0);
    expect(lesson.components.flatMap(faultsOf)).toEqual([]);
  });

  test('it goes from prose with a picture to a walk-through, two tasks, a quiz and what stays', () => {
    const names = namesOf(lesson);
    const end = names.slice(names.indexOf(PATTERN[0] ?? ''));
    const isOptional = (name: string, index: number) =>
      name === 'words' && end[index - 1] === '## Quiz';
    expect(end.filter((name, index) => !isOptional(name, index))).toEqual(PATTERN);
    expect(names.slice(0, 2)).toEqual([expect.stringMatching(/^## /), 'words']);
    expect(idsIn(lesson, 'Picture').length).toBeGreaterThan(0);
  });

  test('headings are of the second and third level, and stand once', () => {
    const headings = lesson.pieces.filter((piece) => piece.kind === 'heading');
    expect(headings.filter(({ depth }) => depth < 2 || depth > 3)).toEqual([]);
    expect(repeated(headings.map(({ text }) => text))).toEqual([]);
  });

  test('its half-done task locks more than its free one', () => {
    const [halfDone, free] = idsIn(lesson, 'Task').map((id) => course.scenarios.get(id));
    const locks = (scenario: typeof free) =>
      scenario ? lockedControls(scenario.rig, scenario.open).size : Number.NaN;
    expect(locks(halfDone)).toBeGreaterThan(locks(free));
  });

  test(`its prose has ${WORDS.least} to ${WORDS.most} words`, () => {
    const { words } = countIn(lesson);
    expect(words).toBeGreaterThanOrEqual(WORDS.least);
    expect(words).toBeLessThanOrEqual(WORDS.most);
  });

  test(`it asks ${QUESTIONS.least} to ${QUESTIONS.most} questions`, () => {
    const { questions } = countIn(lesson);
    expect(questions).toBeGreaterThanOrEqual(QUESTIONS.least);
    expect(questions).toBeLessThanOrEqual(QUESTIONS.most);
  });

  test('its last section leads to a drill that can be made, at its level and at the next, or to a hunt', () => {
    const [, last = ''] = lesson.text.split('## When it comes back');
    const [, name = ''] = /\/drills\/#drill=([a-z0-9.-]+)/.exec(last) ?? [];
    if (name === '') return expect(last).toContain('(/fault-hunt/)');
    const asks = [name, testOutOf(lesson.text).drill ?? ''].map(readDrillName);
    const made = asks.map((ask) => 'concept' in ask && drillOf(ask.concept, ask.level, ask.seed));
    return expect(made.filter((drill) => !drill)).toEqual([]);
  });

  test('it tells a finding as the bench does, and its common mistakes say what the bench says', () => {
    const [, mistakes = ''] = lesson.text.split('## Common mistakes');
    expect(idsOfFindings(lesson)).not.toEqual([]);
    expect(mistakes.split('## When')[0]).toMatch(/<Finding |\bthe bench\b/i);
  });

  test('its aim begins with a verb in small words, and is one sentence', () => {
    const { aim } = lessonSchema.parse(lesson.frontmatter);
    expect(aim).toMatch(/^[A-Z][a-z]+ [^.?!]+$/);
  });

  test('it imports nothing, exports nothing and computes nothing', () => {
    expect(lesson.code).toEqual([]);
  });

  test('it leads nowhere outside the site', () => {
    const isInside = (link: string) => /^(#|\/(?!\/))/.test(link);
    expect(lesson.links.filter((link) => !isInside(link))).toEqual([]);
  });

  test('each figure in its prose is one that it is allowed to write out', () => {
    const figures = lesson.prose.flatMap(figuresIn).map(({ text }) => text);
    const known = allowed.map(({ figure }) => figure);
    expect(figures.filter((figure) => !known.includes(figure))).toEqual([]);
  });

  test.each(allowed)('it may write out $figure', ({ figure, settingOf, reason }) => {
    const figures = lesson.prose.flatMap(figuresIn).filter(({ text }) => text === figure);
    const values = settingsIn(lesson).flatMap(([address, value]) =>
      address === settingOf ? [value] : [],
    );
    expect(figures.length).toBeGreaterThan(0);
    if (settingOf) expect(values).toContain(figures[0]?.value);
    else expect(reason).toBeTruthy();
  });
});

test('figures are allowed only to lessons and articles that there are', () => {
  const slugs = [...lessons, ...articles].map(({ slug }) => slug);
  expect(Object.keys(ALLOWED_FIGURES).filter((slug) => !slugs.includes(slug))).toEqual([]);
});
