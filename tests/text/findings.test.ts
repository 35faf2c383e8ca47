import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import {
  type Board,
  FINDING_CODES,
  type FindingCode,
  findings,
  parseRig,
  simulate,
} from '../../simulator/index.ts';
import { findingSentence, mendingSentence } from '../../src/text/index.ts';
import { type BoxRoom, boxRoom } from '../simulator/circuit/box-room.ts';

/** The net-loft session with a delay in its rack. */
const rig = parseRig(
  'net-loft.yaml',
  readFileSync(new URL('../../lessons/rigs/net-loft.yaml', import.meta.url), 'utf8').replace(
    '  - { id: line,',
    '  - { id: wait, label: Delay, kind: delay }\n  - { id: line,',
  ),
);

/** What is found of a kind and how to mend it, in words. */
function told(code: FindingCode, board: Board): [string, string][] {
  const setup = { rig, board };
  return findings(setup, simulate(setup))
    .filter((one) => one.code === code)
    .map((one) => [findingSentence(rig, one), mendingSentence(rig, one)]);
}

const PARALLEL = {
  'desk.ch3.aux1': -4,
  'rack.line.in': 'desk.aux1.out',
  'desk.ch1.in': 'rack.line.out',
};
const LATE = {
  'desk.ch3.aux1': 0,
  'rack.wait.in': 'desk.aux1.out',
  'rack.wait.time': '5',
  'desk.ch1.in': 'rack.wait.out',
};
const NO_PLATE = {
  'rack.plate.in': 'none',
  'desk.ret1.in.l': 'none',
  'desk.ret1.in.r': 'none',
};

