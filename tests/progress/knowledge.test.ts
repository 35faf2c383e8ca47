import { describe, expect, test } from 'vitest';
import {
  conceptStandings,
  standingOfTask,
  strayRecords,
  unitStandings,
} from '../../src/progress/knowledge.ts';
import { newRecord, type TaskRecord } from '../../src/progress/task-record.ts';
import { item, kept, OUTLINE, review, tried } from './small-outline.ts';

const NOW = 1000;
const begun: TaskRecord = { ...newRecord(item('send-a', 'send')), hints: { w: 1 } };
const failedLater: TaskRecord = {
  ...tried('send-a', 5),
  last: { at: 9, score: 0.5, passed: false, isAided: false },
};
const aided: TaskRecord = {
  ...newRecord(item('send-a', 'send')),
  last: { at: 9, score: 1, passed: true, isAided: true },
};

test.each([
  ['nothing kept', undefined, 'new'],
  ['a hint was asked for', begun, 'begun'],
  ['tried, never passed', tried('send-a', 5, false), 'begun'],
  ['passed with the solution shown alone', aided, 'shaky'],
  ['passed, and failed later', failedLater, 'shaky'],
  ['passed', tried('send-a', 5), 'known'],
])('standingOfTask() %s: %s', (_, record, expected) => {
  expect(standingOfTask(record)).toBe(expected);
});

describe('conceptStandings()', () => {
  const of = (...given: Parameters<typeof kept>) =>
    Object.fromEntries(
      conceptStandings(OUTLINE, kept(...given), NOW).map(({ concept, standing }) => [
        concept,
        standing,
      ]),
    );

  test('every concept with a task stands in the order of the course, with its term', () => {
    expect(conceptStandings(OUTLINE, kept([], []), NOW)).toMatchObject([
      { concept: 'insert', term: 'insert', standing: 'new', passed: 0, of: 3 },
      { concept: 'send', of: 2 },
      { concept: 'pre-fader', term: 'pre-fader' },
      { concept: 'post-fader', of: 1 },
      { concept: 'loop', term: 'feedback loop' },
    ]);
  });

  test('due comes before shaky, shaky before known', () => {
    const standings = of(
      [tried('insert-a', 5), failedLater, tried('pre-a', 5), tried('loop-a', 5, false)],
      [review('insert', 900), review('send', 2000), review('pre-fader', undefined)],
    );
    expect(standings).toEqual({
      insert: 'due',
      send: 'shaky',
      'pre-fader': 'known',
      'post-fader': 'new',
      loop: 'begun',
    });
  });

  test('what lapsed is shaky until it is passed when due', () => {
    const lapsed = { ...review('insert', 2000), hasLapsed: true };
    expect(of([tried('insert-a', 5)], [lapsed])).toMatchObject({ insert: 'shaky' });
  });
});

test('unitStandings() counts what was passed: 1 of 3', () => {
  const [insert] = unitStandings(OUTLINE, kept([tried('insert-a', 5)], []));
  expect(insert).toMatchObject({ title: 'On insert', passed: 1 });
  expect(insert?.items.length).toBe(3);
});

test('unitStandings() knows a unit by what shows it, whether the rest was passed or not', () => {
  const isKnown = (...given: TaskRecord[]) => unitStandings(OUTLINE, kept(given, []))[0]?.isKnown;
  expect(isKnown(tried('insert-b', 5), tried('insert-c', 6))).toBe(true);
  expect(isKnown(tried('insert-a', 4), tried('insert-b', 5))).toBe(false);
  expect(isKnown(tried('insert-b', 5), tried('insert-c', 6, false))).toBe(false);
});

test('strayRecords() are those of tasks that the course no longer has', () => {
  const all = kept([tried('insert-a', 5), tried('task-of-old', 5)], []);
  expect(strayRecords(OUTLINE, all).map(({ id }) => id)).toEqual(['task-of-old']);
});
