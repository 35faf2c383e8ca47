import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { ANSWER_KINDS, parseQuiz, parseScenario } from '../../simulator/index.ts';
import { quizComplaints } from '../../src/course/check-quiz.ts';
import { scenarioComplaints } from '../../src/course/check-scenario.ts';
import { course } from './the-course.ts';

/** The examples of DEVELOPERS.md, by the file that each would stand in. */
const guide = readFileSync(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8');
const EXAMPLES = [...guide.matchAll(/```yaml\n# (lessons\/\S+)\n([\s\S]*?)```/g)].map(
  ([, file = '', text = '']) => ({ file, text }),
);
const findRig = (id: string) => course.rigs.get(id);
const quizzes = EXAMPLES.filter(({ file }) => file.startsWith('lessons/quizzes/'));
const scenarios = EXAMPLES.filter(({ file }) => file.startsWith('lessons/scenarios/'));

test.each(quizzes)('the example $file passes the author’s check', ({ file, text }) => {
  expect(quizComplaints(parseQuiz(file, text, findRig))).toEqual([]);
});

test.each(scenarios)('the example $file passes the author’s check', ({ file, text }) => {
  expect(scenarioComplaints(parseScenario(file, text, findRig))).toEqual([]);
});

test('there is an example of every kind of question, and of a scenario', () => {
  const kinds = quizzes.flatMap(({ file, text }) =>
    parseQuiz(file, text, findRig).questions.map(({ kind }) => kind),
  );
  expect(new Set(kinds)).toEqual(new Set(Object.keys(ANSWER_KINDS)));
  expect(scenarios.length).toBeGreaterThan(0);
});
