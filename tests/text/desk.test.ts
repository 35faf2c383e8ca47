import { expect, test } from 'vitest';
import { paths, stopOf } from '../../simulator/index.ts';
import { pathStory, stopText } from '../../src/text/index.ts';
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
