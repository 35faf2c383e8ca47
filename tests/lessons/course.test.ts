import { describe, expect, test } from 'vitest';
import { COURSE_FILE, checkCourse, type Kind } from '../../src/course/index.ts';
import { articles, course, errors, glossary, lessons, repeated } from './the-course.ts';

/** The component that puts a task of each kind into a lesson or an article. */
const COMPONENTS: Partial<Record<Kind, string>> = {
  scenario: 'Task',
  quiz: 'Quiz',
  'walk-through': 'WalkThrough',
};

const complaints = checkCourse(course);

describe(COURSE_FILE, () => {
  test('every file of the course can be read', () => {
    expect(errors.map(({ message }) => message)).toEqual([]);
  });

  test('it lists each lesson on disk once, and no other', () => {
    expect([...course.lessons].sort()).toEqual(lessons.map(({ slug }) => slug));
  });

  test('there is a lesson, and a task of each kind', () => {
    expect(lessons.length).toBeGreaterThan(0);
    const kinds = new Set(course.holdings.map(({ kind }) => kind));
    expect([...kinds].sort()).toEqual(['quiz', 'rig', 'scenario', 'walk-through']);
  });
});

test('what is mistaken for one another are words of the glossary, each pair once', () => {
  const words = glossary.map(({ id }) => id);
  const { confusable } = course;
  expect(confusable.flat().filter((id) => !words.includes(id))).toEqual([]);
  const pairs = confusable.flatMap((group) =>
    group.flatMap((one) => group.filter((other) => one < other).map((other) => `${one} ${other}`)),
  );
  expect(repeated(pairs)).toEqual([]);
});

describe.each(course.holdings)('$file', ({ file, kind, id }) => {
  test('checkCourse() has no complaint about it', () => {
    const about = complaints.filter((complaint) => complaint.file === file);
    expect(about.map(({ what }) => what)).toEqual([]);
  });

  const component = COMPONENTS[kind];
  if (component === undefined) return;
  test('it stands in the lessons and articles exactly once', () => {
    const places = [...lessons, ...articles].flatMap((lesson) =>
      lesson.components
        .filter(({ name, props }) => name === component && props['id'] === id)
        .map(({ line }) => `${lesson.file}:${line}`),
    );
    expect(places).toHaveLength(1);
  });
});
