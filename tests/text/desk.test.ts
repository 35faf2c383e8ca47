import { expect, test } from 'vitest';
import { controls, movesBetween, paths, stopOf } from '../../simulator/index.ts';
import {
  cutSentence,
  elsewhereSentences,
  pathStory,
  placeName,
  shortOption,
  spokenMove,
  stopText,
} from '../../src/text/index.ts';
import { type DeskRoom, deskRoom } from '../simulator/circuit/desk-room.ts';

const whyNot = (room: DeskRoom, source: string, output: string): string => {
  const { setup, solution } = deskRoom(room);
  return stopText(setup.rig, stopOf(solution, source, output));
};
const told = (room: DeskRoom, source: string, output: string): string => {
  const { setup, solution } = deskRoom(room);
  const [way] = paths(solution, source, output);
  return way ? pathStory(setup, way) : '';
};

const SOLO = { solo: ['in-place', 'pfl'], controlRoom: {} };
const MONO = { subgroups: [{ id: 'odd', label: 'Odd', takes: 'left' }] };
const INLINE = { s2: { inline: 's1' } };

test('stopText() names the solo of others, not the mute', () => {
  expect(whyNot({ desk: SOLO, board: { 'desk.s2.solo': true } }, 'flute', 'out.tape')).toBe(
    'Strip 1 Strip 1 is cut by the solo of another strip',
  );
});

test('stopText() says which side a mono subgroup is not assigned to, and which path feeds a strip', () => {
  const board = { 'desk.s1.main': false, 'desk.s1.odd': true, 'desk.odd.main': 'left' };
  expect(whyNot({ desk: MONO, board }, 'flute', 'out.tape.r')).toBe(
    'Odd is not assigned to that side of the main bus',
  );
  expect(whyNot({ strips: INLINE, board: { 'desk.s2.path': 'first' } }, 'oboe', 'out.tape')).toBe(
    'Strip 2 Strip 2 is fed from elsewhere',
  );
});

test('pathStory() of the idle path of an in-line strip, and of what is soloed', () => {
  const board = { 'desk.s1.main': false, 'desk.s2.path': 'first' };
  expect(told({ strips: INLINE, board }, 'flute', 'out.tape')).toBe(
    'Flute leaves Output 1, goes after the fader of Strip 1 Strip 1 to Strip 2 Strip 2, is panned full left, goes to the main bus, and reaches Tape at +3.0 dBu.',
  );
  const solo = { 'desk.s1.solo': true, 'desk.control.mode': 'pfl' };
  expect(told({ desk: SOLO, board: solo }, 'flute', 'desk.control.out')).toBe(
    'Flute leaves Output 1, is soloed on Strip 1 Strip 1, and reaches the output of the control room at +6.0 dBu.',
  );
});

const setupOf = (room: DeskRoom) => deskRoom(room).setup;

test('elsewhereSentences() of a strip that the solo of another cuts, and of what is soloed instead', () => {
  const cut = setupOf({ desk: SOLO, board: { 'desk.s2.solo': true, 'desk.s3.safe': true } });
  expect(elsewhereSentences(cut, 'desk.s1')).toEqual(['The solo of another strip cuts this one.']);
  expect(elsewhereSentences(cut, 'desk.s2')).toEqual([]);
  expect(elsewhereSentences(cut, 'desk.s3')).toEqual([]);
  expect(cutSentence(cut)).toBe('Solo cuts 2 strips');
  const heard = setupOf({
    desk: SOLO,
    board: { 'desk.s2.solo': true, 'desk.control.mode': 'pfl' },
  });
  expect(elsewhereSentences(heard, 'desk.control')).toEqual(['It listens to what is soloed.']);
  expect(elsewhereSentences(heard, 'desk.s1')).toEqual([]);
  expect(cutSentence(heard)).toBeUndefined();
});

test('elsewhereSentences() says at both paths whose level the fader there moves', () => {
  const swapped = setupOf({ strips: INLINE, board: { 'desk.s1.swap': true } });
  const says = (owner: string) => elsewhereSentences(swapped, owner);
  expect(says('desk.s1')).toEqual(['The faders are swapped: the one here moves Strip 2 Strip 2.']);
  expect(says('desk.s2')).toEqual(['The faders are swapped: the one here moves Strip 1 Strip 1.']);
  expect(says('desk.s3')).toEqual([]);
});

test('placeName() and spokenMove() of what is chosen read as things', () => {
  const board = { 'desk.s2.path': 'first', 'desk.control.mode': 'pfl', 'desk.odd.main': 'left' };
  const { rig, ...setup } = setupOf({ desk: { ...SOLO, ...MONO }, strips: INLINE, board });
  expect(placeName(rig, 'desk.s2.path')).toBe('the feed of Strip 2 Strip 2');
  expect(placeName(rig, 'desk.control.listen')).toBe('the choice of the control room');
  expect(movesBetween(rig, {}, setup.board).map((move) => spokenMove(rig, move))).toEqual([
    'The feed of Strip 2 Strip 2, the first path, after its fader',
    'The assign of Odd to the main bus, left',
    'The solo mode of the control room, before the fader (PFL)',
  ]);
});

test('shortOption() is the letters in brackets, or the words without their article', () => {
  const { rig } = setupOf({ desk: SOLO });
  const short = (address: string, value: string) => {
    const control = controls(rig).get(address);
    return control?.kind === 'choice' ? shortOption(control, value) : '';
  };
  expect(short('desk.control.mode', 'pfl')).toBe('PFL');
  expect(short('desk.control.mode', 'in-place')).toBe('in place');
  expect(short('desk.control.listen', 'main')).toBe('main bus');
});
