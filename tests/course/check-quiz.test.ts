import { expect, test } from 'vitest';
import { parseQuiz } from '../../simulator/index.ts';
import { quizComplaints } from '../../src/course/check-quiz.ts';
import { findRig, KINDS, replaced } from '../simulator/grade/tasks.ts';

const complaints = (from = '', to = '') =>
  quizComplaints(parseQuiz('kinds.yaml', replaced(KINDS, from, to), findRig));

test('quizComplaints() has nothing to say about sound questions of every kind', () => {
  expect(complaints()).toEqual([]);
});

test.each<[string, string, string, RegExp]>([
  [
    'a prediction with two right numbers',
    'asIf: { desk.b.trim: 10 }, ',
    '',
    /say: exactly one option without asIf, but found right, twice/,
  ],
  [
    'a prediction whose numbers are nearer than twice its tolerance: 3 and 3.5 dBu',
    'asIf: { desk.b.trim: 10 }',
    'asIf: { desk.b.trim: 5.5 }',
    /say: .* less than 0.6 dB apart: \+3.00 and \+3.50 dB/,
  ],
  [
    'a prediction of silence',
    'start: { desk.b.trim: 5 }',
    'start: { desk.b.trim: 5, desk.b.mute: true }',
    /say: the number to be said is silence, at the option right/,
  ],
  [
    'outputs that are all reached',
    'desk.a.ears: -3, desk.a.fader: -.inf }',
    'desk.a.ears: -3, desk.a.wash: -3 }',
    /where: every output is reached/,
  ],
  ['outputs of which none is reached', 'desk.a.ears: -3, ', '', /where: no output is reached/],
  [
    'an output at which two ways cancel',
    'start: { desk.a.ears: -3, desk.a.fader: -.inf }',
    'start: { desk.a.ears: -3, desk.b.in: desk.a.insert.send, desk.b.polarity: true, box.horn.to: none }',
    /where: ways lead to tape, and cancel there/,
  ],
  [
    'stops that not every way meets',
    'desk.a.insert.return: rack.squash.out\n    explain: Down',
    'desk.a.wash: -3\n    explain: Down',
    /sequence: expected every way to meet all stops in one order/,
  ],
  [
    'an explanation that fits nothing on the desk',
    'at: desk.a,',
    'at: desk.w,',
    /why: the desk should show the finding of exactly one option, but found none/,
  ],
  ['two explanations that fit', 'at: desk.b,', 'at: desk.a,', /why: .* but found sent, horn-sent/],
])('quizComplaints() complains about %s', (_what, from, to, said) => {
  const found = complaints(from, to);
  expect(found.map(({ what }) => `question ${what.replace(/^question /, '')}`).join('\n')).toMatch(
    said,
  );
  expect(found.every(({ isWarning }) => !isWarning)).toBe(true);
});

test('quizComplaints() complains about stops that are shown in the right order', () => {
  const [fader = ''] = /.*- \{ id: fader.*\n/.exec(KINDS) ?? [];
  const text = replaced(KINDS, fader, '').replace(/(.*- \{ id: main)/, `${fader}$1`);
  const trimFirst = quizComplaints(parseQuiz('kinds.yaml', text, findRig));
  expect(trimFirst.map(({ what }) => what)).toEqual([
    'question sequence: its stops stand in the right order already',
  ]);
});

test.each<[string, string, string, RegExp]>([
  [
    'a prediction without a mistaken idea',
    '      - { id: twice, asIf: { desk.b.trim: 10 }, reason: Counted twice. }\n      - { id: shut, asIf: { desk.b.mute: true }, reason: It is not muted. }\n',
    '',
    /say: no mistaken idea is answered/,
  ],
  [
    'a wrong option that is the longest by far: 38 > 1.6 × 22 letters',
    'It comes twice.',
    'It comes twice by two ways of its own.',
    /why: the option twice has 38 letters, .* it looks like the key/,
  ],
])('quizComplaints() warns of %s', (_what, from, to, said) => {
  const found = complaints(from, to);
  expect(found.map(({ what }) => what).join('\n')).toMatch(said);
  expect(found.every(({ isWarning }) => isWarning)).toBe(true);
});