const CASES: [FindingCode, Board, string, string][] = [
  [
    'arrives-twice',
    { 'desk.ch3.sub1': true },
    'Cello arrives twice in Capture, 6.0 dB louder than by the louder way alone: the ways part after the pan of Strip 3 Cello, to the assign of Strip 3 Cello to the main bus and to the assign of Strip 3 Cello to Subgroup 1–2, and meet at the sum of the main bus.',
    'Close one of the two, at the assign of Strip 3 Cello to the main bus or at the assign of Strip 3 Cello to Subgroup 1–2.',
  ],
  [
    'arrives-twice',
    { ...PARALLEL },
    'Cello arrives twice in Capture, 4.2 dB louder than by the louder way alone: the ways part after the mute of Strip 3 Cello, to the pan of Strip 3 Cello and to the send of Strip 3 Cello to Aux 1, and meet at the sum of the main bus.',
    'If that is not meant: close one of the two, at the assign of Strip 3 Cello to the main bus or at the send of Strip 3 Cello to Aux 1.',
  ],
  [
    'inverted-path',
    { ...PARALLEL, 'desk.ch1.polarity': true },
    'Cello arrives in Capture by an upright way and an inverted one, 8.7 dB softer than by the louder way alone: the ways part after the mute of Strip 3 Cello, to the pan of Strip 3 Cello and to the send of Strip 3 Cello to Aux 1, and meet at the sum of the main bus.',
    'Turn the polarity of one of them round, or close one at the assign of Strip 3 Cello to the main bus or at the send of Strip 3 Cello to Aux 1.',
  ],
  [
    'inverted-path',
    { ...PARALLEL, 'desk.ch3.aux1': 0, 'desk.ch1.polarity': true },
    'Cello arrives in Capture by an upright way and an inverted one, and the ways cancel to silence: the ways part after the mute of Strip 3 Cello, to the pan of Strip 3 Cello and to the send of Strip 3 Cello to Aux 1, and meet at the sum of the main bus.',
    'Turn the polarity of one of them round, or close one at the assign of Strip 3 Cello to the main bus or at the send of Strip 3 Cello to Aux 1.',
  ],
  [
    'late-path',
    LATE,
    'Two ways of Cello arrive in Capture 5 ms apart and make a comb, with its first notch at 100 Hz: the ways part after the mute of Strip 3 Cello, to the pan of Strip 3 Cello and to the send of Strip 3 Cello to Aux 1, and meet at the sum of the main bus.',
    'If that is not meant: close one of them at the assign of Strip 3 Cello to the main bus or at the send of Strip 3 Cello to Aux 1, or, if an echo is meant, set it later than 30 ms.',
  ],
  [
    'stray-feed',
    { 'box.main.to': 'out1-2', 'box.cello.main': true },
    'The main mix of the box goes out by Output 1 and Output 2, where the Tenor track and the Alto track go too, and it carries the Cello track besides.',
    'Switch off the main feed of the Cello track, or give the main mix outputs of its own.',
  ],
  [
    'line-unpatched',
    { 'desk.ch5.in': 'none' },
    'The Frame drum track is assigned to Output 5, and nothing is plugged into it.',
    'Plug Output 5 into a strip, or assign the Frame drum track elsewhere.',
  ],
  [
    'output-unfed',
    { 'out.headphones-b': 'none' },
    'Nothing is plugged into Headphones B.',
    'If that is not meant: plug what is to be heard there into Headphones B.',
  ],
  [
    'goes-nowhere',
    { 'desk.ch3.mute': true },
    'Cello reaches no output: the mute of Strip 3 Cello is on.',
    'If that is not meant: open the way at the mute of Strip 3 Cello.',
  ],
  [
    'goes-nowhere',
    { 'box.cello.to': 'none' },
    'Cello reaches no output: the Cello track is assigned nowhere; nothing is assigned to Output 3.',
    'Assign Cello to an output of the converter, and plug that into a strip.',
  ],
  [
    'leg-missing',
    { 'out.capture.r': 'none' },
    'At Capture only the left side is plugged.',
    'Plug the right side too.',
  ],
  [
    'leg-missing',
    { 'desk.ch7.mute': true },
    'Of Piano only the left side arrives in Capture: the mute of Strip 7 Piano R is on.',
    'Open the way at the mute of Strip 7 Piano R.',
  ],
  [
    'legs-swapped',
    { 'out.capture.l': 'desk.main.out.r', 'out.capture.r': 'desk.main.out.l' },
    'At Capture the two cords are crossed: left is plugged from right, and right from left.',
    'Exchange the two cords.',
  ],
  [
    'legs-swapped',
    { 'desk.ch6.pan': 1, 'desk.ch7.pan': -1 },
    'Piano stands the wrong way round in Capture: its left side is on the right.',
    'Pan each side to where it belongs.',
  ],
  [
    'legs-unpanned',
    { 'desk.ch6.pan': 0, 'desk.ch7.pan': 0 },
    'Both sides of Piano in Capture stand in the middle.',
    'If that is not meant: pan its left side to the left and its right side to the right.',
  ],
  [
    'send-nowhere',
    { 'desk.ch3.aux3': -2, 'rack.plate.in': 'none' },
    'The send of Strip 3 Cello to Aux 3 is open, but what comes into Aux 3 reaches no output: the output of Aux 3 is plugged nowhere; nothing is plugged into the input of the plate.',
    'Lead the output of Aux 3 on, or close the send of Strip 3 Cello to Aux 3.',
  ],
  [
    'send-nowhere',
    { 'desk.ch3.aux3': -2, 'desk.ch4.aux3': -2, 'desk.ret1.mute': true },
    'The send of Strip 3 Cello to Aux 3 and the send of Strip 4 Dulcimer to Aux 3 are open, but what comes into Aux 3 reaches no output: the mute of Strip R1 Plate return is on.',
    'If that is not meant: open the way at the mute of Strip R1 Plate return.',
  ],
  [
    'return-feeds-send',
    { 'desk.ch3.aux3': 0, 'desk.ret1.aux3': -6 },
    'What comes back from the plate is sent to it again: Strip R1 Plate return → Aux 3 → the plate feed one another in a loop, −6.0 dB once round: what circulates dies away.',
    'If that is not meant: close the send of Strip R1 Plate return to Aux 3.',
  ],
  [
    'return-feeds-send',
    { 'desk.ch3.aux3': 0, 'desk.ret1.aux3': 3 },
    'What comes back from the plate is sent to it again: Strip R1 Plate return → Aux 3 → the plate feed one another in a loop, +3.0 dB once round: what circulates grows, and there is no level to give.',
    'Close the send of Strip R1 Plate return to Aux 3.',
  ],
  [
    'loop',
    { ...NO_PLATE, 'desk.ch3.aux3': 0, 'desk.ch1.in': 'desk.aux3.out', 'desk.ch1.aux3': -5 },
    'Strip 1 Tenor → Aux 3 feed one another in a loop, −5.0 dB once round: what circulates dies away.',
    'If that is not meant: open the ring at the send of Strip 1 Tenor to Aux 3.',
  ],
  [
    'insert-not-returned',
    { 'rack.comp.in': 'desk.ch3.insert.send' },
    'The insert of Strip 3 Cello is sent to the input of the compressor and does not come back: the signal goes straight on, and what it is sent to is not heard.',
    'Plug the end of the chain into the insert return of Strip 3 Cello, or take the cord between Strip 3 Cello and the compressor out.',
  ],
  [
    'insert-not-sent',
    { 'desk.ch3.insert.return': 'rack.comp.out' },
    'The insert of Strip 3 Cello comes back from the output of the compressor, which it does not feed: the signal of Strip 3 Cello itself ends there.',
    'Plug the insert send of Strip 3 Cello into what leads to the compressor, or take the cord out of the insert return of Strip 3 Cello.',
  ],
  [
    'ghost',
    { 'desk.ch3.aux3': -3, 'desk.ch3.aux3.tap': 'pre' },
    'The send of Strip 3 Cello to Aux 3 is taken before the fader, and the plate is heard in Capture: the effect stays when the fader goes down.',
    'If that is not meant: take it after the fader.',
  ],
  [
    'post-fader-headphones',
    { 'desk.ch3.aux1': -3 },
    'The send of Strip 3 Cello to Aux 1 is taken after the fader, so that Headphones A hears every move of the mix.',
    'If that is not meant: take it before the fader.',
  ],
  [
    'stage-clips',
    { 'desk.ch3.trim': 12 },
    'The trim of Strip 3 Cello clips: peaks, mostly of Cello, come 3.0 dB above the +24.0 dBu that it passes.',
    'Turn Cello down, first at the trim of Strip 3 Cello.',
  ],
  [
    'over-full-scale',
    { 'box.bass.fader': 10 },
    'Bass comes to Output 8 with peaks 4.0 dB above full scale, which the converter cuts off.',
    'Turn Bass down, first at the fader of the Bass track.',
  ],
  [
    'stage-clips',
    { 'desk.ch3.fader': 10, 'desk.ch3.main': false, 'desk.ch3.aux1': 4, 'desk.ch3.aux3': 4 },
    'The fader of Strip 3 Cello clips: peaks, mostly of Cello, come 1.0 dB above the +24.0 dBu that it passes.',
    'Turn Cello down, first at the fader of Strip 3 Cello.',
  ],
  [
    'over-full-scale',
    {
      'box.tenor.fader': 7,
      'box.alto.fader': 8.2,
      'box.alto.to': 'out1',
      'box.drum.fader': 8,
      'box.drum.to': 'out1',
    },
    'Alto and Tenor come to Output 1 with peaks 3.3 dB above full scale, which the converter cuts off.',
    'Turn Alto and Tenor down, first at the fader of the Alto track.',
  ],
  [
    'low-level',
    { 'desk.ch3.aux3': -45 },
    'The input of the plate is fed at −42.0 dBu, below −36.0 dBu: what brings it up later brings up the noise with it.',
    'Turn it up before it comes there, at the send of Strip 3 Cello to Aux 3 first.',
  ],
  [
    'box-fader',
    { 'box.cello.fader': -3, 'box.alto.fader': -Infinity },
    'In the box the fader of the Alto track stands at the bottom and the fader of the Cello track stands at −3.0 dB: whoever sets the desk up again has to know it too.',
    'If that is not meant: set it to unity and make up for it on the desk, or write it down.',
  ],
];

