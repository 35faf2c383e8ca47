/** Common practice, no source: what everybody in the trade takes for granted about signal flow. */
import { describe, expect, test } from 'vitest';
import {
  type Claim,
  type ControlValue,
  controls,
  judge,
  levelAt,
  levelOf,
  movesBetween,
  passes,
  paths,
  placesOf,
  type Setup,
  simulate,
  stopOf,
  withValues,
} from '../../simulator/index.ts';
import { type Bench, setUp } from './rig-builder.ts';
import { expectNear, LINEAR_DB } from './tolerance.ts';

const RACK = [
  { id: 'comp', kind: 'compressor' },
  { id: 'duo', kind: 'compressor', inputs: 2, outputs: 2 },
  { id: 'plate', kind: 'reverb', outputs: 2 },
] as const;
const LEVELS = [-19, -22, -26];
/** Levels of the three tracks as they come in, in dBu. */
const [T1, T2, T3] = [5, 2, -2] as const;

/** Three tracks on three strips, with an aux of each kind: 1 pre, 2 post, 3 switchable. */
const desk = (board: Record<string, ControlValue> = {}, plugins: Bench['plugins'] = {}): Setup =>
  setUp({
    plugins,
    levels: LEVELS,
    strips: 4,
    auxes: ['pre', 'post', 'switchable'],
    subgroups: 2,
    rack: RACK,
    board,
  });
const moved = ({ rig, board }: Setup, values: Record<string, ControlValue>): Setup => ({
  rig,
  board: withValues(rig, board, values),
});
const holds = (setup: Setup, claim: Claim): boolean =>
  judge(claim, { setup, solution: simulate(setup) }).holds;

const IN_LINE = {
  'rack.comp.in': 'desk.ch1.insert.send',
  'desk.ch1.insert.return': 'rack.comp.out',
  'rack.comp.threshold': -3,
  'rack.comp.ratio': '4',
};
/** 8 dB over the threshold at 4 : 1 become 2: 6 dB less. */
const INSERT_LOSS = -6;

/** The reverb on aux `aux`, its return on the stereo strip. */
const reverbOn = (aux: string) => ({
  'rack.plate.in': `desk.${aux}.out`,
  'desk.ret.in.l': 'rack.plate.out.l',
  'desk.ret.in.r': 'rack.plate.out.r',
});

describe('An insert is in line and treats its own strip only (common practice, no source)', () => {
  test('paths() every way of t1 passes the device, no way of t2 or t3 does', () => {
    const solution = simulate(desk({ ...IN_LINE, 'desk.ch1.sub1': true, 'desk.ch2.sub1': true }));
    const through = (track: string) =>
      paths(solution, track, 'out.capture').map((path) => passes(path, 'rack.comp'));
    expect(through('t1')).toEqual([true, true]);
    expect(through('t2')).toEqual([false, false]);
    expect(through('t3')).toEqual([false]);
  });

  test('levelOf() t1 loses (1 - 1/4) · (5 - -3) = 6 dB, t2 and t3 nothing', () => {
    const solution = simulate(desk(IN_LINE));
    expectNear(levelOf(solution, 't1', 'out.capture'), T1 + INSERT_LOSS);
    expectNear(levelOf(solution, 't2', 'out.capture'), T2);
    expectNear(levelOf(solution, 't3', 'out.capture'), T3);
  });

  test('levelOf() with nothing coming back, t1 is gone: it does not pass beside the insert', () => {
    const setup = desk({ 'desk.ch1.insert.return': 'rack.comp.out' });
    expect(levelOf(simulate(setup), 't1', 'out.capture')).toBe(-Infinity);
    expectNear(levelOf(simulate(setup), 't2', 'out.capture'), T2);
  });

  test('levelOf() sends and the fader come after the insert: they get what it left', () => {
    const solution = simulate(desk({ ...IN_LINE, 'desk.ch1.aux1': -9, 'desk.ch1.fader': -7 }));
    expectNear(levelOf(solution, 't1', 'desk.aux1.out'), T1 + INSERT_LOSS - 9);
    expectNear(levelOf(solution, 't1', 'desk.ch1.fader'), T1 + INSERT_LOSS - 7);
  });
});

