import { expect, test } from 'vitest';
import { levelOf, paths } from '../../simulator/index.ts';
import { pathLine, pathRows, pathsSentence } from '../../src/text/index.ts';
import { hear, netLoft } from './net-loft.ts';

const OUTPUT = 'out.capture';
const board = {
  'desk.ch3.polarity': true,
  'desk.ch3.pan': -0.5,
  'desk.ch3.aux3': -6,
  'desk.ret1.fader': -4,
};

function told(source: string, moved = {}) {
  const { solution } = hear(moved);
  const ways = paths(solution, source, OUTPUT);
  return pathsSentence(netLoft, {
    source,
    output: 'capture',
    ways,
    level: levelOf(solution, source, OUTPUT),
  });
}

test('pathLine() goes from owner to owner and names the sends', () => {
  const { solution } = hear(board);
  expect(paths(solution, 'cello', OUTPUT).map((path) => pathLine(netLoft, path))).toEqual([
    'Cello track → Output 3 → Strip 3 Cello → Main bus → Capture',
    'Cello track → Output 3 → Strip 3 Cello, send to Aux 3 → Aux 3 → Plate → Strip R1 Plate return → Main bus → Capture',
  ]);
});

test('pathRows() leaves out sums and jacks, and says what each other place did', () => {
  const { setup, solution } = hear(board);
  const [dry] = paths(solution, 'cello', OUTPUT);
  if (!dry) throw new Error('Expected a path.');
  expect(pathRows(setup, dry).map(({ name, did, level }) => [name, did, level])).toEqual([
    ['Cello track recording', 'starts', '+3.0 dBu'],
    ['Cello track fader', '0.0 dB', '+3.0 dBu'],
    ['Output 3', 'unchanged', '+3.0 dBu'],
    ['Strip 3 Cello polarity', 'inverted', '+3.0 dBu'],
    ['Strip 3 Cello fader', '0.0 dB', '+3.0 dBu'],
    ['Main bus fader', '0.0 dB', '+3.0 dBu'],
    ['Capture input', 'arrives', '+3.0 dBu'],
  ]);
  expect(pathRows(setup, dry, { every: true })).toHaveLength(dry.steps.length);
});

test('pathRows() of a way through a reverb: 3 − 6 + 3 (two legs) − 4 = −4 dBu', () => {
  const { setup, solution } = hear(board);
  const wet = paths(solution, 'cello', OUTPUT).find(({ decorrelated }) => decorrelated);
  if (!wet) throw new Error('Expected a path.');
  const rows = new Map(
    pathRows(setup, wet).map(({ place, before, did, level }) => [place, [before, did, level]]),
  );
  expect(rows.get('box.cello.source')).toEqual(['', 'starts', '+3.0 dBu']);
  expect(rows.get('desk.ch3.aux3')).toEqual(['+3.0 dBu', '−6.0 dB', '−3.0 dBu']);
  expect(rows.get('rack.plate.reverb')).toEqual([
    '−3.0 dBu',
    'turned into reverberation',
    '0.0 dBu',
  ]);
  expect(rows.get(OUTPUT)).toEqual(['−4.0 dBu', 'arrives', '−4.0 dBu']);
});

test('pathsSentence() counts the ways and gives their level together', () => {
  expect(told('cello')).toBe('Cello reaches Capture by 1 way, at +3.0 dBu.');
  expect(told('cello', { 'desk.ch3.sub1': true })).toBe(
    'Cello reaches Capture by 2 ways, together at +9.0 dBu.',
  );
  expect(told('cello', { 'desk.ch3.mute': true })).toBe('Cello does not reach Capture.');
  expect(told('piano')).toBe('Piano reaches Capture by 1 way on each side, together at +3.0 dBu.');
});

test('pathsSentence() invents no level in an unstable loop', () => {
  expect(told('cello', { 'desk.ret1.aux3': 0, 'desk.ch3.aux3': 0 })).toBe(
    'Cello reaches Capture by 2 ways, with no level (unstable loop).',
  );
});