test.each(CASES)('%s', (code, board, what, mend) => {
  expect(told(code, board)[0]).toEqual([what, mend]);
});

const WITH_CAPTURE: BoxRoom = {
  captures: [{ id: 'mix', label: 'Mix' }],
  board: {
    'converter.in1': 'desk.main.out.r',
    'desk.s1.pan': 0,
    'box.mix.in': 'in1',
    'box.mix.to': 'out5',
    'desk.s5.pan': 1,
    'desk.s5.fader': -6,
  },
};
const roomBus = (tap: string, board: BoxRoom['board']): BoxRoom => ({
  buses: [
    { id: 'room', label: 'Room', tap, plugins: [{ id: 'hall', label: 'Hall', kind: 'reverb' }] },
  ],
  board: { 'box.viola.room': -7, ...board },
});

const IN_BOX: [FindingCode, BoxRoom, string, string][] = [
  [
    'capture-plays-back',
    WITH_CAPTURE,
    'The capture track Mix records at Converter input 1 what it plays back itself by Output 5: the capture track Mix → Output 5 → Strip 5 Strip 5 → the main bus → Converter input 1 feed one another in a loop, −6.0 dB once round: what circulates dies away.',
    'Have the capture track Mix play back to an output that is not led to Converter input 1, or close the way from Output 5 on the desk while it records.',
  ],
  [
    'send-nowhere',
    roomBus('post', { 'out.tape': 'converter.out1', 'desk.s1.in': 'none' }),
    'The send of the Viola track to Room is open, but what comes into the box bus Room reaches no output: the box bus Room is assigned nowhere.',
    'Assign the box bus Room to an output of the converter, or close the send of the Viola track to Room.',
  ],
  [
    'ghost',
    roomBus('pre', { 'box.room.to': 'out5-6' }),
    'The send of the Viola track to Room is taken before the fader, and the hall of the box bus Room is heard in Tape: the effect stays when the fader goes down.',
    'If that is not meant: use a bus whose sends are taken after the fader, since those to the box bus Room are fixed.',
  ],
];

test.each(IN_BOX)('%s in the box', (code, room, what, mend) => {
  const { setup } = boxRoom(room);
  const [one] = findings(setup, simulate(setup)).filter((found) => found.code === code);
  expect(one && [findingSentence(setup.rig, one), mendingSentence(setup.rig, one)]).toEqual([
    what,
    mend,
  ]);
});

test('every kind has its words', () => {
  expect(new Set([...CASES, ...IN_BOX].map(([code]) => code))).toEqual(new Set(FINDING_CODES));
});
