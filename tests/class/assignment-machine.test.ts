import { describe, expect, test } from 'vitest';
import { initialTransition, transition } from 'xstate';
import { InputError } from '../../simulator/index.ts';
import type { AssignedTask } from '../../src/class/assignment.ts';
import { parseAssignment } from '../../src/class/assignment.ts';
import {
  assignmentDraftSchema,
  assignmentOf,
  draftOf,
  newDraft,
} from '../../src/class/assignment-draft.ts';
import {
  type AssignmentEvent,
  type AssignmentSnapshot,
  assignmentMachine,
  MOST_UNDO,
} from '../../src/class/assignment-machine.ts';
import { newOwn } from '../../src/class/own-edit.ts';
import { ASSIGNMENT, COURSE } from './a-class.ts';

const begin = (): AssignmentSnapshot =>
  initialTransition(assignmentMachine, { draft: newDraft('week-one') })[0];
const reached = (...events: AssignmentEvent[]): AssignmentSnapshot =>
  events.reduce((now, event) => transition(assignmentMachine, now, event)[0], begin());
const draftAfter = (...events: AssignmentEvent[]) => reached(...events).context.draft;
const idsAfter = (...events: AssignmentEvent[]) => draftAfter(...events).items.map(({ id }) => id);

const TASK: AssignedTask = { kind: 'scenario', id: 'one-each', revision: 1 };
const OTHER: AssignedTask = { kind: 'scenario', id: 'other', revision: 2 };
const add = (wanted: string, task = TASK): AssignmentEvent => ({ type: 'item.add', wanted, task });
const move = (id: string, by: number): AssignmentEvent => ({ type: 'item.move', id, by });
const room = COURSE.rigs.get('net-loft');
if (!room) throw new Error('Expected the room of the course.');
const own = newOwn('mine', 'insert', room, {}, false);
const OWN: AssignmentEvent = { type: 'own.begin', own };
const words = (title: string): AssignmentEvent => ({
  type: 'own.edit',
  edit: { type: 'words.set', words: { title } },
});

describe('choosing', () => {
  test('begins with nothing, and nothing to undo', () => {
    expect(begin()).toMatchObject({
      value: 'choosing',
      context: { past: [], draft: { items: [] } },
    });
  });

  test.each<[string, AssignmentEvent[], string[]]>([
    ['adds', [add('a'), add('b')], ['a', 'b']],
    ['names what stands there twice', [add('a'), add('a'), add('a')], ['a', 'a-2', 'a-3']],
    ['moves down', [add('a'), add('b'), add('c'), move('a', 1)], ['b', 'a', 'c']],
    ['moves no further than to the end', [add('a'), add('b'), move('a', 9)], ['b', 'a']],
    ['moves no further than to the top', [add('a'), add('b'), move('b', -9)], ['b', 'a']],
    ['passes over an item that there is not', [add('a'), move('z', 1)], ['a']],
    ['removes', [add('a'), add('b'), { type: 'item.remove', id: 'a' }], ['b']],
    [
      'brings back what was removed',
      [add('a'), add('b'), { type: 'item.remove', id: 'a' }, { type: 'undo' }],
      ['a', 'b'],
    ],
    ['undoes no more than was done', [add('a'), { type: 'undo' }, { type: 'undo' }], []],
  ])('%s', (_, events, ids) => {
    expect(idsAfter(...events)).toEqual(ids);
  });

  test('weighs an item, and gives it another task', () => {
    const { items } = draftAfter(
      add('a'),
      { type: 'item.weigh', id: 'a', weight: 4 },
      { type: 'item.task', id: 'a', task: OTHER },
    );
    expect(items).toEqual([{ id: 'a', weight: 4, task: OTHER }]);
  });

  test('says attempts, and lets them be without end again', () => {
    const three: AssignmentEvent = { type: 'head.set', head: { attempts: 3 } };
    expect(draftAfter(three).attempts).toBe(3);
    expect(draftAfter(three, { type: 'attempts.free' })).not.toHaveProperty('attempts');
  });

  test('words typed into one field are one step, those in another are the next', () => {
    const typed = (head: { title?: string; note?: string }): AssignmentEvent => ({
      type: 'head.set',
      head,
    });
    const { past, draft } = reached(
      typed({ title: 'W' }),
      typed({ title: 'We' }),
      typed({ note: 'N' }),
    ).context;
    expect(past).toHaveLength(2);
    expect(draft).toMatchObject({ title: 'We', note: 'N' });
  });

  test('opening another draft can be undone; taking one up cannot', () => {
    const draft = newDraft('other');
    expect(idsAfter(add('a'), { type: 'draft.open', draft }, { type: 'undo' })).toEqual(['a']);
    expect(reached(add('a'), { type: 'draft.take-up', draft }).context.past).toEqual([]);
  });

  test('remembers no more than so many steps', () => {
    const many = Array.from({ length: MOST_UNDO + 5 }, (_, at) => move('a', at % 2 ? -1 : 1));
    expect(reached(add('a'), add('b'), ...many).context.past).toHaveLength(MOST_UNDO);
  });

  test('takes no item beyond the most', () => {
    const many = Array.from({ length: 61 }, (_, at) => add(`item-${at}`));
    expect(idsAfter(...many)).toHaveLength(60);
  });

  test('passes over edits of a scenario that is not being made', () => {
    expect(draftAfter(words('Mine'))).toEqual(newDraft('week-one'));
  });
});

describe('making', () => {
  test('begins with a scenario, and ends when it is finished', () => {
    expect(reached(OWN).value).toBe('making');
    const finished = reached(add('a'), OWN, { type: 'own.finish', task: OTHER });
    expect(finished.value).toBe('choosing');
    expect(finished.context.draft.items.map(({ id }) => id)).toEqual(['a', 'mine']);
    expect(finished.context.draft).not.toHaveProperty('own');
  });

  test('replaces the item that it was opened from', () => {
    const opened: AssignmentEvent = { type: 'own.begin', own: { ...own, item: 'a' } };
    const { items } = draftAfter(add('a'), add('b'), opened, { type: 'own.finish', task: OTHER });
    expect(items.map(({ id, task }) => [id, task])).toEqual([
      ['a', OTHER],
      ['b', TASK],
    ]);
  });

  test('what is dropped comes back by undo, with all that was said', () => {
    const back = reached(OWN, words('Mine'), { type: 'own.drop' }, { type: 'undo' });
    expect(back.value).toBe('making');
    expect(back.context.draft.own?.title).toBe('Mine');
  });

  test('taking up a draft with a scenario in it goes on making', () => {
    const draft = { ...newDraft('other'), own };
    expect(reached({ type: 'draft.take-up', draft }).value).toBe('making');
  });
});

describe('assignmentOf()', () => {
  test('gives back the assignment that draftOf() made a draft of', () => {
    expect(assignmentOf(draftOf(ASSIGNMENT))).toEqual(ASSIGNMENT);
    expect(assignmentDraftSchema.safeParse(draftOf(ASSIGNMENT)).success).toBe(true);
  });

  test('refuses a draft without items, in words', () => {
    expect(() => assignmentOf(newDraft('empty'))).toThrow(InputError);
  });

  test('leaves out what is empty', () => {
    const draft = { ...draftOf(ASSIGNMENT), note: '  ', due: '' };
    expect(Object.keys(parseAssignment('a', JSON.stringify(assignmentOf(draft))))).not.toContain(
      'due',
    );
  });
});
