import * as fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { initialTransition, type SnapshotFrom, transition } from 'xstate';
import type { Board, Setup } from '../../../simulator/board/board.ts';
import {
  type BoardEvent,
  type BoardInput,
  boardMachine,
  MOST_UNDO,
} from '../../../simulator/board/board-machine.ts';
import type { Refusal } from '../../../simulator/board/edit.ts';
import { controls } from '../../../simulator/rig/controls.ts';
import { arbitraryBoard, RUNS } from '../arbitrary-setup.ts';
import { smallRoom } from '../small-room.ts';

// Properties take their time on a machine that is busy.
vi.setConfig({ testTimeout: 30_000 });

type State = SnapshotFrom<typeof boardMachine>;

const rig = smallRoom();
const START: Board = { 'desk.a.fader': -4, 'desk.b.in': 'converter.out5' };
const LOCKED = new Set(['desk.c.fader', 'desk.c.in', 'desk.w.in.l']);

const begin = (input: Partial<BoardInput> = {}): State =>
  initialTransition(boardMachine, { setup: { rig, board: START }, locked: LOCKED, ...input })[0];
const reached = (state: State, ...events: BoardEvent[]): State =>
  events.reduce((now, event) => transition(boardMachine, now, event)[0], state);
const boardAfter = (...events: BoardEvent[]) => reached(begin(), ...events).context.setup.board;

const set = (address: string, value: number | string | boolean): BoardEvent => ({
  type: 'control.set',
  address,
  value,
});
const connect = (input: string, output: string): BoardEvent => ({
  type: 'cord.connect',
  input,
  output,
});

describe('the machine begins', () => {
  test('still, with the setup that it was given and nothing to undo or redo', () => {
    const { value, context } = begin();
    expect(value).toBe('still');
    expect(context).toMatchObject({ setup: { board: START }, past: [], future: [] });
    expect(context.refusal).toBeUndefined();
  });

  test('with nothing locked where nothing is said', () => {
    const [{ context }] = initialTransition(boardMachine, { setup: { rig, board: {} } });
    expect(context.locked.size).toBe(0);
  });
});

describe('still: an edit', () => {
  test.each<[name: string, event: BoardEvent, changes: Board]>([
    ['sets a gain', set('desk.b.fader', -11), { 'desk.b.fader': -11 }],
    ['closes a send', set('desk.b.fader', -Infinity), { 'desk.b.fader': -Infinity }],
    [
      'steps a gain: −4 + 1.5 = −2.5',
      { type: 'control.step', address: 'desk.a.fader', by: 1.5 },
      { 'desk.a.fader': -2.5 },
    ],
    [
      'turns a switch',
      { type: 'control.step', address: 'desk.a.mute', by: 1 },
      { 'desk.a.mute': true },
    ],
    [
      'plugs a cord',
      connect('rack.boost.in', 'desk.a.insert.send'),
      { 'rack.boost.in': 'desk.a.insert.send' },
    ],
    ['pulls a cord', { type: 'cord.remove', input: 'desk.a.in' }, { 'desk.a.in': 'none' }],
    [
      'moves a cord to another output by setting it',
      set('desk.b.in', 'converter.out6'),
      { 'desk.b.in': 'converter.out6' },
    ],
  ])('%s', (_name, event, changes) => {
    const state = reached(begin(), event);
    expect(state.value).toBe('still');
    expect(state.context.setup).toEqual({ rig, board: { ...START, ...changes } });
    expect(state.context.past).toEqual([{ rig, board: START }]);
    expect(state.context.refusal).toBeUndefined();
  });

  test('resets a control to where the task put it, not to its default', () => {
    const reset: BoardEvent = { type: 'control.reset', address: 'desk.a.fader' };
    expect(boardAfter(set('desk.a.fader', -9), reset)).toEqual(START);
    expect(
      boardAfter(set('desk.b.pan', 0.5), { type: 'control.reset', address: 'desk.b.pan' }),
    ).toEqual(START);
  });

  test('resets the whole board to the start, as one edit', () => {
    const state = reached(begin(), set('desk.a.fader', -9), set('desk.b.mute', true), {
      type: 'board.reset',
    });
    expect(state.context.setup.board).toEqual(START);
    expect(state.context.past).toHaveLength(3);
    expect(reached(state, { type: 'undo' }).context.setup.board).toEqual({
      ...START,
      'desk.a.fader': -9,
      'desk.b.mute': true,
    });
  });

  test.each<[string, BoardEvent]>([
    ['sets what stands so already', set('desk.a.fader', -4)],
    ['sets a default', set('desk.b.fader', 0)],
    ['steps against the end', { type: 'control.step', address: 'desk.b.ears', by: -1 }],
    ['plugs a cord where it is', connect('desk.a.in', 'converter.out1')],
    ['pulls a cord where none is', { type: 'cord.remove', input: 'rack.boost.in' }],
    ['resets what was not moved', { type: 'board.reset' }],
    ['loads the setup that stands', { type: 'setup.load', setup: { rig, board: { ...START } } }],
  ])('that %s adds nothing to the past', (_name, event) => {
    const state = reached(begin(), event);
    expect(state.context.past).toEqual([]);
    expect(state.context.setup).toEqual({ rig, board: START });
    expect(state.context.refusal).toBeUndefined();
  });
});

