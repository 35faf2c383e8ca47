import { describe, expect, test } from 'vitest';
import { type Gradebook, gradeClass } from '../../src/class/gradebook.ts';
import {
  afterEvent,
  EMPTY,
  type GradebookEvent,
  type GradebookState,
  withFiles,
} from '../../src/components/class/gradebook-state.ts';
import { ASSIGNMENT, COURSE, filesOf, finished, handInOf } from './a-class.ts';

const book = (learner: string): Gradebook =>
  finished(gradeClass('a', ASSIGNMENT, COURSE, filesOf([handInOf(learner, [])])));
const [first, second] = [book('ada'), book('bo')];
const [source, corrected] = [{ link: '#assignment=1.a' }, { link: '#assignment=1.b' }];
const files = [new File(['{}'], 'ada.json', { lastModified: 7 })];

const stateAfter = (events: readonly GradebookEvent[]): GradebookState =>
  events.reduce(afterEvent, EMPTY);
const marked: GradebookEvent[] = [
  { code: 'asked', source, files },
  { code: 'graded', book: first },
];

describe('afterEvent()', () => {
  test('tells how far it is, and has the book at the end', () => {
    const running = stateAfter([
      { code: 'asked', source, files },
      { code: 'progress', done: 1, of: 3 },
    ]);
    expect(running.grading).toMatchObject({ done: 1, of: 3 });
    expect(stateAfter(marked)).toEqual({ source, files, problems: [], book: first });
  });

  test('a corrected assignment for the same files: the old book stands beside the new', () => {
    const state = stateAfter([
      ...marked,
      { code: 'asked', source: corrected, files },
      { code: 'graded', book: second },
    ]);
    expect([state.before, state.book]).toEqual([first, second]);
  });

  test('more files are no correction: there is nothing to compare', () => {
    const state = stateAfter([
      ...marked,
      { code: 'asked', source, files: [...files, new File([''], 'bo.json')] },
      { code: 'graded', book: second },
    ]);
    expect([state.before, state.book]).toEqual([undefined, second]);
  });

  test.each<GradebookEvent>([{ code: 'refused', problems: ['no'] }, { code: 'stopped' }])(
    '%j takes nothing away',
    (event) => {
      const state = stateAfter([...marked, { code: 'asked', source: corrected, files: [] }, event]);
      expect(state).toMatchObject({ source, files, book: first });
      expect(state.grading).toBeUndefined();
    },
  );

  test('an answer that comes after a stop is passed over', () => {
    const state = stateAfter([
      ...marked,
      { code: 'asked', source: corrected, files },
      { code: 'stopped' },
      { code: 'graded', book: second },
    ]);
    expect(state.book).toBe(first);
  });
});

test('withFiles() has the same file once: 1 + 2 − 1 = 2', () => {
  const again = new File(['{}'], 'ada.json', { lastModified: 7 });
  const other = new File(['{}'], 'bo.json', { lastModified: 7 });
  expect(withFiles(files, [again, other]).map(({ name }) => name)).toEqual(['ada.json', 'bo.json']);
});
