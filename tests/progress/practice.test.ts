import { describe, expect, test } from 'vitest';
import { DRILL_CONCEPTS, DRILL_LEVELS, HUNT_LEVELS } from '../../simulator/index.ts';
import { readCourse } from '../../src/course/index.ts';
import { drillTask, huntTask, leftUndone, practiceItems } from '../../src/progress/practice.ts';
import { newRecord, type TaskRecord } from '../../src/progress/task-record.ts';
import { readDrillName } from '../../src/share/drill-link.ts';
import { huntOfLink } from '../../src/share/hunt-link.ts';

describe('practiceItems()', () => {
  test('are every drill and every level of hunts, each under a name of its own', () => {
    const ids = practiceItems().map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toHaveLength(DRILL_CONCEPTS.length * DRILL_LEVELS.length + HUNT_LEVELS.length);
  });

  test('ask for concepts that tasks of the course ask for, so that reviews count them', () => {
    const { scenarios, quizzes } = readCourse();
    const asked = new Set([
      ...[...scenarios.values()].map(({ concept }) => concept),
      ...[...quizzes.values()].flatMap(({ questions }) => questions.map(({ concept }) => concept)),
    ]);
    const missing = practiceItems().filter(({ concept }) => !asked.has(concept));
    expect(missing).toEqual([]);
  });
});

describe('leftUndone()', () => {
  const draft = { text: '{}', at: 5, by: 'tab', revision: 1, isFinished: false };
  const left = (record: TaskRecord) =>
    leftUndone(practiceItems(), { tasks: new Map([[record.id, record]]), reviews: new Map() });

  test('leads back to the very drill, and passes over what was finished', () => {
    const record = {
      ...newRecord(drillTask('subgroups', 3)),
      drafts: [
        { ...draft, seed: 'k7x2' },
        { ...draft, seed: 'abc', isFinished: true },
      ],
    };
    const [one, ...more] = left(record);
    expect(more).toEqual([]);
    const name = one?.href.split('#drill=')[1] ?? '';
    expect(readDrillName(name)).toEqual({ concept: 'subgroups', level: 3, seed: 'k7x2' });
  });

  test('leads back to the very hunt', () => {
    const [one] = left({ ...newRecord(huntTask(4)), drafts: [{ ...draft, seed: 'loft' }] });
    const fragment = one?.href.replace('/fault-hunt/', '') ?? '';
    expect(huntOfLink(fragment)).toEqual({ level: 4, seed: 'loft' });
  });
});
