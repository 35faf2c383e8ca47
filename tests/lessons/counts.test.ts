import { expect, test } from 'vitest';
import { type Counts, countIn, NOTHING, together } from './counts.ts';
import { course, lessons } from './the-course.ts';

const line = (name: string, { words, steps, tasks, questions }: Counts): string =>
  [
    name.padEnd(28),
    `${String(words).padStart(6)} words`,
    `${String(steps).padStart(3)} steps`,
    `${String(tasks).padStart(3)} tasks`,
    `${String(questions).padStart(3)} questions`,
  ].join('  ');

test('the course is counted, lesson by lesson: nothing of it stands in no lesson', () => {
  const inOrder = course.lessons.flatMap((slug) => lessons.find((one) => one.slug === slug) ?? []);
  const counts = inOrder.map(countIn);
  const all = counts.reduce(together, NOTHING);
  const lines = inOrder.map(({ slug }, index) => line(slug, counts[index] ?? NOTHING));
  console.log([...lines, line(`${inOrder.length} lessons`, all)].join('\n'));
  expect(inOrder.length).toBe(course.lessons.length);
  expect(all.tasks).toBe(course.scenarios.size);
  const questions = [...course.quizzes.values()].flatMap((quiz) => quiz.questions);
  expect(all.questions).toBe(questions.length);
});
