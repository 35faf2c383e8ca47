import { expect, test } from 'vitest';
import { parseCourse, readCourse } from '../../src/course/index.ts';
import { filesWith } from './small-course.ts';

test('parseCourse() finds every rig and task by its id', () => {
  const { course, errors } = parseCourse(filesWith());
  expect(errors).toEqual([]);
  expect(course.title).toBe('A small course');
  expect(course.lessons).toEqual(['first', 'second']);
  expect([...course.rigs.keys()]).toEqual(['two']);
  expect([...course.scenarios.keys()]).toEqual(['send-it']);
  expect([...course.quizzes.keys()]).toEqual(['levels']);
  expect([...course.walkThroughs.keys()]).toEqual(['down']);
  expect(course.scenarios.get('send-it')?.rig).toBe(course.rigs.get('two'));
});

test('parseCourse() leaves out a file that cannot be read, and names it with its line', () => {
  const files = filesWith(
    'lessons/scenarios/send-it.yaml',
    'desk.ch1.aux1: -6',
    'desk.ch9.aux1: -6',
  );
  const { course, errors } = parseCourse(files);
  expect(course.scenarios.size).toBe(0);
  expect(course.quizzes.size).toBe(1);
  expect(errors.map(({ file }) => file)).toEqual(['lessons/scenarios/send-it.yaml']);
  expect(errors[0]?.problems).toMatchObject([{ line: 16, found: '"desk.ch9.aux1"' }]);
});

test('parseCourse() reports a course file that is missing', () => {
  const [, ...others] = filesWith();
  const { errors } = parseCourse(others);
  expect(errors.map(({ file }) => file)).toEqual(['lessons/course.yaml']);
});

test('readCourse() reads the course of this repository', () => {
  const course = readCourse();
  expect(course.rigs.has('net-loft')).toBe(true);
  expect(course.holdings.every(({ file }) => file.startsWith('lessons/'))).toBe(true);
});

test('readCourse() of a folder without a course names the file that it misses', () => {
  expect(() => readCourse('no-such-folder')).toThrow(/^lessons\/course\.yaml: expected the title/);
});