describe('A send is a split and leaves the strip as it was (common practice, no source)', () => {
  const sends = [
    { name: 'pre', send: { 'desk.ch1.aux1': 4 }, aux: 'aux1', arrives: T1 + 4 },
    { name: 'post', send: { 'desk.ch1.aux2': -11 }, aux: 'aux2', arrives: T1 - 3 - 11 },
    { name: 'switchable', send: { 'desk.ch1.aux3': 6 }, aux: 'aux3', arrives: T1 - 3 + 6 },
  ];

  test.each(sends)(
    'levelAt() opening a send, $name, moves no place of the strip nor the main bus',
    (row) => {
      const [before, after] = [{}, row.send].map((send) =>
        simulate(desk({ 'desk.ch1.fader': -3, ...send })),
      );
      if (!before || !after) throw new Error('Expected two solutions.');
      const places = ['trim', 'insert', 'fader', 'mute', 'pan'].map((stage) => `desk.ch1.${stage}`);
      for (const place of [...places, 'desk.main.out', 'out.capture']) {
        expect(levelAt(after, place)).toBe(levelAt(before, place));
      }
      expect(levelOf(before, 't1', `desk.${row.aux}.out`)).toBe(-Infinity);
      expectNear(levelOf(after, 't1', `desk.${row.aux}.out`), row.arrives);
    },
  );

  test('levelAt() a cord in an insert send alone splits off too, and leaves the strip as it was', () => {
    const solution = simulate(desk({ 'out.phones': 'desk.ch2.insert.send' }));
    expectNear(levelOf(solution, 't2', 'out.phones'), T2);
    expectNear(levelOf(solution, 't2', 'out.capture'), T2);
  });
});

describe('A send has no return of its own (common practice, no source)', () => {
  const sent = { 'desk.ch1.aux2': -8, 'rack.plate.in': 'desk.aux2.out' };

  test('paths() what is sent to a reverb without a cord back never reaches the mix', () => {
    const setup = desk(sent);
    const solution = simulate(setup);
    expectNear(levelOf(solution, 't1', 'rack.plate.in'), T1 - 8);
    expect(paths(solution, 't1', 'out.capture').map((path) => passes(path, 'rack.plate'))).toEqual([
      false,
    ]);
    expectNear(levelOf(solution, 't1', 'out.capture'), T1);
    expect(stopOf(solution, 't1', 'desk.ret.in')).toMatchObject({
      code: 'no-way',
      openings: ['desk.ret.in'],
    });
  });

  test('paths() with cords into a strip it arrives dry and through, there by a fader of its own', () => {
    const setup = desk({ ...sent, ...reverbOn('aux2'), 'desk.ret.fader': -4 });
    const claim = { kind: 'dry-and-through', source: 't1', output: 'capture' } as const;
    expect(holds(setup, { ...claim, through: 'rack.plate' })).toBe(true);
    expect(holds(desk(sent), { ...claim, through: 'rack.plate' })).toBe(false);
    // Two sides of one power each: 10·log 2 above what went in.
    expectNear(levelOf(simulate(setup), 't1', 'desk.ret.pan'), T1 - 8 + 10 * Math.log10(2) - 4);
  });
});

