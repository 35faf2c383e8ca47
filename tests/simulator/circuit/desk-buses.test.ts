import { describe, expect, test } from 'vitest';
import { controls } from '../../../simulator/rig/controls.ts';
import { jacks } from '../../../simulator/rig/jacks.ts';
import { levelAt, levelOf } from '../../../simulator/solve/levels.ts';
import { type DeskRoom, deskRoom } from './desk-room.ts';

type Board = NonNullable<DeskRoom['board']>;
const HALF_DB = 20 * Math.log10(2);

describe('a direct out', () => {
  const taken = (directOut: string, board: Board = {}) =>
    deskRoom({ type: { directOut }, board }).solution;

  test('levelAt() it is taken behind the stage that the rig says', () => {
    const faded = { 'desk.s1.trim': 4, 'desk.s1.fader': -9 };
    expect(levelAt(taken('insert', faded), 'desk.s1.direct')).toBeCloseTo(3 + 4, 9);
    expect(levelAt(taken('fader', faded), 'desk.s1.direct')).toBeCloseTo(3 + 4 - 9, 9);
    expect(levelAt(taken('mute', { 'desk.s1.mute': true }), 'desk.s1.direct')).toBe(-Infinity);
  });

  test('jacks() behind the pan it has two sides, and without the field none', () => {
    const jacksWith = (type: object) =>
      jacks(deskRoom({ type: { ...type } }).setup.rig).outputs.filter((jack) =>
        jack.startsWith('desk.s1.direct'),
      );
    expect(jacksWith({ directOut: 'pan' })).toEqual(['desk.s1.direct.l', 'desk.s1.direct.r']);
    expect(jacksWith({ directOut: 'mute' })).toEqual(['desk.s1.direct']);
    expect(jacksWith({})).toEqual([]);
  });

  test('levelOf() patched to a converter input it comes in beside the mix', () => {
    const solution = taken('fader', { 'converter.in2': 'desk.s3.direct', 'desk.s3.main': false });
    expect(levelOf(solution, 'horn', 'converter.in2')).toBeCloseTo(5, 9);
    expect(levelOf(solution, 'horn', 'out.tape')).toBe(-Infinity);
  });
});

describe('subgroups', () => {
  const MONO = [
    { id: 'odd', label: 'Odd', takes: 'left' },
    { id: 'even', label: 'Even', takes: 'right' },
  ];
  const split = (board: Board) => deskRoom({ desk: { subgroups: MONO }, board }).solution;
  const OFF_MAIN = { 'desk.s1.main': false, 'desk.s2.main': false, 'desk.s3.main': false };
  const BOTH = { ...OFF_MAIN, 'desk.s1.odd': true, 'desk.s1.even': true };

  test('levelOf() of two mono ones the pan chooses: left the one, right the other, between them both', () => {
    expect(levelOf(split(BOTH), 'flute', 'desk.odd.sum')).toBeCloseTo(3, 9);
    expect(levelOf(split(BOTH), 'flute', 'desk.even.sum')).toBe(-Infinity);
    const middle = split({ ...BOTH, 'desk.s1.pan': 0 });
    for (const bus of ['odd', 'even']) {
      expect(levelOf(middle, 'flute', `desk.${bus}.sum`)).toBeCloseTo(3 - HALF_DB, 9);
    }
  });

  test('levelOf() a mono one goes to left, right, both or nowhere of the main bus, at unity', () => {
    const to = (side: string) => split({ ...BOTH, 'desk.odd.main': side, 'desk.odd.fader': -4 });
    const sides = (side: string) =>
      ['l', 'r'].map((leg) => levelOf(to(side), 'flute', `out.tape.${leg}`));
    expect(sides('left')).toEqual([expect.closeTo(3 - 4, 9), -Infinity]);
    expect(sides('right')).toEqual([-Infinity, expect.closeTo(3 - 4, 9)]);
    expect(sides('both')).toEqual([expect.closeTo(3 - 4, 9), expect.closeTo(3 - 4, 9)]);
    expect(sides('none')).toEqual([-Infinity, -Infinity]);
  });

  test('levelOf() one that has no assign leaves by its jacks: into a strip, 3 − 2 − 5 = −4 dBu', () => {
    const { solution, setup } = deskRoom({
      desk: { subgroups: [{ id: 'float', label: 'Float', takes: 'left', main: false }] },
      board: {
        ...OFF_MAIN,
        'desk.s1.float': true,
        'desk.float.fader': -2,
        'desk.s4.in': 'desk.float.out',
        'desk.s4.fader': -5,
      },
    });
    expect(controls(setup.rig).has('desk.float.main')).toBe(false);
    expect(levelOf(solution, 'flute', 'out.tape.l')).toBeCloseTo(-4, 9);
  });

  test('levelOf() one goes straight to an output, beside the main bus', () => {
    const { solution } = deskRoom({
      desk: { subgroups: [{ id: 'stem', label: 'Stem' }] },
      outputs: [{ id: 'stem', label: 'Stem', stereo: true }],
      board: {
        'desk.s2.main': false,
        'desk.s2.stem': true,
        'desk.stem.main': false,
        'out.stem.l': 'desk.stem.out.l',
      },
    });
    expect(levelOf(solution, 'oboe', 'out.stem')).toBeCloseTo(-2, 9);
    expect(levelOf(solution, 'oboe', 'out.tape')).toBe(-Infinity);
  });
});

describe('a type says which auxes and buses its strips lead to', () => {
  const { setup, solution } = deskRoom({
    type: { auxes: ['wash'], assigns: ['main'] },
    desk: { subgroups: [{ id: 'stem', label: 'Stem' }] },
    board: { 'desk.s1.wash': -6 },
  });

  test('controls() the others have no send and no assign', () => {
    const known = controls(setup.rig);
    expect(['desk.s1.wash', 'desk.s1.main'].every((at) => known.has(at))).toBe(true);
    expect(['desk.s1.ears', 'desk.s1.stem'].some((at) => known.has(at))).toBe(false);
  });

  test('levelOf() the one that is there works: 3 − 6 = −3 dBu', () => {
    expect(levelOf(solution, 'flute', 'desk.wash.sum')).toBeCloseTo(-3, 9);
  });
});
