import { expect, test } from 'vitest';
import { type Board, paths } from '../../simulator/index.ts';
import { pathStory } from '../../src/text/index.ts';
import { hear } from './net-loft.ts';

/** Every way of a source to an output, told; the loudest first. */
function stories(source: string, output: string, board: Board): string[] {
  const { setup, solution } = hear(board);
  return paths(solution, source, output).map((path) => pathStory(setup, path));
}

test('a send says on which side of the fader it is taken: 3 − 6 = −3 dBu before, 3 − 6 − 2 = −5 dBu after', () => {
  const board = { 'desk.ch3.fader': -2, 'desk.ch3.aux1': 0, 'desk.aux1.level': -6 };
  expect(stories('cello', 'out.headphones-a', { ...board, 'desk.ch3.aux1.tap': 'pre' })).toEqual([
    'Cello leaves Output 3, goes before the fader of Strip 3 Cello to Aux 1, is turned down 6.0 dB by the level of Aux 1, and reaches Headphones A at −3.0 dBu.',
  ]);
  expect(stories('cello', 'out.headphones-a', board)).toEqual([
    'Cello leaves Output 3, is turned down 2.0 dB by the fader of Strip 3 Cello, goes after the fader of Strip 3 Cello to Aux 1, is turned down 6.0 dB by the level of Aux 1, and reaches Headphones A at −5.0 dBu.',
  ]);
});

test('polarity, pan and a reverb beside the dry way', () => {
  const board = { 'desk.ch3.polarity': true, 'desk.ch3.pan': -0.5, 'desk.ch3.aux3': -6 };
  expect(stories('cello', 'out.capture', { ...board, 'desk.ret1.fader': -4 })).toEqual([
    'Cello leaves Output 3, is inverted by Strip 3 Cello, is panned 50 % left, goes to the main bus, and reaches Capture at +3.0 dBu.',
    'Cello leaves Output 3, is inverted by Strip 3 Cello, goes after the fader of Strip 3 Cello to Aux 3, turned down 6.0 dB, goes to the plate, is turned into reverberation, is turned down 4.0 dB by the fader of Strip R1 Plate return, goes to the main bus, and reaches Capture at −4.0 dBu.',
  ]);
});

test('an insert with a compressor, by way of a subgroup: (3 + 6) · 3/4 = 6.75 dB less', () => {
  const board = {
    'rack.comp.in': 'desk.ch3.insert.send',
    'desk.ch3.insert.return': 'rack.comp.out',
    'rack.comp.threshold': -6,
    'rack.comp.knee': 0,
    'desk.ch3.sub1': true,
    'desk.ch3.main': false,
  };
  const [story] = stories('cello', 'out.capture', board);
  expect(story).toMatch(
    /^Cello leaves Output 3, goes from the insert of Strip 3 Cello to the compressor, is turned down 6\.[78] dB by its compression, comes back into the insert of Strip 3 Cello, goes to Subgroup 1–2, goes to the main bus, and reaches Capture at −3\.[78] dBu\.$/,
  );
});

test('a way on which nothing happens is told by its output and its bus', () => {
  expect(stories('tenor', 'out.capture', {})).toEqual([
    'Tenor leaves Output 1, goes to the main bus, and reaches Capture at +2.0 dBu.',
  ]);
});