describe('A pre-fader send does not move with the fader; a post-fader send does, dB for dB (common practice, no source)', () => {
  const cases = [
    { aux: 'aux1', tap: {}, isPre: true, what: 'fixed before' },
    { aux: 'aux2', tap: {}, isPre: false, what: 'fixed after' },
    { aux: 'aux3', tap: { 'desk.ch1.aux3.tap': 'pre' }, isPre: true, what: 'switched before' },
    { aux: 'aux3', tap: { 'desk.ch1.aux3.tap': 'post' }, isPre: false, what: 'switched after' },
  ];
  const open = (row: (typeof cases)[number]) =>
    desk({ ...row.tap, [`desk.ch1.${row.aux}`]: -12, 'desk.ch1.fader': 1.5 });

  test.each(cases)('levelOf() $what the fader: -10.3 dB of fader', (row) => {
    const setup = open(row);
    const before = levelOf(simulate(setup), 't1', `desk.${row.aux}.out`);
    expectNear(before, T1 - 12 + (row.isPre ? 0 : 1.5));
    const after = simulate(moved(setup, { 'desk.ch1.fader': 1.5 - 10.3 }));
    const level = levelOf(after, 't1', `desk.${row.aux}.out`);
    if (row.isPre) expect(level).toBe(before);
    else expectNear(level, (before ?? Number.NaN) - 10.3);
  });

  test.each(cases)('levelOf() $what the fader: fader closed', (row) => {
    const solution = simulate(moved(open(row), { 'desk.ch1.fader': -Infinity }));
    const level = levelOf(solution, 't1', `desk.${row.aux}.out`);
    if (row.isPre) expectNear(level, T1 - 12);
    else expect(level).toBe(-Infinity);
  });

  test.each(cases)('judge() $what the fader: steady and follows under a probe', (row) => {
    const probe = { move: 'fader', of: 't1', byDb: -9 } as const;
    const claim = { source: 't1', output: `desk.${row.aux}.out`, probe, toleranceDb: LINEAR_DB };
    expect(holds(open(row), { kind: 'steady', ...claim })).toBe(row.isPre);
    expect(holds(open(row), { kind: 'follows', ...claim })).toBe(!row.isPre);
  });

  test.each(cases)(
    'levelOf() $what the fader: it moves with the trim, and with no other strip',
    (row) => {
      const setup = open(row);
      const place = `desk.${row.aux}.out`;
      const before = levelOf(simulate(setup), 't1', place) ?? Number.NaN;
      expectNear(
        levelOf(simulate(moved(setup, { 'desk.ch1.trim': 3.7 })), 't1', place),
        before + 3.7,
      );
      const other = { 'desk.ch2.fader': -30, 'desk.main.fader': -20, 'desk.ch1.pan': 0.6 };
      expect(levelOf(simulate(moved(setup, other)), 't1', place)).toBe(before);
    },
  );
});

describe('Headphones want pre, effects want post (common practice, no source)', () => {
  const HEADPHONES = { 'out.phones': 'desk.aux3.out', 'desk.ch1.aux3': -1, 'desk.ch2.aux3': -5 };

  test('levelOf() pre, the balance in the headphones stays when the mix changes; post, it goes', () => {
    const balance = (tap: string, faders: Record<string, number>) => {
      const taps = { 'desk.ch1.aux3.tap': tap, 'desk.ch2.aux3.tap': tap };
      const solution = simulate(desk({ ...HEADPHONES, ...taps, ...faders }));
      const [one, two] = ['t1', 't2'].map((track) => levelOf(solution, track, 'out.phones'));
      return (one ?? Number.NaN) - (two ?? Number.NaN);
    };
    const mix = { 'desk.ch1.fader': -14, 'desk.ch2.fader': 2 };
    expectNear(balance('pre', {}), T1 - 1 - (T2 - 5));
    expectNear(balance('pre', mix), T1 - 1 - (T2 - 5));
    expectNear(balance('post', mix), T1 - 1 - (T2 - 5) - 14 - 2);
  });

  /** How far the reverb of t1 lies under its dry signal in the mix, in dB. */
  const reverbUnderDry = (aux: string, fader: number): number => {
    const board = { ...reverbOn(aux), [`desk.ch1.${aux}`]: -16, 'desk.ch1.fader': fader };
    const ways = paths(simulate(desk(board)), 't1', 'out.capture');
    const dry = ways.find(({ decorrelated }) => !decorrelated)?.level ?? Number.NaN;
    const wet = ways.find(({ decorrelated }) => decorrelated)?.level ?? Number.NaN;
    return dry - wet;
  };

  test('paths() post, the reverb keeps its distance from the dry signal: 16 - 10·log 2 dB', () => {
    const distance = 16 - 10 * Math.log10(2);
    expectNear(reverbUnderDry('aux2', 0), distance);
    expectNear(reverbUnderDry('aux2', -21), distance);
    // Pre, it comes 21 dB nearer: more room as the player steps back.
    expectNear(reverbUnderDry('aux1', -21), distance - 21);
  });

  test('levelOf() pre into a reverb leaves the reverb when the dry goes; post leaves nothing', () => {
    const faded = (aux: string) =>
      simulate(desk({ ...reverbOn(aux), [`desk.ch1.${aux}`]: -16, 'desk.ch1.fader': -Infinity }));
    const ghost = faded('aux1');
    expectNear(levelOf(ghost, 't1', 'out.capture'), T1 - 16 + 10 * Math.log10(2));
    expect(paths(ghost, 't1', 'out.capture').map(({ decorrelated }) => decorrelated)).toEqual([
      true,
    ]);
    expect(levelOf(faded('aux2'), 't1', 'out.capture')).toBe(-Infinity);
    expect(paths(faded('aux2'), 't1', 'out.capture')).toEqual([]);
  });
});

