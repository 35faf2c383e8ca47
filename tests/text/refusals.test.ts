import { expect, test } from 'vitest';
import { createActor } from 'xstate';
import {
  type BoardEvent,
  boardMachine,
  movesBetween,
  type Verdict,
} from '../../simulator/index.ts';
import {
  movedLocksSentence,
  moveText,
  refusalSentence,
  spokenMove,
  verdictSentence,
} from '../../src/text/index.ts';
import { netLoft } from './net-loft.ts';

/** The sentence that the desk answers to an edit. */
function answerTo(event: BoardEvent): string {
  const input = {
    setup: { rig: netLoft, board: {} },
    locked: new Set(['desk.ch1.fader']),
  };
  const actor = createActor(boardMachine, { input }).start();
  actor.send(event);
  const { refusal } = actor.getSnapshot().context;
  return refusal ? refusalSentence(netLoft, refusal) : 'done';
}

const set = (address: string, value: number | boolean | string): BoardEvent => ({
  type: 'control.set',
  address,
  value,
});

test.each<[string, BoardEvent, string]>([
  ['nothing', set('desk.ch3.fader', -6), 'done'],
  ['a stranger', set('desk.ch99.fader', 0), 'There is no control called “desk.ch99.fader” here.'],
  ['a lock', set('desk.ch1.fader', -6), 'The fader of Strip 1 Tenor is locked in this task.'],
  [
    'a range',
    set('desk.ch3.fader', 12),
    'The fader of Strip 3 Cello takes −90.0 dB to +10.0 dB, or closed.',
  ],
  [
    'a threshold',
    set('rack.comp.threshold', 99),
    'The threshold of the compressor takes −40.0 dBu to +20.0 dBu.',
  ],
  [
    'a pan',
    set('desk.ch3.pan', 2),
    'The pan of Strip 3 Cello takes a position from full left (−1) to full right (1).',
  ],
  ['a type', set('desk.ch3.mute', 1), 'The mute of Strip 3 Cello takes on or off.'],
  [
    'an option',
    set('desk.ch3.aux1.tap', 'mid'),
    'The tap of the send of Strip 3 Cello to Aux 1 takes one of its options: before the fader and after the fader.',
  ],
  [
    'a jack that is in use',
    { type: 'cord.connect', input: 'rack.comp.in', output: 'converter.out3' },
    'Output 3 already feeds the line input of Strip 3 Cello. An output jack takes one cord: pull that one first.',
  ],
  [
    'an input that is in use',
    { type: 'cord.connect', input: 'desk.ch3.in', output: 'converter.out12' },
    'The line input of Strip 3 Cello already holds a cord from Output 3. Pull it first.',
  ],
])('refusalSentence() for %s', (_what, event, sentence) => {
  expect(answerTo(event)).toBe(sentence);
});

test('moveText() and spokenMove() tell what changed', () => {
  const [move] = movesBetween(netLoft, {}, { 'desk.ch3.fader': -6 });
  if (!move) throw new Error('Expected a move.');
  expect(moveText(netLoft, move)).toBe('The fader of Strip 3 Cello: 0.0 dB → −6.0 dB');
  expect(spokenMove(netLoft, move)).toBe('The fader of Strip 3 Cello, minus 6.0 decibels');
});

test('verdictSentence() and movedLocksSentence() say what a task came to', () => {
  const verdict: Verdict = { results: [], score: 2, of: 5, movedLocks: [], passed: false };
  expect(verdictSentence(verdict)).toBe('Not yet: 2 of 5 points.');
  expect(movedLocksSentence(netLoft, [])).toBeUndefined();
  expect(movedLocksSentence(netLoft, ['desk.ch1.fader', 'desk.ch1.mute'])).toBe(
    'The fader of Strip 1 Tenor and the mute of Strip 1 Tenor are locked in this task and were moved.',
  );
});
