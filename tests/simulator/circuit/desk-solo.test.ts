import { describe, expect, test } from 'vitest';
import { levelAt, levelOf } from '../../../simulator/solve/levels.ts';
import { paths } from '../../../simulator/trace/paths.ts';
import { stopOf } from '../../../simulator/trace/stops.ts';
import { type DeskRoom, deskRoom } from './desk-room.ts';

const SOLO = ['in-place', 'pfl', 'afl'];
const solved = (board: DeskRoom['board'] = {}, solo = SOLO) =>
  deskRoom({ desk: { solo, controlRoom: { inputs: [{ id: 'tape', label: 'Tape' }] } }, board })
    .solution;
const heard = (solution: ReturnType<typeof solved>, place: string) =>
  ['flute', 'oboe', 'horn'].filter((track) => levelOf(solution, track, place) !== -Infinity);

describe('solo in place closes the mutes of the others', () => {
  test('levelOf() one soloed: it alone comes out, at its level', () => {
    const solution = solved({ 'desk.s2.solo': true, 'desk.s2.fader': -3 });
    expect(heard(solution, 'out.tape')).toEqual(['oboe']);
    expect(levelOf(solution, 'oboe', 'out.tape')).toBeCloseTo(-2 - 3, 9);
  });

  test('levelOf() two soloed: both come out; none soloed: all do', () => {
    const both = solved({ 'desk.s1.solo': true, 'desk.s3.solo': true });
    expect(heard(both, 'out.tape')).toEqual(['flute', 'horn']);
    expect(heard(solved(), 'out.tape')).toEqual(['flute', 'oboe', 'horn']);
  });

  test('levelOf() a solo-safe strip stays, as the return of an effect should', () => {
    const solution = solved({ 'desk.s2.solo': true, 'desk.s3.safe': true });
    expect(heard(solution, 'out.tape')).toEqual(['oboe', 'horn']);
  });

  test('levelOf() a mute stays a mute, soloed or not', () => {
    const solution = solved({ 'desk.s2.solo': true, 'desk.s2.mute': true });
    expect(heard(solution, 'out.tape')).toEqual([]);
  });

  test('levelOf() sends before the fader and the mute stay; those after it go', () => {
    const sends = { 'desk.s1.ears': -7, 'desk.s1.wash': -7 };
    const solution = solved({ ...sends, 'desk.s2.solo': true });
    expect(levelOf(solution, 'flute', 'desk.ears.sum')).toBeCloseTo(3 - 7, 9);
    expect(levelOf(solution, 'flute', 'desk.wash.sum')).toBe(-Infinity);
  });

  test('levelOf() where the tap before the fader stands behind the mute, that send goes too', () => {
    const { solution } = deskRoom({
      type: {
        stages: ['trim', 'insert', 'mute', 'fader', 'pan'],
        taps: { pre: 'mute', post: 'fader' },
      },
      desk: { solo: ['in-place'] },
      board: { 'desk.s1.ears': -7, 'desk.s2.solo': true },
    });
    expect(levelOf(solution, 'flute', 'desk.ears.sum')).toBe(-Infinity);
  });

  test('stopOf() says that it is the solo of others, and not its own mute', () => {
    const stop = stopOf(solved({ 'desk.s2.solo': true }), 'flute', 'out.tape');
    expect(stop).toEqual({ code: 'closed', places: ['desk.s1.cut'] });
  });
});

describe('PFL and AFL listen in the control room, and leave the mix alone', () => {
  const listening = (mode: string, more: DeskRoom['board'] = {}) =>
    solved({ 'desk.control.mode': mode, 'desk.s1.fader': -10, 'desk.s1.solo': true, ...more });

  test('levelOf() the mix does not change', () => {
    for (const mode of ['pfl', 'afl']) {
      expect(heard(listening(mode), 'out.tape')).toEqual(['flute', 'oboe', 'horn']);
    }
  });

  test('levelOf() PFL on both sides before the fader: 3 dBu each; AFL where its pan puts it, 3 − 10 = −7 dBu', () => {
    const before = listening('pfl');
    expect(levelOf(before, 'flute', 'desk.control.out.l')).toBeCloseTo(3, 9);
    expect(levelOf(before, 'flute', 'desk.control.out.r')).toBeCloseTo(3, 9);
    const behind = listening('afl');
    expect(levelOf(behind, 'flute', 'desk.control.out.l')).toBeCloseTo(-7, 9);
    expect(levelOf(behind, 'flute', 'desk.control.out.r')).toBe(-Infinity);
  });

  test('levelOf() what is soloed takes the place of the main bus; with nothing soloed that is heard', () => {
    expect(heard(listening('pfl'), 'desk.control.out')).toEqual(['flute']);
    expect(heard(solved(), 'desk.control.out')).toEqual(['flute', 'oboe', 'horn']);
  });

  test('levelOf() PFL hears a muted strip, AFL does not', () => {
    const muted = { 'desk.s1.mute': true };
    expect(heard(listening('pfl', muted), 'desk.control.out')).toEqual(['flute']);
    expect(heard(listening('afl', muted), 'desk.control.out')).toEqual([]);
  });

  test('levelOf() an aux master is listened to after its level, in any mode: −2 − 6 − 4 = −12 dBu', () => {
    const solution = solved({
      'desk.s2.ears': -6,
      'desk.ears.level': -4,
      'desk.ears.solo': true,
    });
    expect(levelOf(solution, 'oboe', 'desk.control.out.l')).toBeCloseTo(-12, 9);
    expect(heard(solution, 'desk.control.out')).toEqual(['oboe']);
    expect(heard(solution, 'out.tape')).toEqual(['flute', 'oboe', 'horn']);
  });
});

describe('the control room', () => {
  test('levelOf() an input in place of the main bus', () => {
    const solution = solved({
      'desk.control.listen': 'tape',
      'desk.control.tape.r': 'converter.out3',
      'desk.s3.in': 'none',
    });
    expect(heard(solution, 'desk.control.out')).toEqual(['horn']);
    expect(levelOf(solution, 'horn', 'desk.control.out.r')).toBeCloseTo(5, 9);
  });

  test('levelAt() mono keeps what is the same on both sides, and halves what is on one', () => {
    const room = (mono: boolean) =>
      solved({
        'desk.control.mono': mono,
        'desk.s2.mute': true,
        'desk.s3.mute': true,
        'desk.s1.pan': 0,
      });
    expect(levelAt(room(true), 'desk.control.out.l')).toBeCloseTo(
      levelAt(room(false), 'desk.control.out.l') ?? Number.NaN,
      9,
    );
    const left = solved({ 'desk.control.mono': true, 'desk.s2.mute': true, 'desk.s3.mute': true });
    expect(levelAt(left, 'desk.control.out.r')).toBeCloseTo(3 - 20 * Math.log10(2), 9);
  });

  test('paths() its level and what it listens to change nothing in the mix', () => {
    const plain = paths(solved(), 'flute', 'out.tape');
    expect(paths(solved({ 'desk.control.level': -20 }), 'flute', 'out.tape')).toEqual(plain);
  });
});
