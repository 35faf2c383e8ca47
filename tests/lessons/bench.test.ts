import { describe, expect, test } from 'vitest';
import {
  boardOf,
  feedOf,
  findings,
  levelAt,
  outputPlace,
  paths,
  type Rig,
  signalsOf,
  simulate,
} from '../../simulator/index.ts';
import { course, repeated } from './the-course.ts';

const rigOf = (id: string) => course.rigs.get(id) as Rig;

describe.each(course.bench)('the room $rig of the bench', ({ rig: id }) => {
  const rig = rigOf(id);
  const solution = simulate({ rig, board: {} });

  test('it is a rig of the course, and stands on the bench once', () => {
    expect(rig).toBeDefined();
    expect(repeated(course.bench.map((room) => room.rig))).toEqual([]);
  });

  test('as one finds it, every signal arrives at the capture once, from a converter output of its own', () => {
    const signals = rig.box.tracks.flatMap(signalsOf);
    const ways = signals.map((signal) => paths(solution, signal, outputPlace('capture')));
    expect(ways.filter((of) => of.length !== 1)).toEqual([]);
    const outs = ways.flatMap(([way]) =>
      (way?.steps ?? []).flatMap(({ place }) => (place.startsWith('converter.') ? [place] : [])),
    );
    expect(outs).toHaveLength(signals.length);
    expect(repeated(outs)).toEqual([]);
    expect(levelAt(solution, outputPlace('capture'))).toBeGreaterThan(-10);
  });

  test('an engineer would point at nothing in it', () => {
    expect(findings({ rig, board: {} }, solution).map(({ code }) => code)).toEqual([]);
  });
});

const levelsAfter = (id: string, changes: Record<string, string | number | boolean>) => {
  const rig = rigOf(id);
  const solution = simulate({ rig, board: boardOf('a test', rig, changes) });
  return (place: string) => levelAt(solution, place) ?? Number.NaN;
};

describe('what is said about the rooms is so', () => {
  test('teaching-desk: the fader of strip 3 moves the plate, not the headphones: 6 dB and 0 dB', () => {
    const sends = { 'desk.ch3.ears': -5, 'desk.ch3.wash': -5 };
    const [before, after] = [0, -6].map((fader) =>
      levelsAfter('teaching-desk', { ...sends, 'desk.ch3.fader': fader }),
    );
    const fall = (place: string) => Number(before?.(place)) - Number(after?.(place));
    expect(fall('rack.plate.in')).toBeCloseTo(6, 6);
    expect(fall('out.headphones')).toBeCloseTo(0, 6);
  });

  test('split-desk: subgroups 5 and 6 come back on R3, 7 and 8 are captured by the box', () => {
    const level = levelsAfter('split-desk', {
      'desk.ch4.sub5': true,
      'desk.ch4.sub7': true,
      'desk.ch4.pan': -1,
    });
    expect(level('desk.ret3.in.l')).toBeGreaterThan(-10);
    expect(level('desk.ret3.in.r')).toBe(-Infinity);
    expect(level('box.stem.in.l')).toBeGreaterThan(-10);
    expect(level('box.stem.in.r')).toBe(-Infinity);
  });

  test('bay-room: every strip that plays is fed by a normal, with no cord in it', () => {
    const rig = rigOf('bay-room');
    const setup = { rig, board: {} };
    const players = rig.desk.strips.slice(0, rig.box.tracks.length);
    const fed = players.flatMap(({ id }) => feedOf(setup, `desk.${id}.in`) ?? []);
    expect(fed.length).toBe(rig.box.tracks.length);
    expect(fed.map(({ by }) => by)).toEqual(fed.map(() => 'normal'));
  });

  test('in-line-desk: an idle second path is one more send after the fader, to a bus and its capture track: 4 + 5 = 9 dB', () => {
    const sent = { 'desk.two4.bus-a': true, 'desk.two4.pan': -1 };
    const [unity, lower] = [
      levelsAfter('in-line-desk', sent),
      levelsAfter('in-line-desk', { ...sent, 'desk.ch4.fader': -4, 'desk.two4.fader': -5 }),
    ];
    expect(unity('box.print-ab.in.l') - lower('box.print-ab.in.l')).toBeCloseTo(9, 6);
    expect(unity('out.capture') - lower('out.capture')).toBeGreaterThan(0);
  });
});
