import { describe, expect, test } from 'vitest';
import { initialTransition, transition } from 'xstate';
import { type Answer, boardData, checkDocument } from '../../simulator/index.ts';
import { withRecordThatFits } from '../../src/class/fit.ts';
import { givenItems } from '../../src/class/given-task.ts';
import { gradeHandIn } from '../../src/class/grade-hand-in.ts';
import { handInText, parseHandIn } from '../../src/class/hand-in.ts';
import { handInOfWork } from '../../src/class/hand-in-of-work.ts';
import { interactionOf } from '../../src/class/interaction-of.ts';
import { MOST_BYTES } from '../../src/class/open-files.ts';
import { newWork, type Work, workOn, workSchema } from '../../src/class/work.ts';
import { type WorkEvent, type WorkSnapshot, workMachine } from '../../src/class/work-machine.ts';
import { ASSIGNMENT, answerTo, COURSE } from './a-class.ts';

const START = 1_796_000_000_000;
const begin = (work: Work = newWork('week-three', 'ada', START)): WorkSnapshot =>
  initialTransition(workMachine, { work })[0];
const reached = (...events: WorkEvent[]): WorkSnapshot =>
  events.reduce((now, event) => transition(workMachine, now, event)[0], begin());
const workAfter = (...events: WorkEvent[]): Work => reached(...events).context.work;

const GIVEN = givenItems('a', ASSIGNMENT, COURSE);
const givenOf = (item: string) => {
  const found = GIVEN.find((one) => one.item.id === item);
  if (!found) throw new Error(`Expected ${item}.`);
  return { ...found, given: found.taskOf('ada') };
};

/** An attempt at an item, right or not, some time after the start. */
function attempt(item: string, isRight: boolean, number = 1): WorkEvent {
  const { given, item: of } = givenOf(item);
  const answer = answerTo(given, isRight) as Answer;
  const told = {
    item,
    kind: given.kind,
    weight: of.weight,
    attempt: number,
    hints: 0,
    started: START + 1000,
    answered: START + 6000,
  };
  // A drill is graded as a scenario is; only its words are made elsewhere.
  const task =
    given.kind === 'question' ? given.task : { ...scenarioOf('one-each'), ...given.task };
  return { type: 'attempt.note', item, answer, interaction: interactionOf(told, task, answer) };
}
const scenarioOf = (id: string) => {
  const scenario = COURSE.scenarios.get(id);
  if (!scenario) throw new Error(`Expected ${id}.`);
  return scenario;
};

const STANDING = {
  answer: { kind: 'option', option: 'a' },
  hintsShown: 1,
  isAided: false,
  hasPassed: false,
} as const;
const HAND_IN: WorkEvent = { type: 'hand-in', at: START + 60_000 };
const CLOSE: WorkEvent = { type: 'close', at: START + 70_000 };
const CHANGE: WorkEvent = { type: 'answer.change', item: 'insert', draft: STANDING };

describe('the work goes', () => {
  test.each<[string, WorkEvent[], unknown]>([
    ['from the beginning', [], { open: 'working' }],
    ['on with an answer', [CHANGE], { open: 'working' }],
    ['in', [CHANGE, HAND_IN], { open: 'handedIn' }],
    ['on after it went in', [CHANGE, HAND_IN, CHANGE], { open: 'working' }],
    [
      'on in time alone without being other work',
      [HAND_IN, { type: 'time.note', item: 'out', ms: 5 }],
      { open: 'handedIn' },
    ],
    ['to its end after it went in', [CHANGE, HAND_IN, CLOSE], 'closed'],
    ['not to its end before', [CHANGE, CLOSE], { open: 'working' }],
    ['nowhere after its end', [HAND_IN, CLOSE, CHANGE], 'closed'],
  ])('%s', (_, events, value) => {
    expect(reached(...events).value).toEqual(value);
  });

  test('what was kept is taken up as it stood: in, or closed', () => {
    const takeUp = (...events: WorkEvent[]): WorkEvent => ({
      type: 'work.take-up',
      work: checkDocument(
        {
          file: 'work',
          data: JSON.parse(JSON.stringify(workAfter(...events))),
          lineOf: () => undefined,
        },
        workSchema,
      ),
    });
    expect(reached(takeUp(CHANGE, HAND_IN)).value).toEqual({ open: 'handedIn' });
    expect(reached(takeUp(CHANGE, HAND_IN, CLOSE)).value).toBe('closed');
    expect(workOn(reached(takeUp(CHANGE)).context.work, 'insert')).toMatchObject(STANDING);
  });

  test('nothing changes after its end', () => {
    const closed = workAfter(HAND_IN, CLOSE);
    expect(workAfter(HAND_IN, CLOSE, CHANGE, attempt('out', true))).toEqual(closed);
  });
});

