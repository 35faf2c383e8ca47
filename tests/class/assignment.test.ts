import { describe, expect, test } from 'vitest';
import { InputError } from '../../simulator/index.ts';
import {
  type Assignment,
  assignmentDigest,
  assignmentText,
  parseAssignment,
} from '../../src/class/assignment.ts';
import { givenItems } from '../../src/class/given-task.ts';
import {
  DRILL_VARIANTS,
  drillSeeds,
  itemStream,
  itemsInOrder,
} from '../../src/class/item-stream.ts';
import { readLearnerCode } from '../../src/class/learner-code.ts';
import { ASSIGNMENT, COURSE } from './a-class.ts';

const problemsOf = (run: () => unknown) => {
  try {
    run();
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  return [];
};
const withTask = (task: unknown): string =>
  JSON.stringify({ ...ASSIGNMENT, items: [{ id: 'only', task }] });

describe('parseAssignment()', () => {
  test('reads back what assignmentText() wrote', () => {
    expect(parseAssignment('a', assignmentText(ASSIGNMENT))).toEqual(ASSIGNMENT);
  });

  test.each([
    [{ ...ASSIGNMENT, version: 2 }, 'version', 'version 1 or an earlier one'],
    [{ ...ASSIGNMENT, passPercent: 101 }, 'passPercent', 'at most 100'],
    [{ ...ASSIGNMENT, items: [] }, 'items', 'at least 1 entries'],
    [{ ...ASSIGNMENT, more: 1 }, 'more', 'a key of the format'],
    [
      { ...ASSIGNMENT, items: [ASSIGNMENT.items[0], ASSIGNMENT.items[0]] },
      'items[1].id',
      'an id of its own',
    ],
  ])('says what is wrong, case %#', (data, place, expected) => {
    expect(problemsOf(() => parseAssignment('a', JSON.stringify(data)))[0]).toMatchObject({
      place,
      expected,
    });
  });

  test('assignmentDigest() goes by what is said, not by the order of keys', () => {
    const turned = Object.fromEntries(Object.entries(ASSIGNMENT).reverse());
    const same = parseAssignment('a', JSON.stringify(turned));
    expect(assignmentDigest(same)).toBe(assignmentDigest(ASSIGNMENT));
    expect(assignmentDigest({ ...ASSIGNMENT, passPercent: 61 })).not.toBe(
      assignmentDigest(ASSIGNMENT),
    );
  });
});

describe('givenItems()', () => {
  test('finds scenario, question and drills', () => {
    const kinds = givenItems('a', ASSIGNMENT, COURSE).map(({ taskOf }) => taskOf('ada-1').kind);
    expect(kinds).toEqual(['scenario', 'question', 'drill', 'drill']);
  });

  test.each([
    [{ kind: 'scenario', id: 'nowhere', revision: 1 }, 'items[0].task'],
    [{ kind: 'question', quiz: 'nowhere', id: 'x', revision: 1 }, 'items[0].task'],
    [{ kind: 'question', quiz: 'insert-or-send', id: 'x', revision: 1 }, 'items[0].task'],
  ])('names the item whose task there is not, case %#', (task, place) => {
    const assignment = parseAssignment('a', withTask(task));
    expect(problemsOf(() => givenItems('a', assignment, COURSE))).toMatchObject([{ place }]);
  });
});

describe('a scenario of one’s own', () => {
  const rig = { ...COURSE.rigs.get('four-strips'), id: 'my-room' };
  const scenario = {
    id: 'mine',
    revision: 1,
    title: 'Mine',
    rig: 'my-room',
    concept: 'fader',
    brief: ['Mute the cello.'],
    follow: 'cello',
    open: ['desk.ch1.mute'],
    checks: [{ id: 'silent', claim: { kind: 'absent', source: 'cello', output: 'capture' } }],
    debrief: 'Muted.',
    solution: { 'desk.ch1.mute': true },
    mistakes: [
      { id: 'one', name: 'One', changes: { 'desk.ch1.mute': false }, fails: ['silent'] },
      { id: 'two', name: 'Two', changes: { 'desk.ch1.mute': false }, fails: ['silent'] },
    ],
  };

  test('travels in the assignment with its rig', () => {
    const own = parseAssignment('a', withTask({ kind: 'own', scenario, rig }));
    const again = parseAssignment('a', assignmentText(own));
    expect(assignmentDigest(again)).toBe(assignmentDigest(own));
    const [item] = givenItems('a', again, COURSE);
    expect(item?.taskOf('ada-1').task).toMatchObject({ id: 'mine', rig: { id: 'my-room' } });
  });

  test.each([
    [{ scenario }, 'items[0].task.scenario.rig'],
    [{ scenario: { ...scenario, follow: 'oboe' }, rig }, 'items[0].task.scenario.follow'],
    [
      { scenario, rig: { ...rig, defaults: { 'desk.ch9.mute': true } } },
      'items[0].task.rig.defaults["desk.ch9.mute"]',
    ],
  ])('that does not work is refused at its place, case %#', (own, place) => {
    const assignment = parseAssignment('a', withTask({ kind: 'own', ...own }));
    expect(problemsOf(() => givenItems('a', assignment, COURSE))).toMatchObject([{ place }]);
  });
});

describe('chance', () => {
  test('is the same for the same learner and item, and its own for each', () => {
    const draw = (...of: [string, string, string]) => {
      const stream = itemStream(...of);
      return Array.from({ length: 4 }, () => stream.int(0, 999_999));
    };
    expect(draw('a', 'ada', 'x')).toEqual(draw('a', 'ada', 'x'));
    const streams = [
      draw('a', 'ada', 'x'),
      draw('b', 'ada', 'x'),
      draw('a', 'bo', 'x'),
      draw('a', 'ada', 'y'),
    ];
    expect(new Set(streams.map(String)).size).toBe(4);
  });

  test('drillSeeds() spreads a class over its variants', () => {
    const first = Array.from({ length: 1000 }, (_, at) => drillSeeds('a', `learner-${at}`, 'x')[0]);
    expect(new Set(first).size).toBe(DRILL_VARIANTS);
  });

  test('itemsInOrder() shuffles for a learner, and keeps every item', () => {
    const shuffled: Assignment = { ...ASSIGNMENT, order: 'shuffled' };
    const orders = Array.from({ length: 20 }, (_, at) =>
      itemsInOrder(shuffled, `learner-${at}`).map(({ id }) => id),
    );
    expect(new Set(orders.map(String)).size).toBeGreaterThan(5);
    for (const order of orders)
      expect(order.toSorted()).toEqual(['alike', 'insert', 'out', 'own-one']);
    expect(itemsInOrder(ASSIGNMENT, 'ada')).toBe(ASSIGNMENT.items);
  });

  test('readLearnerCode() takes spaces around and capitals', () => {
    expect(readLearnerCode(' Ada-07 ')).toBe('ada-07');
    expect(readLearnerCode('ada/07')).toBeUndefined();
    expect(readLearnerCode('')).toBeUndefined();
  });
});