describe('a refused edit leaves the setup as it was and says why', () => {
  const nobody = (address: string): Refusal => ({ code: 'no-such-control', address });
  const locked = (address: string): Refusal => ({ code: 'locked', address });
  test.each<
    [string, BoardEvent, Refusal | { code: 'misfit'; address: string; misfit: { code: string } }]
  >([
    ['no such control', set('desk.z.fader', -1), nobody('desk.z.fader')],
    ['a key of every object', set('__proto__', -1), nobody('__proto__')],
    [
      'a step of no such control',
      { type: 'control.step', address: 'toString', by: 1 },
      nobody('toString'),
    ],
    [
      'a reset of no such control',
      { type: 'control.reset', address: 'desk.z.pan' },
      nobody('desk.z.pan'),
    ],
    ['a cord into no such input', connect('desk.z.in', 'converter.out6'), nobody('desk.z.in')],
    ['a cord into a fader', connect('desk.a.fader', 'converter.out6'), nobody('desk.a.fader')],
    ['a cord into a choice', connect('box.stack.to', 'out6'), nobody('box.stack.to')],
    [
      'a cord pulled from a choice',
      { type: 'cord.remove', input: 'box.viola.to' },
      nobody('box.viola.to'),
    ],
    ['a locked control', set('desk.c.fader', -1), locked('desk.c.fader')],
    [
      'a step of a locked control',
      { type: 'control.step', address: 'desk.c.fader', by: -1 },
      locked('desk.c.fader'),
    ],
    ['a cord into a locked input', connect('desk.c.in', 'converter.out6'), locked('desk.c.in')],
    [
      'a cord into a locked input in use',
      connect('desk.w.in.l', 'converter.out6'),
      locked('desk.w.in.l'),
    ],
    [
      'a cord pulled from a locked input',
      { type: 'cord.remove', input: 'desk.w.in.l' },
      locked('desk.w.in.l'),
    ],
    [
      'out of range',
      set('desk.b.fader', 10.1),
      { code: 'misfit', address: 'desk.b.fader', misfit: { code: 'out-of-range' } },
    ],
    [
      'the wrong type',
      set('desk.b.fader', 'loud'),
      { code: 'misfit', address: 'desk.b.fader', misfit: { code: 'wrong-type' } },
    ],
    [
      'no number',
      set('desk.b.fader', Number.NaN),
      { code: 'misfit', address: 'desk.b.fader', misfit: { code: 'wrong-type' } },
    ],
    [
      'a step by no number',
      { type: 'control.step', address: 'desk.b.pan', by: Number.NaN },
      { code: 'misfit', address: 'desk.b.pan', misfit: { code: 'wrong-type' } },
    ],
    [
      'no such jack',
      connect('rack.boost.in', 'converter.out7'),
      { code: 'misfit', address: 'rack.boost.in', misfit: { code: 'no-such-option' } },
    ],
    [
      'an output in use',
      connect('rack.boost.in', 'converter.out5'),
      { code: 'output-in-use', output: 'converter.out5', input: 'desk.b.in' },
    ],
    [
      'an output in use by the rig',
      set('rack.boost.in', 'desk.wash.out'),
      { code: 'output-in-use', output: 'desk.wash.out', input: 'rack.hall.in' },
    ],
    [
      'an input in use',
      connect('desk.b.in', 'converter.out6'),
      { code: 'input-in-use', input: 'desk.b.in', output: 'converter.out5' },
    ],
    [
      'a setup that moves a locked control',
      { type: 'setup.load', setup: { rig, board: { 'desk.c.fader': -2 } } },
      locked('desk.c.fader'),
    ],
    [
      'a setup on another rig while something is locked',
      { type: 'setup.load', setup: { rig: smallRoom(), board: {} } },
      locked('desk.c.fader'),
    ],
  ])('%s', (_name, event, refusal) => {
    const before = reached(begin(), set('desk.a.mute', true), set('desk.a.pan', -1), {
      type: 'undo',
    });
    const state = reached(before, event);
    expect(state.context.refusal).toMatchObject(refusal);
    expect({ ...state.context, refusal: undefined }).toEqual(before.context);
  });

  test('and the next edit that is carried out clears the reason', () => {
    const state = reached(begin(), set('desk.z.fader', 1), set('desk.b.fader', -3));
    expect(state.context.refusal).toBeUndefined();
  });
});

