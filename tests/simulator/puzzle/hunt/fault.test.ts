import { describe, expect, test } from 'vitest';
import { boardOf } from '../../../../simulator/board/file-board.ts';
import {
  FAULT_KINDS,
  faultId,
  faultsOf,
  type HuntFault,
  partnerOf,
  solutionWith,
} from '../../../../simulator/puzzle/hunt/fault.ts';
import { levelOf } from '../../../../simulator/solve/levels.ts';
import { simulate } from '../../../../simulator/solve/simulate.ts';
import { netLoft } from './net-loft-room.ts';

const rig = netLoft();
/** The cello: −19 dBFS + 22 = 3 dBu; its fader −6, so −3 dBu on, of which a send takes −10. */
const board = boardOf('board', rig, {
  'desk.ch3.fader': -6,
  'desk.ch3.aux1': -10,
  'desk.ch1.aux1': -10,
  'rack.line.gain': 4,
  'rack.line.in': 'desk.ch3.insert.send',
  'desk.ch3.insert.return': 'rack.line.out',
});
const setup = { rig, board };
const meant = simulate(setup);
const every = faultsOf(setup, meant, new Set(FAULT_KINDS));

/** The level of the cello, or of another track, at a place with something wrong. */
const found = (kind: HuntFault['kind'], at: string, place: string, source = 'cello') =>
  levelOf(solutionWith(setup, meant, { kind, at }), source, place);

describe('solutionWith()', () => {
  test('dead: nothing stands there, and all before it is as it was', () => {
    expect(found('dead', 'desk.ch3.fader', 'desk.ch3.fader')).toBe(-Infinity);
    expect(found('dead', 'desk.ch3.fader', 'out.capture')).toBe(-Infinity);
    expect(found('dead', 'desk.ch3.fader', 'desk.ch3.insert')).toBeCloseTo(3 + 4, 6);
  });
  test('dead on one side leaves the other', () => {
    expect(found('dead', 'desk.main.fader.l', 'out.capture.l')).toBe(-Infinity);
    expect(found('dead', 'desk.main.fader.l', 'out.capture.r')).toBeCloseTo(3 + 4 - 6 - 3.0103, 3);
  });
  test('weak: 20 dB less', () => {
    expect(found('weak', 'desk.ch3.in', 'desk.ch3.in')).toBeCloseTo(3 - 20, 6);
  });
  test('inverted: as loud as ever', () => {
    expect(found('inverted', 'desk.ch3.in', 'out.capture')).toBeCloseTo(3 + 4 - 6, 6);
  });
  test('muted, closed, unassigned: silent from there on', () => {
    for (const [kind, at] of [
      ['muted', 'desk.ch3.mute'],
      ['closed', 'desk.ch3.fader'],
      ['unassigned', 'desk.ch3.main'],
      ['unassigned', 'box.cello.to'],
      ['unplugged', 'desk.ch3.in'],
    ] as const) {
      expect(found(kind, at, 'out.capture'), `${kind} ${at}`).toBe(-Infinity);
    }
  });
  test('stray: in two ways to the main bus, which is 6 dB more', () => {
    expect(found('stray', 'desk.ch3.sub1', 'out.capture')).toBeCloseTo(3 + 4 - 6 + 6.0206, 3);
  });
  test('tap: what was taken behind the fader is taken before it', () => {
    const send = 'desk.ch3.aux1';
    expect(levelOf(meant, 'cello', send)).toBeCloseTo(3 + 4 - 6 - 10, 6);
    expect(found('tap', `${send}.tap`, send)).toBeCloseTo(3 + 4 - 10, 6);
  });
  test('a return that is pulled falls back on the half-normal; an open plug breaks it', () => {
    expect(found('unplugged', 'desk.ch3.insert.return', 'desk.ch3.insert')).toBeCloseTo(3, 6);
    expect(found('open-plug', 'desk.ch1.insert.return', 'out.capture', 'tenor')).toBe(-Infinity);
  });
  test('crossed: neighbours come in at one another', () => {
    expect(partnerOf(setup, 'desk.ch3.in')).toBe('desk.ch4.in');
    expect(found('crossed', 'desk.ch3.in', 'desk.ch3.in')).toBe(-Infinity);
    expect(found('crossed', 'desk.ch3.in', 'desk.ch4.in')).toBeCloseTo(3, 6);
  });
  test('polarity leaves the level of one way alone', () => {
    expect(found('polarity', 'desk.ch3.polarity', 'out.capture')).toBeCloseTo(3 + 4 - 6, 6);
  });
});

describe('faultsOf()', () => {
  const ids = every.map(faultId);
  test('names each fault once, and only of the kinds that were asked for', () => {
    expect(new Set(ids).size).toBe(ids.length);
    const kinds = faultsOf(setup, meant, new Set(['muted'])).map(({ kind }) => kind);
    expect(new Set(kinds)).toEqual(new Set(['muted']));
  });
  test('every fault can be simulated, and is a change of something', () => {
    const changed = every.filter(
      (fault) => solutionWith(setup, meant, fault).circuit.wires !== meant.circuit.wires,
    );
    expect(changed).toHaveLength(every.length);
  });
  test('leaves out what is not in use', () => {
    expect(ids).toContain('dead desk.ch3.fader');
    expect(ids).not.toContain('dead rack.comp.in');
    expect(ids).not.toContain('unplugged rack.comp.in');
    expect(ids).not.toContain('closed desk.ch5.aux1');
  });
  test('a normal cannot be wired the wrong way round, nor be pulled', () => {
    expect(ids).toContain('inverted desk.ch3.insert.return');
    expect(ids).not.toContain('inverted desk.ch1.insert.return');
    expect(ids).not.toContain('unplugged desk.ch1.insert.return');
  });
});