describe('A plug-in on a track comes before everything on the desk (common practice, no source)', () => {
  const PLUGINS = {
    t1: [
      { id: 'trim', kind: 'gain' },
      { id: 'squeeze', kind: 'compressor' },
    ],
  } as const;
  const withPlugins = (board: Record<string, ControlValue>): Setup =>
    desk({ 'box.t1.squeeze.threshold': 10, ...board }, PLUGINS);

  test('paths() every place of both plug-ins comes before every place of the desk and of the rack', () => {
    const setup = withPlugins({ ...IN_LINE, ...reverbOn('aux1'), 'desk.ch1.aux1': -2 });
    const ways = paths(simulate(setup), 't1', 'out.capture');
    expect(ways).toHaveLength(2);
    for (const way of ways) {
      expect(passes(way, 'box.t1.trim') && passes(way, 'box.t1.squeeze')).toBe(true);
      const places = placesOf(way);
      const firstOnDesk = places.findIndex((place) => /^(desk|rack)\./.test(place));
      const lastPlugin = places.findLastIndex((place) => /^box\.t1\.(trim|squeeze)\./.test(place));
      expect(lastPlugin).toBeLessThan(firstOnDesk);
    }
  });

  test('levelOf() 7 dB less by a plug-in: pre and post sends, the insert and the mix all get less', () => {
    const sends = { 'desk.ch1.aux1': -1, 'desk.ch1.aux2': -4, 'desk.ch1.fader': -6 };
    const [full, less] = [0, -7].map((gain) =>
      simulate(withPlugins({ ...sends, 'box.t1.trim.gain': gain })),
    );
    if (!full || !less) throw new Error('Expected two solutions.');
    for (const place of ['desk.aux1.out', 'desk.aux2.out', 'desk.ch1.insert.send', 'out.capture']) {
      expectNear(levelOf(less, 't1', place), (levelOf(full, 't1', place) ?? Number.NaN) - 7);
    }
  });

  test('levelAt() what a compressor in the box leaves is what the one in the insert hears', () => {
    // 5 dBu over 1 dBu at 2 : 1 is 3 dBu; that is 6 dB over −3 dBu, of which 4 : 1 leaves 1.5 dB.
    const board = { 'box.t1.squeeze.threshold': 1, 'box.t1.squeeze.ratio': '2' };
    const solution = simulate(withPlugins({ ...IN_LINE, ...board }));
    expectNear(levelAt(solution, 'rack.comp.in'), 3);
    expectNear(levelOf(solution, 't1', 'out.capture'), -1.5);
  });

  test('levelAt() 8 dB over the threshold or 1: a plug-in at -7 takes away (8 - 1) · 3/4 of loss', () => {
    const solution = simulate(withPlugins({ ...IN_LINE, 'box.t1.trim.gain': -7 }));
    expectNear(levelOf(solution, 't1', 'out.capture'), -3 + (T1 - 7 + 3) / 4);
  });
});

describe('A strip on a subgroup and on the main bus at once arrives twice (common practice, no source)', () => {
  const both = { 'desk.ch1.sub1': true };

  test('levelOf() untreated, +6.0206 dB, and no longer once', () => {
    const solution = simulate(desk(both));
    expectNear(levelOf(solution, 't1', 'out.capture'), T1 + 6.0206);
    expect(paths(solution, 't1', 'out.capture')).toHaveLength(2);
    const once = { kind: 'once', source: 't1', output: 'capture' } as const;
    expect(holds(desk(), once)).toBe(true);
    expect(holds(desk(both), once)).toBe(false);
    expect(holds(desk({ ...both, 'desk.ch1.main': false }), once)).toBe(true);
  });

  test('levelOf() off the main bus it arrives once, at its own level', () => {
    const solution = simulate(desk({ ...both, 'desk.ch1.main': false }));
    expectNear(levelOf(solution, 't1', 'out.capture'), T1);
  });

  test('levelOf() with a compressor on the subgroup, a parallel chain: +20·log(1 + 10^(-6/20)) dB', () => {
    const chain = {
      ...both,
      'rack.duo.in.l': 'desk.sub1.insert.send.l',
      'rack.duo.in.r': 'desk.sub1.insert.send.r',
      'desk.sub1.insert.return.l': 'rack.duo.out.l',
      'desk.sub1.insert.return.r': 'rack.duo.out.r',
      'rack.duo.threshold': -3,
      'rack.duo.ratio': '4',
    };
    const setup = desk(chain);
    const dryAndThrough = { kind: 'dry-and-through', source: 't1', output: 'capture' } as const;
    expect(holds(setup, { ...dryAndThrough, through: 'rack.duo' })).toBe(true);
    const boost = 20 * Math.log10(1 + 10 ** (INSERT_LOSS / 20));
    expectNear(levelOf(simulate(setup), 't1', 'out.capture'), T1 + boost);
    // The others are on the main bus alone.
    expectNear(levelOf(simulate(setup), 't2', 'out.capture'), T2);
  });
});

