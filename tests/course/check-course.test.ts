import { expect, test } from 'vitest';
import { checkCourse, parseCourse, readCourse } from '../../src/course/index.ts';
import { filesWith, type Path } from './small-course.ts';

const SCENARIO = 'lessons/scenarios/send-it.yaml';
const QUIZ = 'lessons/quizzes/levels.yaml';
const WALK = 'lessons/walk-throughs/down.yaml';

function complaintsAbout(path?: Path, from?: string, to?: string) {
  const { course, errors } = parseCourse(filesWith(path, from, to));
  expect(errors).toEqual([]);
  return checkCourse(course);
}

test('checkCourse() has nothing to say about a sound course', () => {
  expect(complaintsAbout()).toEqual([]);
});

test('checkCourse() has nothing to say about the course of this repository', () => {
  expect(checkCourse(readCourse())).toEqual([]);
});

test.each<[string, Path, string, string, RegExp]>([
  [
    'a start that passes',
    SCENARIO,
    'follow: flute',
    'follow: flute\nstart: { desk.ch1.aux1: -6 }',
    /start passes/,
  ],
  [
    'a solution that fails',
    SCENARIO,
    'solution: { desk.ch1.aux1: -6 }',
    'solution: { desk.ch1.aux1: -20 }',
    /“solution” should fail nothing, but fails heard/,
  ],
  [
    'another way that fails',
    SCENARIO,
    'desk.ch1.aux1: -5.5',
    'desk.ch1.aux1: 3',
    /“before the fader” should fail nothing/,
  ],
  [
    'a mistake that fails other checks',
    SCENARIO,
    'fails: [alone]',
    'fails: [heard]',
    /“the harp too” should fail heard, but fails alone/,
  ],
  [
    'a solution that moves a lock',
    SCENARIO,
    'open: [desk.*.aux1, desk.*.aux1.tap]',
    'open: [desk.*.aux1.tap]',
    /“solution” moves what is locked: desk.ch1.aux1/,
  ],
  [
    'a par that no solution has',
    SCENARIO,
    'title: Send the flute',
    'title: Send the flute\npar: 3',
    /no solution takes 3 moves, which is par, but 1, 2/,
  ],
  [
    'a par that can be beaten: one send is enough',
    SCENARIO,
    'title: Send the flute',
    'title: Send the flute\npar: 2',
    /fewer than 2 moves solve it, which is par/,
  ],
  [
    'a task to be completed of which nothing stands',
    SCENARIO,
    'title: Send the flute',
    'title: Send the flute\nkind: complete',
    /to be completed, but nothing is set at its start/,
  ],
  [
    'a task to be completed that begins with no check passed',
    SCENARIO,
    'follow: flute',
    'follow: flute\nkind: complete\nstart: { desk.ch2.aux1: 0 }',
    /to be completed, but its start passes no check/,
  ],
  [
    'a question with two keys',
    QUIZ,
    'kind: once, source: flute, output: ears',
    'kind: absent, source: flute, output: ears',
    /where: exactly one statement should hold, but found mix, ears/,
  ],
  [
    'a question without a key',
    QUIZ,
    'output: mix }\n        reason',
    'output: ears }\n        reason',
    /where: .* found none/,
  ],
  [
    'numbers that are no choice',
    QUIZ,
    'desk.ch1.fader: -3',
    'desk.ch1.fader: -0.3',
    /how-loud: .* less than 0.5 dB apart: −2.00 and −2.30 dB/,
  ],
  [
    'equal silences',
    QUIZ,
    '{ id: as-is, reason',
    '{ id: off, asIf: { desk.ch1.mute: true }, reason: Not }\n      - { id: shut, asIf: { desk.ch1.fader: -.inf }, reason: Not }\n      - { id: as-is, reason',
    /off and shut are less than/,
  ],
  [
    'a walk-through that says what is not heard',
    WALK,
    'minDbu: -2.1, maxDbu: -1.9',
    'minDbu: 3, maxDbu: 4',
    /step one says: .* Heard: −2.0 dBu/,
  ],
  [
    'an id that is not the name of its file',
    QUIZ,
    'id: levels',
    'id: loudness',
    /the id loudness is not the name of the file, levels/,
  ],
])('checkCourse() complains about %s', (_what, path, from, to, said) => {
  const complaints = complaintsAbout(path, from, to);
  expect(complaints.map(({ file }) => file)).toContain(path);
  expect(complaints.map(({ what }) => what).join('\n')).toMatch(said);
  expect(complaints.every(({ isWarning }) => !isWarning)).toBe(true);
});

test('checkCourse() complains about an id that stands in two files', () => {
  const files = filesWith();
  const twin = files.find(({ path }) => path === QUIZ);
  const { course } = parseCourse([
    ...files,
    { path: 'lessons/quizzes/more.yaml', text: twin?.text ?? '' },
  ]);
  expect(checkCourse(course).map(({ file, what }) => `${file}: ${what}`)).toEqual([
    'lessons/quizzes/more.yaml: the id levels is not the name of the file, more',
    `lessons/quizzes/more.yaml: the id levels is already that of ${QUIZ}`,
  ]);
});

test('checkCourse() warns of a key that is longer than the next option: 27 > 1.6 × 11 letters', () => {
  const [complaint, ...others] = complaintsAbout(QUIZ, 'In the mix', 'In the mix and nowhere else');
  expect(complaint).toMatchObject({ file: QUIZ, task: 'levels', isWarning: true });
  expect(complaint?.what).toMatch(/the key mix has 27 letters, the next longest option 11/);
  expect(others).toEqual([]);
});
