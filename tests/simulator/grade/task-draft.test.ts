import { describe, expect, test } from 'vitest';
import { InputError } from '../../../simulator/file/input-error.ts';
import {
  readTaskDraft,
  type TaskDraft,
  taskDraftText,
} from '../../../simulator/grade/task-draft.ts';

const read = (text: string) => readTaskDraft('draft', JSON.parse(text));

describe('readTaskDraft()', () => {
  test.each<[string, TaskDraft['answer']]>([
    ['nothing', undefined],
    ['a board', { kind: 'board', board: { 'desk.a.fader': '-inf' } }],
    ['an option', { kind: 'option', option: 'still' }],
    ['a number', { kind: 'number', value: -6.5 }],
    ['silence', { kind: 'number', value: '-inf' }],
    ['outputs', { kind: 'outputs', outputs: ['tape'] }],
    ['an order', { kind: 'order', order: ['trim', 'fader'] }],
  ])('reads %s as taskDraftText() wrote it', (_what, answer) => {
    const draft = { answer, hintsShown: 2, isAided: true, hasPassed: true };
    expect(read(taskDraftText(draft))).toEqual(draft);
  });

  test.each<[string, string, TaskDraft]>([
    [
      'a scenario before passes were kept with it',
      '{"board":{"desk.a.fader":-6},"hintsShown":1,"isAided":true}',
      {
        answer: { kind: 'board', board: { 'desk.a.fader': -6 } },
        hintsShown: 1,
        isAided: true,
        hasPassed: false,
      },
    ],
    [
      'a scenario before there was one form for all kinds',
      '{"board":{},"hintsShown":0,"isAided":false,"hasPassed":true}',
      { answer: { kind: 'board', board: {} }, hintsShown: 0, isAided: false, hasPassed: true },
    ],
    [
      'a question of that time',
      '{"chosen":"still","hasPassed":false}',
      {
        answer: { kind: 'option', option: 'still' },
        hintsShown: 0,
        isAided: false,
        hasPassed: false,
      },
    ],
    [
      'a question of that time in which nothing was chosen',
      '{"hasPassed":false}',
      { answer: undefined, hintsShown: 0, isAided: false, hasPassed: false },
    ],
  ])('reads the draft of %s', (_what, text, draft) => {
    expect(read(text)).toEqual(draft);
  });

  test.each([
    '7',
    'null',
    '[]',
    '{"hintsShown":99,"isAided":false,"hasPassed":false}',
    '{"answer":{"kind":"song"},"hintsShown":0}',
    '{"board":7,"hintsShown":0}',
    '{"chosen":7,"hasPassed":false}',
    '{"hintsShown":0,"key":true}',
  ])('refuses %s', (text) => {
    expect(() => read(text)).toThrow(InputError);
  });
});
