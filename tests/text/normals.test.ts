import { describe, expect, test } from 'vitest';
import { controls, findings, paths, type Setup, simulate } from '../../simulator/index.ts';
import {
  controlText,
  findingSentence,
  normalText,
  pathStory,
  refusalSentence,
} from '../../src/text/index.ts';
import { bayRoom } from '../simulator/bay-room.ts';

const rig = bayRoom();
const at = (board: Setup['board'] = {}): Setup => ({ rig, board });

describe('normalText()', () => {
  test.each<[string, Setup['board'], string | undefined]>([
    ['desk.a.in', {}, 'Lines 1, normalled: Output 1'],
    ['rack.boost.in', {}, 'More 2, normalled: Output 4'],
    ['rack.hall.out.l', {}, 'More 3, normalled: Strip W Hall return line input left'],
    ['desk.c.in', { 'out.cans': 'converter.out3' }, 'More 1, normalled: Output 3'],
    [
      'desk.a.in',
      { 'rack.squash.in': 'converter.out1' },
      'Lines 1, not normalled to Output 1: broken by the cord to Squash input',
    ],
    [
      'desk.a.in',
      { 'desk.a.in': 'rack.squash.out' },
      'Lines 1, not normalled to Output 1: broken by the cord from Squash output',
    ],
    [
      'desk.a.in',
      { 'desk.a.in': 'open' },
      'Lines 1, not normalled to Output 1: broken by an open plug',
    ],
    ['desk.b.insert.send', {}, 'Loose 1, no normal'],
    ['rack.squash.in', {}, 'Loose 3, no normal'],
    ['desk.c.insert.return', {}, undefined],
    ['out.cans', {}, undefined],
  ])('of %s with %j', (jack, board, text) => {
    expect(normalText(at(board), jack)).toBe(text);
  });
});

test('controlText() of an open plug', () => {
  const control = controls(rig).get('desk.a.in');
  expect(control && controlText(control, 'open')).toBe('an open plug');
});

test('refusalSentence() for an input that holds an open plug, and for an output on the bay', () => {
  expect(refusalSentence(rig, { code: 'input-in-use', input: 'desk.a.in', output: 'open' })).toBe(
    'The line input of Strip A Viola already holds an open plug. Pull it first.',
  );
  expect(
    refusalSentence(rig, {
      code: 'output-in-use',
      output: 'converter.out1',
      input: 'bay.split.in',
    }),
  ).toBe(
    'Output 1 already feeds the input of Split. An output jack takes one cord: pull that one first.',
  );
});

test('findingSentence() of an insert that a plug in its send takes apart', () => {
  const setup = at({ 'rack.squash.in': 'desk.a.insert.send' });
  const [finding] = findings(setup, simulate(setup)).filter(
    ({ code }) => code === 'insert-not-returned',
  );
  expect(finding && findingSentence(rig, finding)).toBe(
    'The insert of Strip A Viola is sent to the input of the squash and does not come back: the signal does not go on from there.',
  );
});

test('findingSentence() of a track that stops passes over what a mult has to spare', () => {
  const setup = at({ 'bay.split.in': 'converter.out2', 'desk.b.in': 'bay.split.out1' });
  const [finding] = findings(setup, simulate(setup)).filter(
    (one) => one.code === 'goes-nowhere' && one.source === 'horn',
  );
  expect(finding && findingSentence(rig, finding)).toMatch(
    /^Horn reaches no output: the insert send of Strip B Horn is plugged nowhere; /,
  );
});

test('pathStory() by way of a mult', () => {
  const setup = at({ 'bay.split.in': 'converter.out1', 'desk.a.in': 'bay.split.out1' });
  const [way] = paths(simulate(setup), 'viola', 'desk.a.in');
  expect(way && pathStory(setup, way)).toBe(
    'Viola leaves Output 1, goes to Split, and reaches the line input of Strip A Viola at +4.0 dBu.',
  );
});