describe('A subgroup is one more gain stage (common practice, no source)', () => {
  const grouped = { 'desk.ch2.main': false, 'desk.ch2.sub2': true, 'desk.ch2.fader': -2 };

  test('levelOf() strip -2, subgroup -6.5, main +1: 2 - 2 - 6.5 + 1 = -5.5 dBu', () => {
    const solution = simulate(desk({ ...grouped, 'desk.sub2.fader': -6.5, 'desk.main.fader': 1 }));
    expectNear(levelOf(solution, 't2', 'out.capture'), -5.5);
    const [way] = paths(solution, 't2', 'out.capture');
    const gains = (way?.steps ?? [])
      .filter(({ place }) => place.endsWith('.fader'))
      .map(({ place, gain }) => [place, Math.round(gain * 10_000) / 10_000]);
    expect(gains).toEqual([
      ['box.t2.fader', 0],
      ['desk.ch2.fader', -2],
      ['desk.sub2.fader', -6.5],
      ['desk.main.fader', 1],
    ]);
  });

  test('levelOf() its mute and its fader take all that is on it, and leave the sends alone', () => {
    const sends = { 'desk.ch2.aux2': -3, 'desk.ch2.aux1': -8 };
    const closings: Record<string, ControlValue>[] = [
      { 'desk.sub2.mute': true },
      { 'desk.sub2.fader': -Infinity },
      { 'desk.sub2.main': false },
    ];
    for (const closing of closings) {
      const solution = simulate(desk({ ...grouped, ...sends, ...closing }));
      expect(levelOf(solution, 't2', 'out.capture')).toBe(-Infinity);
      expectNear(levelOf(solution, 't1', 'out.capture'), T1);
      expectNear(levelOf(solution, 't2', 'desk.aux2.out'), T2 - 2 - 3);
      expectNear(levelOf(solution, 't2', 'desk.aux1.out'), T2 - 8);
    }
  });
});

describe('Box faders at unity make recall easy (common practice, no source)', () => {
  const boxFaders = (setup: Setup) =>
    [...controls(setup.rig).values()].filter(({ address }) => /^box\..*\.fader$/.test(address));

  test('controls() every fader of the box is at unity by default: three tracks, a bus and the main mix', () => {
    expect(boxFaders(desk()).map((control) => control.default)).toEqual([0, 0, 0, 0, 0]);
  });

  test('movesBetween() at unity there is nothing to write down; 5 dB off, there is', () => {
    const setup = desk({ 'box.t3.fader': 0, 'desk.ch3.fader': -4 });
    const written = (board: Setup['board']) =>
      movesBetween(setup.rig, {}, board).map(({ control, to }) => [control.address, to]);
    expect(written(setup.board)).toEqual([['desk.ch3.fader', -4]]);
    expect(written(moved(setup, { 'box.t3.fader': -5 }).board)).toEqual([
      ['box.t3.fader', -5],
      ['desk.ch3.fader', -4],
    ]);
  });

  test('levelAt() at unity the desk gets what was recorded: -26 + 24 = -2 dBu', () => {
    expectNear(levelAt(simulate(desk()), 'desk.ch3.in'), T3);
  });
});