describe('attempts', () => {
  test('the best counts, and of those alike the newest', () => {
    const work = workAfter(attempt('out', true), attempt('out', false, 2));
    expect(workOn(work, 'out')).toMatchObject({ attempts: 2, best: { score: 1 }, hasPassed: true });
    const wrong = workAfter(attempt('insert', false), attempt('insert', false, 2));
    expect(workOn(wrong, 'insert').best?.score).toBe(0);
  });

  test('an answer that changes after a pass leaves it passed', () => {
    const work = workAfter(attempt('insert', true), CHANGE);
    expect(workOn(work, 'insert')).toMatchObject({ hasPassed: true, answer: STANDING.answer });
  });
});

describe('handInOfWork()', () => {
  const solved = workAfter(
    { type: 'name.set', name: ' Ada ' },
    { type: 'item.give', item: 'out', revision: 1 },
    attempt('out', true),
    attempt('insert', false),
    { type: 'time.note', item: 'out', ms: 1500.4 },
    { type: 'log.note', events: [{ at: 4, item: 'out', what: 'check' }] },
  );
  const handIn = handInOfWork(solved, ASSIGNMENT, COURSE.version, START + 9000);

  test('is read back as it was written, and graded as it claims', () => {
    expect(parseHandIn('h', handInText(handIn))).toEqual(handIn);
    const graded = gradeHandIn(ASSIGNMENT, COURSE, handIn);
    // 4 of 10 points by weight: out 4, insert 2, alike 1, own-one 3.
    expect(graded).toMatchObject({ share: 0.4, claimed: 0.4, name: 'Ada', notes: [] });
    expect(graded.items[0]).toMatchObject({ passed: true, attempts: 1, spentMs: 1500, notes: [] });
  });

  test('an answer that was never checked is handed in as it stands, and claims nothing', () => {
    const { items } = handInOfWork(workAfter(CHANGE), ASSIGNMENT, COURSE.version, START);
    expect(items).toEqual([expect.objectContaining({ id: 'insert', answer: STANDING.answer })]);
    expect(items[0]).not.toHaveProperty('claimed');
  });

  test('is never too long for a gradebook: of a long record the oldest goes, and no answer', () => {
    const answer = { kind: 'board', board: boardData(scenarioOf('one-each').solution) } as const;
    const many = Array.from({ length: 40 }, (_, at) => attempt('out', true, at + 1));
    const long = workAfter(...many);
    const items = Array.from({ length: 60 }, (_, at) => ({
      ...workOn(long, 'out'),
      id: `i-${at}`,
    }));
    const assignment = {
      ...ASSIGNMENT,
      items: items.map(({ id }) => ({ ...givenOf('out').item, id })),
    };
    const cut = handInOfWork({ ...long, items }, assignment, COURSE.version, START);
    expect(new TextEncoder().encode(handInText(cut)).length).toBeLessThanOrEqual(MOST_BYTES);
    expect(cut.items.every((item) => item.attempts === 40 && item.answer !== undefined)).toBe(true);
    expect(cut.items[0]?.answer).toEqual(answer);
  });

  test('withRecordThatFits() leaves what fits as it is', () => {
    expect(withRecordThatFits(handIn, MOST_BYTES)).toEqual(handIn);
  });
});