describe('loading a setup', () => {
  const other = smallRoom((text) =>
    text.replaceAll('desk.a.', 'desk.first.').replace('{ id: a,', '{ id: first,'),
  );
  const free = () => begin({ locked: new Set() });
  const load: BoardEvent = {
    type: 'setup.load',
    setup: { rig: other, board: { 'desk.first.fader': -6 } },
  };

  test('takes its rig and board, and can be undone', () => {
    const state = reached(free(), load);
    expect(state.context.setup).toEqual({ rig: other, board: { 'desk.first.fader': -6 } });
    expect(reached(state, { type: 'undo' }).context.setup).toEqual({ rig, board: START });
  });

  test('on another rig makes a reset lead to that rig’s defaults', () => {
    const state = reached(free(), load, { type: 'board.reset' });
    expect(state.context.setup).toEqual({ rig: other, board: {} });
    const reset: BoardEvent = { type: 'control.reset', address: 'desk.b.in' };
    expect(reached(free(), load, reset).context.setup.board).toEqual({ 'desk.first.fader': -6 });
    expect(reached(state, set('desk.first.fader', -2)).context.setup.board).toEqual({
      'desk.first.fader': -2,
    });
  });

  test('on the same rig keeps locked controls where they are', () => {
    const loaded: Setup = { rig, board: { 'desk.b.fader': -8 } };
    expect(reached(begin(), { type: 'setup.load', setup: loaded }).context.setup).toEqual(loaded);
  });
});

describe('undo and redo', () => {
  const edits = [set('desk.a.mute', true), set('desk.a.pan', -0.5), set('desk.b.fader', -7)];

  test('go back and forth one edit at a time', () => {
    const state = reached(begin(), ...edits, { type: 'undo' }, { type: 'undo' });
    expect(state.context.setup.board).toEqual({ ...START, 'desk.a.mute': true });
    expect(reached(state, { type: 'redo' }).context.setup.board).toEqual({
      ...START,
      'desk.a.mute': true,
      'desk.a.pan': -0.5,
    });
  });

  test('do nothing where there is nothing to undo or redo', () => {
    expect(reached(begin(), { type: 'undo' }).context).toEqual(begin().context);
    expect(reached(begin(), { type: 'redo' }).context).toEqual(begin().context);
  });

  test('an edit after an undo leaves nothing to redo', () => {
    const state = reached(begin(), ...edits, { type: 'undo' }, set('desk.c.mute', true));
    expect(state.context.future).toEqual([]);
    expect(reached(state, { type: 'redo' }).context).toEqual(state.context);
  });

  test('an edit that changes nothing after an undo leaves what there is to redo', () => {
    const state = reached(begin(), ...edits, { type: 'undo' }, set('desk.a.mute', true));
    expect(state.context.future).toHaveLength(1);
  });

  test(`remember the last ${MOST_UNDO} edits: 203 made, 200 undone`, () => {
    const many = Array.from({ length: MOST_UNDO + 3 }, (_, index) =>
      set('desk.b.fader', -1 - index / 8),
    );
    const state = reached(begin(), ...many);
    expect(state.context.past).toHaveLength(MOST_UNDO);
    const undone = reached(state, ...many.map((): BoardEvent => ({ type: 'undo' })));
    expect(undone.context.setup.board).toEqual({ ...START, 'desk.b.fader': -1 - 2 / 8 });
  });

  test('any edits, then as many undos, restore the first setup; redos bring the last one back', () => {
    const addresses = [...controls(rig).keys()];
    const address = fc.constantFrom(...addresses);
    const anyValue = fc.oneof(
      fc.integer({ min: -95, max: 12 }),
      fc.boolean(),
      fc.constantFrom('none', 'out3', 'out1-2', 'pre', 'converter.out4', 'rack.boost.out', '6'),
      fc.constant(-Infinity),
    );
    const anyEvent: fc.Arbitrary<BoardEvent> = fc.oneof(
      fc.record({ type: fc.constant('control.set' as const), address, value: anyValue }),
      fc.record({
        type: fc.constant('control.step' as const),
        address,
        by: fc.integer({ min: -9, max: 9 }),
      }),
      fc.record({ type: fc.constant('control.reset' as const), address }),
      fc.constant<BoardEvent>({ type: 'board.reset' }),
      fc.record({
        type: fc.constant('cord.connect' as const),
        input: address,
        output: fc.constantFrom('converter.out6', 'rack.twin.out.l', 'desk.late.out'),
      }),
      fc.record({ type: fc.constant('cord.remove' as const), input: address }),
      fc.record({
        type: fc.constant('setup.load' as const),
        setup: arbitraryBoard(rig).map((board) => ({ rig, board })),
      }),
      fc.constantFrom<BoardEvent>(
        { type: 'drag.begin' },
        { type: 'drag.end' },
        { type: 'drag.cancel' },
      ),
    );
    fc.assert(
      fc.property(fc.array(anyEvent, { maxLength: 40 }), (events) => {
        const edited = reached(begin(), ...events, { type: 'drag.end' });
        const times = edited.context.past.length;
        const repeat = (type: 'undo' | 'redo') =>
          Array.from({ length: times }, (): BoardEvent => ({ type }));
        const undone = reached(edited, ...repeat('undo'));
        expect(undone.context.setup).toEqual({ rig, board: START });
        const redone = reached(undone, ...repeat('redo'));
        expect(redone.context.setup).toEqual(edited.context.setup);
        expect(redone.context.past).toEqual(edited.context.past);
      }),
      RUNS,
    );
  });
});

