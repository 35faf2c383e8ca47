import { expect, test } from 'vitest';
import { controls, jacks, paths, stopOf } from '../../simulator/index.ts';
import { pathLine, pathRows, pathStory, placeName, stopText } from '../../src/text/index.ts';
import { boxRoom } from '../simulator/circuit/box-room.ts';

const { setup, solution } = boxRoom({
  tracks: [
    {
      id: 'viola',
      label: 'Viola',
      levelDbfs: -17,
      plugins: [
        { id: 'comp', label: 'Compressor', kind: 'compressor' },
        { id: 'boost', label: 'Boost', kind: 'gain', latencyMs: 1.5 },
      ],
    },
  ],
  buses: [
    {
      id: 'room',
      label: 'Room',
      tap: 'switchable',
      plugins: [{ id: 'hall', label: 'Hall', kind: 'reverb' }],
    },
  ],
  captures: [{ id: 'mix', label: 'Mix', stereo: true }],
  compensates: true,
  board: {
    'box.viola.comp.threshold': -4,
    'box.viola.room': -6,
    'box.room.to': 'out5-6',
    'desk.s6.main': false,
    'out.tape': 'none',
    'converter.in1': 'desk.main.out.l',
    'box.mix.in': 'in1-2',
  },
});
const { rig } = setup;

test.each([
  ['box.viola.comp.threshold', 'the compressor threshold of the Viola track'],
  ['box.viola.comp.in', 'the compressor input of the Viola track'],
  ['box.viola.comp.on', 'the switch of the compressor of the Viola track'],
  ['box.room.hall.level', 'the hall level of the box bus Room'],
  ['box.viola.room', 'the send of the Viola track to Room'],
  ['box.viola.room.tap', 'the tap of the send of the Viola track to Room'],
  ['box.mix.in', 'the input of the capture track Mix'],
  ['box.mix.to', 'the assignment of the capture track Mix'],
  ['converter.in1', 'Converter input 1'],
])('placeName() of %s', (place, name) => {
  expect(placeName(rig, place)).toBe(name);
});

test('placeName() gives every control, jack and place of a whole box a name of its own', () => {
  const { outputs, inputs } = jacks(rig);
  const addresses = new Set([
    ...controls(rig).keys(),
    ...outputs,
    ...inputs,
    ...solution.circuit.stagesAt.keys(),
  ]);
  const names = [...addresses].map((address) => placeName(rig, address));
  expect(new Set(names).size).toBe(names.length);
  expect(names.filter((name) => /undefined|\w\.\w/.test(name))).toEqual([]);
});

test('pathLine() names the plug-ins and the send on the way, from the box to the capture track', () => {
  expect(paths(solution, 'viola', 'box.mix.in').map((path) => pathLine(rig, path))).toEqual([
    'Viola track, Compressor, Boost → Output 1 → Strip 1 Strip 1 → Main bus → Converter input 1 → Mix (capture track)',
    'Viola track, Compressor, Boost, send to Room → Room (box bus), Hall → Output 5 → Strip 5 Strip 5 → Main bus → Converter input 1 → Mix (capture track)',
  ]);
});

test('pathStory() tells what each plug-in does, and how late it is: (4 + 4) · 3/4 = 6 dB less', () => {
  const inViola =
    'Viola passes the compressor of the Viola track, is turned down 6.0 dB by its compression, passes the boost of the Viola track, 1.5 ms later';
  const toMix = 'goes to the main bus, comes in at Converter input 1, and reaches';
  // Strip 6 is off the main bus, so of the send the left side alone goes on: 3 dB less.
  expect(paths(solution, 'viola', 'box.mix.in').map((path) => pathStory(setup, path))).toEqual([
    `${inViola}, leaves Output 1, is panned full left, ${toMix} the input of the capture track Mix at −2.0 dBu.`,
    `${inViola}, goes after the fader of the Viola track to Room, turned down 9.0 dB, passes the hall of the box bus Room, is turned into reverberation, leaves Output 5, is panned full left, ${toMix} the input of the capture track Mix at −11.0 dBu.`,
  ]);
});

test('pathRows() have a row for what a plug-in takes away', () => {
  const [dry] = paths(solution, 'viola', 'converter.out1');
  const rows = dry ? pathRows(setup, dry) : [];
  expect(rows.map(({ name, did }) => [name, did])).toEqual([
    ['Viola track recording', 'starts'],
    ['Viola track Compressor gain reduction', '−6.0 dB'],
    ['Viola track Boost gain', '0.0 dB'],
    ['Viola track fader', '0.0 dB'],
    ['Output 1', 'arrives'],
  ]);
});

test('stopText() says what a capture track lacks', () => {
  const idle = boxRoom({
    captures: [{ id: 'mix', label: 'Mix' }],
    board: { 'converter.in1': 'desk.ears.out' },
  });
  expect(stopText(idle.setup.rig, stopOf(idle.solution, 'viola', 'box.mix.in'))).toMatch(
    /the capture track Mix stands at no input of the converter$/,
  );
  const unplugged = boxRoom({
    captures: [{ id: 'mix', label: 'Mix' }],
    board: { 'box.mix.in': 'in4' },
  });
  expect(stopText(unplugged.setup.rig, stopOf(unplugged.solution, 'viola', 'box.mix.in'))).toMatch(
    /nothing is plugged into Converter input 4$/,
  );
});
