import { describe, expect, test } from 'vitest';
import {
  type Board,
  type Claim,
  levelOf,
  type Question,
  type Rig,
  type Scenario,
  simulate,
  type WalkThroughStep,
  withValues,
} from '../../simulator/index.ts';
import { type Figure, figuresIn } from './figures.ts';
import { course, tasksIn } from './the-course.ts';

/** Words about a desk, and all that a figure in them may speak of. */
interface Words {
  readonly rig: Rig;
  readonly follow: string;
  readonly boards: readonly Board[];
  readonly claims: readonly Claim[];
  readonly text: readonly string[];
}

const ofScenario = (scenario: Scenario): Words => ({
  ...scenario,
  boards: [scenario.start, ...scenario.proofs.map(({ board }) => board)],
  claims: scenario.checks.map(({ claim }) => claim),
  text: [...scenario.brief, ...scenario.hints, scenario.debrief],
});

const ofQuestion = (question: Question): Words => ({
  ...question,
  boards: [question.board],
  claims: question.kind === 'statements' ? question.options.map(({ claim }) => claim) : [],
  text: [
    question.ask,
    question.explain,
    ...question.options.map(({ reason }) => reason),
    ...question.options.flatMap((option) => ('text' in option ? [option.text] : [])),
  ],
});

const ofStep = (rig: Rig, step: WalkThroughStep): Words => ({
  ...step,
  rig,
  boards: [step.board],
  claims: step.heard,
  text: [step.say],
});

/** Levels that a rig states: of its recordings, its full scale, and where its desk clips. */
const ofRig = ({ box, converter, desk }: Rig): number[] => [
  ...box.tracks.map(({ levelDbfs }) => levelDbfs),
  converter.fullScaleDbu,
  desk.clipDbu,
];

/** Figures with a sign or in dBu that the rig does not state, no setting of the boards, no band of the claims, and heard nowhere. */
function strayFigures({ rig, follow, boards, claims, text }: Words): string[] {
  const isAbsolute = ({ unit }: Figure) => unit === undefined || unit === 'dBu';
  const figures = text.flatMap(figuresIn).filter(isAbsolute);
  if (figures.length === 0) return [];
  const known = [
    ...ofRig(rig),
    ...boards.flatMap((board) => Object.values(board)),
    ...claims.flatMap((claim) => (claim.kind === 'reaches' ? [claim.minDbu, claim.maxDbu] : [])),
    ...boards.flatMap((board) => {
      const solution = simulate({ rig, board: withValues(rig, {}, board) });
      return [...solution.circuit.stagesAt.keys()].map((place) => levelOf(solution, follow, place));
    }),
  ];
  const numbers = known.filter((one) => typeof one === 'number' && Number.isFinite(one));
  const isKnown = ({ value, decimals }: Figure) =>
    numbers.some((number) => Number(number).toFixed(decimals) === value.toFixed(decimals));
  return figures.filter((figure) => !isKnown(figure)).map((figure) => figure.text);
}

test('figuresIn() finds signs and decibels, and neither counts nor ranges', () => {
  const text = 'Aux 3 at −9.5 dBu, +4, 3 dB more, 1–2 of 16 after 7 days, 48 volts, six decibels';
  expect(figuresIn(text).map((figure) => figure.text)).toEqual(['−9.5 dBu', '+4', '3 dB']);
  expect(figuresIn(text)[0]).toMatchObject({ value: -9.5, decimals: 1, unit: 'dBu' });
});

describe.each(tasksIn('scenario', course.scenarios))('$file', ({ task }) => {
  test('its figures are settings, bands or levels of it', () => {
    expect(strayFigures(ofScenario(task))).toEqual([]);
  });
});

describe.each(tasksIn('quiz', course.quizzes))('$file', ({ task: { questions } }) => {
  test.each(questions)('the figures of $id are settings, bands or levels of it', (question) => {
    expect(strayFigures(ofQuestion(question))).toEqual([]);
  });
});

describe.each(tasksIn('walk-through', course.walkThroughs))('$file', ({ task: { rig, steps } }) => {
  test.each(steps)('the figures of $id are settings, bands or levels of it', (step) => {
    expect(strayFigures(ofStep(rig, step))).toEqual([]);
  });
});
