import { describe, expect, test } from 'vitest';
import { initialTransition, transition } from 'xstate';
import { getShortestPaths } from 'xstate/graph';
import type { Answer } from '../../../simulator/grade/answer.ts';
import {
  type TaskEvent,
  type TaskSnapshot,
  taskMachine,
} from '../../../simulator/grade/task-machine.ts';

const START: Answer = { kind: 'board', board: {} };
const OTHER: Answer = { kind: 'board', board: { 'desk.a.fader': -3 } };
const SOLUTION: Answer = { kind: 'board', board: { 'desk.a.fader': -6 } };

const EVENTS = {
  change: { type: 'answer.change', answer: OTHER },
  withdraw: { type: 'answer.change', answer: undefined },
  'show the solution': { type: 'solution.show', answer: SOLUTION },
  'start again': { type: 'start.again', answer: START },
  'show a hint': { type: 'hint.show' },
  check: { type: 'check' },
  pass: { type: 'verdict.give', passed: true },
  fail: { type: 'verdict.give', passed: false },
  'take up': {
    type: 'draft.take-up',
    draft: { answer: OTHER, hintsShown: 1, isAided: true, hasPassed: false },
  },
} as const satisfies Record<string, TaskEvent>;
type EventName = keyof typeof EVENTS;

function reach(...names: readonly EventName[]): TaskSnapshot {
  let [snapshot] = initialTransition(taskMachine, { hints: 2, answer: START });
  for (const name of names) [snapshot] = transition(taskMachine, snapshot, EVENTS[name]);
  return snapshot;
}

/** Where events lead from everywhere. */
const ALWAYS: Partial<Record<EventName, string>> = {
  change: 'working',
  withdraw: 'working',
  'show the solution': 'working',
  'start again': 'brief',
  check: 'checked',
  'take up': 'working',
};

/** How each state is reached, and where each event leads from there; what is not named changes nothing. */
const TABLE: Readonly<
  Record<
    string,
    { readonly by: readonly EventName[]; readonly to?: Partial<Record<EventName, string>> }
  >
> = {
  brief: { by: [] },
  working: { by: ['change'] },
  checked: { by: ['check'], to: { pass: 'passed', fail: 'notYet' } },
  passed: { by: ['check', 'pass'], to: { fail: 'notYet' } },
  notYet: { by: ['check', 'fail'], to: { pass: 'passed' } },
};
const NAMES = Object.keys(EVENTS) as EventName[];
const CASES = Object.entries(TABLE).flatMap(([state, { by, to }]) =>
  NAMES.map((event) => ({ state, event, by, to: { ...ALWAYS, ...to }[event] ?? state })),
);

describe('taskMachine', () => {
  test.each(CASES)('$state × $event → $to', ({ state, event, by, to }) => {
    expect(reach(...by).value).toBe(state);
    expect(reach(...by, event).value).toBe(to);
  });

  test('each state can be reached, in so few events', () => {
    const paths = getShortestPaths(taskMachine, {
      input: { hints: 2, answer: START },
      events: Object.values(EVENTS),
      serializeState: (snapshot) => JSON.stringify(snapshot.value),
    });
    const lengths = Object.fromEntries(
      paths.map(({ state, steps }) => [String(state.value), steps.length - 1]),
    );
    expect(lengths).toEqual({ brief: 0, working: 1, checked: 1, passed: 2, notYet: 2 });
  });

  test('nothing is checked where there is no answer', () => {
    expect(reach('withdraw', 'check')).toMatchObject({
      value: 'working',
      context: { checked: undefined },
    });
  });

  test('attempts are counted from 1, each an object of its own', () => {
    const [first, second] = [reach('check'), reach('check', 'fail', 'check')];
    expect(first.context.checked).toEqual({ answer: START, attempt: 1 });
    expect(second.context.checked).toEqual({ answer: START, attempt: 2 });
  });

  test('a verdict on what was changed meanwhile is passed over, and a late one on what stands there counts', () => {
    expect(reach('check', 'change', 'pass')).toMatchObject({
      value: 'working',
      context: { hasPassed: false },
    });
    expect(reach('change', 'check', 'check', 'pass').context.hasPassed).toBe(true);
  });

  test('hints are shown one by one, no more than there are, and stay when it starts again', () => {
    const shown = (...names: EventName[]) => reach(...names).context.hintsShown;
    expect(shown('show a hint')).toBe(1);
    expect(shown('show a hint', 'show a hint', 'show a hint')).toBe(2);
    expect(shown('show a hint', 'change', 'start again')).toBe(1);
  });

  test('a solution that was shown, and a pass, count until it starts again', () => {
    const aided = (...names: EventName[]) => reach(...names).context.isAided;
    expect(aided('show the solution', 'change', 'check', 'pass')).toBe(true);
    expect(aided('show the solution', 'start again')).toBe(false);
    const passed = (...names: EventName[]) => reach(...names).context.hasPassed;
    expect(passed('check', 'pass', 'change')).toBe(true);
    expect(passed('check', 'pass', 'start again')).toBe(false);
  });

  test('it goes on from a draft', () => {
    expect(reach('take up').context).toMatchObject(EVENTS['take up'].draft);
  });
});