describe('dragging', () => {
  const drag = (...values: number[]): BoardEvent[] => [
    { type: 'drag.begin' },
    ...values.map((value) => set('desk.b.fader', value)),
  ];

  test('shows each move and counts as one edit: −1, −2, −3, one undo', () => {
    const dragging = reached(begin(), ...drag(-1, -2, -3));
    expect(dragging.value).toBe('dragging');
    expect(dragging.context.setup.board['desk.b.fader']).toBe(-3);
    expect(dragging.context.past).toEqual([]);
    const ended = reached(dragging, { type: 'drag.end' });
    expect(ended.value).toBe('still');
    expect(ended.context.past).toEqual([{ rig, board: START }]);
    expect(reached(ended, { type: 'undo' }).context.setup.board).toEqual(START);
  });

  test('moves the end of a cord as one edit: pulled here, plugged there, one undo', () => {
    const state = reached(
      begin(),
      { type: 'drag.begin' },
      { type: 'cord.remove', input: 'desk.b.in' },
      connect('rack.boost.in', 'converter.out5'),
      { type: 'drag.end' },
    );
    expect(state.context.setup.board).toEqual({
      'desk.a.fader': -4,
      'desk.b.in': 'none',
      'rack.boost.in': 'converter.out5',
    });
    expect(reached(state, { type: 'undo' }).context.setup.board).toEqual(START);
  });

  test('is taken back by a cancel, with nothing to undo', () => {
    const state = reached(begin(), ...drag(-1, -2), { type: 'drag.cancel' });
    expect(state.value).toBe('still');
    expect(state.context).toEqual(begin().context);
  });

  test('that comes back to where it began counts for nothing, and keeps what there is to redo', () => {
    const before = reached(begin(), set('desk.a.mute', true), { type: 'undo' });
    const state = reached(before, ...drag(-5, 0), { type: 'drag.end' });
    expect(state.context.past).toEqual([]);
    expect(state.context.future).toHaveLength(1);
  });

  test('refuses what does not fit, and goes on from where it was', () => {
    const state = reached(begin(), ...drag(-1, 99));
    expect(state.value).toBe('dragging');
    expect(state.context.refusal?.code).toBe('misfit');
    expect(state.context.setup.board['desk.b.fader']).toBe(-1);
  });

  test.each<BoardEvent>([
    { type: 'undo' },
    { type: 'redo' },
    { type: 'board.reset' },
    { type: 'control.reset', address: 'desk.a.fader' },
    { type: 'setup.load', setup: { rig, board: {} } },
    { type: 'drag.begin' },
  ])('takes no notice of $type', (event) => {
    const dragging = reached(begin(), ...drag(-6));
    const state = reached(dragging, event);
    expect(state.value).toBe('dragging');
    expect(state.context).toEqual(dragging.context);
  });

  test.each<BoardEvent>([{ type: 'drag.end' }, { type: 'drag.cancel' }])(
    'has not begun: still takes no notice of $type',
    (event) => {
      const state = reached(begin(), event);
      expect(state.value).toBe('still');
      expect(state.context).toEqual(begin().context);
    },
  );
});