describe('One-to-one numbering of outputs and strips makes faults easy to find (common practice, no source)', () => {
  test('stopOf() a cord missing at strip 2 silences t2 and no other, and output 2 is where it ends', () => {
    const solution = simulate(desk({ 'desk.ch2.in': 'none' }));
    const heard = ['t1', 't2', 't3'].map((track) => levelOf(solution, track, 'out.capture'));
    expectNear(heard[0], T1);
    expect(heard[1]).toBe(-Infinity);
    expectNear(heard[2], T3);
    const stop = stopOf(solution, 't2', 'out.capture');
    expect(stop.code).toBe('no-way');
    expect(stop.code === 'no-way' ? stop.ends : []).toContain('converter.out2');
    expect(stop.code === 'no-way' ? stop.openings : []).toContain('desk.ch2.in');
  });

  test('paths() t1, t2 and t3 each pass the output and the strip of their own number', () => {
    const solution = simulate(desk());
    for (const number of [1, 2, 3]) {
      const ways = paths(solution, `t${number}`, 'out.capture');
      expect(ways).toHaveLength(1);
      const named = ways.flatMap(placesOf).filter((place) => /\.(out|ch)\d/.test(place));
      expect(new Set(named.map((place) => place.match(/\d/)?.[0]))).toEqual(new Set([`${number}`]));
    }
  });
});

describe('Two things on one output cannot be told apart on the desk (common practice, no source)', () => {
  const shared = { 'box.t2.to': 'out1', 'box.t2.fader': -4 };
  const MOVES: Record<string, ControlValue>[] = [
    {},
    { 'desk.ch1.fader': -13 },
    { 'desk.ch1.trim': 8, 'desk.ch1.polarity': true },
    { 'desk.ch1.pan': -0.7, 'desk.ch1.sub1': true },
    { ...IN_LINE },
    { ...reverbOn('aux1'), 'desk.ch1.aux1': 3 },
  ];

  test('levelOf() whatever moves on the desk, t1 stays 5 - (2 - 4) = 7 dB above t2 everywhere', () => {
    for (const board of MOVES) {
      const solution = simulate(desk({ ...shared, ...board }));
      for (const place of ['converter.out1', 'desk.ch1.pan', 'out.capture']) {
        const [one, two] = ['t1', 't2'].map((track) => levelOf(solution, track, place));
        expectNear((one ?? Number.NaN) - (two ?? Number.NaN), 7);
      }
    }
  });

  test('levelOf() a mute on the desk takes both; in the box it takes the one', () => {
    const onDesk = simulate(desk({ ...shared, 'desk.ch1.mute': true }));
    expect(levelOf(onDesk, 't1', 'out.capture')).toBe(-Infinity);
    expect(levelOf(onDesk, 't2', 'out.capture')).toBe(-Infinity);
    const inBox = simulate(desk({ ...shared, 'box.t1.mute': true }));
    expect(levelOf(inBox, 't1', 'out.capture')).toBe(-Infinity);
    expectNear(levelOf(inBox, 't2', 'out.capture'), T2 - 4);
  });
});

describe('A normalled room works without cords; a mult splits a signal (common practice, no source)', () => {
  const lines = [1, 2, 3].map((n) => ({ top: `converter.out${n}`, bottom: `desk.ch${n}.in` }));
  const room = (board: Record<string, ControlValue>) =>
    setUp({
      levels: LEVELS,
      strips: 4,
      bay: {
        rows: [{ id: 'a', label: 'Row A', kind: 'half', points: lines }],
        mults: [{ id: 'm', label: 'Mult', outputs: 2 }],
      },
      board: { 'desk.ch1.in': 'none', 'desk.ch2.in': 'none', 'desk.ch3.in': 'none', ...board },
    });
  const at = (board: Record<string, ControlValue>, place: string) =>
    levelAt(simulate(room(board)), place);

  test('levelAt() a normalled room works without a cord, as if each output were plugged one to one', () => {
    expectNear(at({}, 'desk.ch1.in'), T1);
    expectNear(at({}, 'desk.ch2.in'), T2);
    expectNear(at({}, 'desk.ch3.in'), T3);
  });

  test('levelAt() a mult feeds two strips with the same signal, at hardly less than one: 0.1 dB', () => {
    const split = {
      'bay.m.in': 'converter.out1',
      'desk.ch1.in': 'bay.m.out1',
      'desk.ch4.in': 'bay.m.out2',
    };
    expectNear(at(split, 'desk.ch4.in'), T1, 0.1);
    expect(at(split, 'desk.ch1.in')).toBe(at(split, 'desk.ch4.in'));
  });
});
