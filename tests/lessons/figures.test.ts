import { describe, expect, test } from 'vitest';
import { levelOf, type Rig, simulate, withValues } from '../../simulator/index.ts';
import { ALLOWED_GAINS } from './allowed-figures.ts';
import { type Figure, figuresIn } from './figures.ts';
import { course, tasksIn } from './the-course.ts';
import { ofQuestion, ofScenario, ofStep, type Words } from './words.ts';

/** Two equal sounds together, and one sound twice: what the published sums give. */
const LAWS_DB = [3, 6];

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

/** What a rig and a task state in dB from one another: crests, distances to full scale, moves, tolerances, halves of bands. */
const statedGains = ({ rig, claims, probedBy }: Words): number[] => [
  ...probedBy,
  ...rig.box.tracks.flatMap(({ crestDb, levelDbfs }) => [crestDb, levelDbfs]),
  ...claims.flatMap((claim) => ('minDb' in claim ? [claim.minDb] : [])),
  ...claims.flatMap((claim) => ('probe' in claim ? [claim.probe.byDb, claim.toleranceDb] : [])),
  ...claims.flatMap((claim) =>
    claim.kind === 'reaches' ? [(claim.maxDbu - claim.minDbu) / 2] : [],
  ),
];

/** All by how much what stands or is heard at one place differs between boards, and how far settings are off unity. */
function foundGains({ rig, follow, boards, others }: Words): number[] {
  const all = [...boards, ...others];
  const heard = all.map((board) => {
    const solution = simulate({ rig, board: withValues(rig, {}, board) });
    const places = [...solution.circuit.stagesAt.keys()];
    return new Map(places.map((place) => [place, levelOf(solution, follow, place)]));
  });
  const set = all.map((board) => new Map(Object.entries(board)));
  const numberIn = (map: ReadonlyMap<string, unknown>, at: string) => Number(map.get(at) ?? 0);
  return [heard, set].flatMap((maps) =>
    maps.flatMap((one) =>
      [...one.keys()].flatMap((at) =>
        [...maps, new Map()].map((other) => numberIn(one, at) - numberIn(other, at)),
      ),
    ),
  );
}

/** Figures in dB that nothing on the boards comes to. */
function strayGains(words: Words): string[] {
  const figures = words.text.flatMap(figuresIn).filter(({ unit }) => unit === 'dB');
  if (figures.length === 0) return [];
  const known = [...LAWS_DB, ...statedGains(words), ...foundGains(words)].filter(Number.isFinite);
  const isKnown = ({ value, decimals }: Figure) =>
    known.some((one) => Math.abs(one).toFixed(decimals) === Math.abs(value).toFixed(decimals));
  return figures.filter((figure) => !isKnown(figure)).map(({ text }) => text);
}

const allowedGains = (name: string): string[] =>
  (ALLOWED_GAINS[name] ?? []).map(({ figure }) => figure);

describe.each(tasksIn('scenario', course.scenarios))('$file', ({ task }) => {
  test('its figures are settings, bands or levels of it', () => {
    expect(strayFigures(ofScenario(task))).toEqual([]);
    expect(strayGains(ofScenario(task))).toEqual(allowedGains(task.id));
  });
});

describe.each(tasksIn('quiz', course.quizzes))('$file', ({ task: { id, questions } }) => {
  test.each(questions)('the figures of $id are settings, bands or levels of it', (question) => {
    expect(strayFigures(ofQuestion(question))).toEqual([]);
    expect(strayGains(ofQuestion(question))).toEqual(allowedGains(`${id}/${question.id}`));
  });
});

describe.each(tasksIn('walk-through', course.walkThroughs))('$file', ({ task: walkThrough }) => {
  test.each(walkThrough.steps)('the figures of $id are settings, bands or levels of it', (step) => {
    expect(strayFigures(ofStep(walkThrough, step))).toEqual([]);
    expect(strayGains(ofStep(walkThrough, step))).toEqual(
      allowedGains(`${walkThrough.id}/${step.id}`),
    );
  });
});

test('gains are allowed to steps and questions that there are, each with its reason', () => {
  const names = [
    ...course.scenarios.keys(),
    ...[...course.quizzes.values()].flatMap(({ id, questions }) =>
      questions.map((question) => `${id}/${question.id}`),
    ),
    ...[...course.walkThroughs.values()].flatMap(({ id, steps }) =>
      steps.map((step) => `${id}/${step.id}`),
    ),
  ];
  expect(Object.keys(ALLOWED_GAINS).filter((name) => !names.includes(name))).toEqual([]);
  expect(
    Object.values(ALLOWED_GAINS)
      .flat()
      .filter(({ reason }) => !reason),
  ).toEqual([]);
});
