import { expect, test } from 'vitest';
import { type Board, type Claim, FINDING_CODES, judge } from '../../simulator/index.ts';
import { claimSentence, heardSentence, levelText, reasonSentence } from '../../src/text/index.ts';
import { hear, netLoft } from './net-loft.ts';

const cello = { source: 'cello', output: 'capture' } as const;
const inHeadphones = {
  source: 'cello',
  output: 'headphones-a',
  probe: { move: 'fader', of: 'cello', byDb: -10 },
  toleranceDb: 0.1,
} as const;
const compressed = {
  'rack.comp.in': 'desk.ch3.insert.send',
  'desk.ch3.insert.return': 'rack.comp.out',
};
const straight = 'Cello track → Output 3 → Strip 3 Cello → Main bus → Capture.';

/** Whether a claim is asked, heard and explained in these words; the explanation by its first reason. */
function expectWords(claim: Claim, board: Board, words: readonly [string, string, string?]) {
  const judgement = judge(claim, hear(board));
  const [reason] = judgement.reasons;
  expect([
    claimSentence(netLoft, claim),
    heardSentence(netLoft, judgement),
    ...(reason ? [reasonSentence(netLoft, reason)] : []),
  ]).toEqual(words);
}

test('a level is asked as a band, and explained by the way it comes', () => {
  expectWords({ kind: 'reaches', ...cello, minDbu: -2, maxDbu: 2 }, {}, [
    'Cello reaches Capture between −2.0 and +2.0 dBu.',
    'Heard: +3.0 dBu.',
    `Cello arrives at +3.0 dBu by ${straight}`,
  ]);
});

test('a band without an end is asked as “or more” and “or less”', () => {
  const ask = (minDbu: number, maxDbu: number) =>
    claimSentence(netLoft, { kind: 'reaches', ...cello, minDbu, maxDbu });
  expect(ask(-2, 60)).toBe('Cello reaches Capture at −2.0 dBu or more.');
  expect(ask(-120, 4)).toBe('Cello reaches Capture at +4.0 dBu or less.');
});

test('a level that is too low names the place that lowers it most', () => {
  const board = { 'desk.ch3.fader': -12 };
  expectWords({ kind: 'reaches', ...cello, minDbu: -2, maxDbu: 5 }, board, [
    'Cello reaches Capture between −2.0 and +5.0 dBu.',
    'Heard: −9.0 dBu.',
    'What lowers it most on the way is the fader of Strip 3 Cello: −12.0 dB.',
  ]);
});

test.each<[string, Board, string]>([
  ['a fader', { 'desk.ch3.fader': -Infinity }, 'the fader of Strip 3 Cello is closed'],
  ['a mute', { 'desk.ch3.mute': true }, 'the mute of Strip 3 Cello is on'],
  ['an assign', { 'desk.ch3.main': false }, 'Strip 3 Cello is not assigned to the main bus'],
  [
    'a missing cord',
    { 'desk.ch3.in': 'none' },
    'Output 3 is plugged nowhere; nothing is plugged into the line input of Strip 3 Cello',
  ],
  [
    'a track assigned nowhere',
    { 'box.cello.to': 'none' },
    'the Cello track is assigned nowhere; nothing is assigned to Output 3',
  ],
  [
    'an output patched nowhere while the strip is muted',
    { 'desk.ch3.mute': true, 'out.capture.l': 'none', 'out.capture.r': 'none' },
    'it gets no further than the fader of Strip 3 Cello; nothing is plugged into Capture',
  ],
  [
    'an insert without its send',
    { 'desk.ch3.insert.return': 'rack.comp.out' },
    'the insert send of Strip 3 Cello is plugged nowhere; nothing is plugged into the input of the compressor',
  ],
])('silence is explained by %s', (_what, board, why) => {
  expectWords({ kind: 'absent', ...cello }, board, [
    'Nothing of Cello reaches Capture.',
    'Heard: silence.',
    `Cello does not reach Capture: ${why}.`,
  ]);
});

test('arriving twice names where the ways part and meet', () => {
  expectWords({ kind: 'once', source: 'piano', output: 'capture' }, { 'desk.ch6.sub1': true }, [
    'Piano reaches Capture by exactly one way, reverberation not counted.',
    'Heard: Piano left by 2 ways and Piano right by 1 way.',
    'Two ways of Piano left part after the pan of Strip 6 Piano L, one by the assign of Strip 6 Piano L to the main bus and one by the assign of Strip 6 Piano L to Subgroup 1–2, and meet again at the sum of the main bus.',
  ]);
});

test('a probe that is heard names where the send is taken', () => {
  expectWords({ kind: 'steady', ...inHeadphones }, { 'desk.ch3.aux1': -6 }, [
    'When you pull the fader of the strip that carries Cello down by 10 dB, Cello in Headphones A does not move.',
    'Heard: −10.0 dB, from −3.0 to −13.0 dBu; the control was moved by −10.0 dB.',
    'The way to Headphones A passes the fader of Strip 3 Cello: the send to Aux 1 is taken after it.',
  ]);
});

test('a probe that is not heard names where the send is taken', () => {
  const board = { 'desk.ch3.aux1': -6, 'desk.ch3.aux1.tap': 'pre' };
  expectWords({ kind: 'follows', ...inHeadphones, toleranceDb: 0.5 }, board, [
    'When you pull the fader of the strip that carries Cello down by 10 dB, Cello in Headphones A moves with it, dB for dB, within 0.5 dB.',
    'Heard: −3.0 dBu before and after; the control was moved by −10.0 dB.',
    'The way to Headphones A does not pass the fader of Strip 3 Cello: the send to Aux 1 is taken before it.',
  ]);
});

test('a probe that cannot be carried out says so', () => {
  expectWords({ kind: 'follows', ...inHeadphones }, { 'desk.ch3.fader': -Infinity }, [
    'When you pull the fader of the strip that carries Cello down by 10 dB, Cello in Headphones A moves with it, dB for dB.',
    'Heard: nothing, for there was nothing to move.',
    'There is no control to move: Cello comes in on no strip, or its fader is closed.',
  ]);
});

test('an order is asked stop by stop, and what is out of order is named', () => {
  const through = ['desk.main', 'rack.comp'];
  expectWords({ kind: 'passes', ...cello, through }, compressed, [
    'Every way of Cello to Capture passes the main bus, then the compressor.',
    'Found: 1 way, not as asked.',
    'This way passes the compressor before the main bus, not after it: Cello track → Output 3 → Strip 3 Cello → Compressor → Strip 3 Cello → Main bus → Capture.',
  ]);
});

test('a way past a device, and a way through what it should avoid', () => {
  expectWords({ kind: 'passes', ...cello, through: ['rack.comp'] }, {}, [
    'Every way of Cello to Capture passes the compressor.',
    'Found: 1 way, not as asked.',
    `This way does not pass the compressor: ${straight}`,
  ]);
  expectWords({ kind: 'avoids', ...cello, past: 'desk.main' }, {}, [
    'No way of Cello to Capture passes the main bus.',
    'Found: 1 way, through the main bus.',
    `This way passes the main bus: ${straight}`,
  ]);
});

test('dry and through: what stops behind the device is named, though the source arrives', () => {
  const claim = { kind: 'dry-and-through', ...cello, through: 'rack.plate' } as const;
  const judgement = judge(claim, hear({ 'desk.ch3.aux3': 0, 'desk.ret1.mute': true }));
  expect(heardSentence(netLoft, judgement)).toBe('Found: 1 way, not through the plate.');
  expect(judgement.reasons.map((reason) => reasonSentence(netLoft, reason))).toContain(
    'What leaves the plate does not reach Capture: the mute of Strip R1 Plate return is on.',
  );
});

test('a loop is named by its owners, with its gain and whether it settles', () => {
  const unstable = { 'desk.ret1.aux3': 0, 'desk.ch3.aux3': 0 };
  expectWords({ kind: 'no-loop' }, unstable, [
    'No loop is closed: nothing feeds itself.',
    'Found: 1 loop.',
    'Strip R1 Plate return → Aux 3 → the plate feed one another in a loop, 0.0 dB once round: what circulates grows, and there is no level to give.',
  ]);
});

test('headroom is asked at a place or everywhere, and explained by whose peaks come near the clip level', () => {
  const hot = { 'desk.ch3.trim': 20, 'desk.ch3.fader': -20 };
  expectWords({ kind: 'headroom', minDb: 3 }, hot, [
    'Every stage has at least 3 dB of headroom.',
    'Found: the trim of Strip 3 Cello clips, by 11.0 dB.',
    'Peaks, mostly of Cello, come to +35.0 dBu at the trim of Strip 3 Cello, which passes +24.0 dBu.',
  ]);
  expectWords({ kind: 'headroom', at: 'desk.ch3.fader', minDb: 6 }, {}, [
    'The fader of Strip 3 Cello has at least 6 dB of headroom.',
    'Found: 9.0 dB at the fader of Strip 3 Cello.',
    'Peaks, mostly of Cello, come to +15.0 dBu at the fader of Strip 3 Cello, which passes +24.0 dBu.',
  ]);
  const away = { 'desk.ch3.in': 'none' };
  expectWords({ kind: 'headroom', at: 'desk.ch3.fader', minDb: 6 }, away, [
    'The fader of Strip 3 Cello has at least 6 dB of headroom.',
    'Found: silence at the fader of Strip 3 Cello.',
  ]);
});

test('the distance to the noise is asked, measured, and explained by where the noise comes from', () => {
  const claim: Claim = { kind: 'above-noise', ...cello, minDb: 60 };
  const judgement = judge(claim, hear({}));
  expect(claimSentence(netLoft, claim)).toBe(
    'Cello stands at least 60 dB above the noise in Capture.',
  );
  const { heard } = judgement;
  if (heard.kind !== 'above-noise') throw new Error(`Expected a distance, but got ${heard.kind}.`);
  expect(heardSentence(netLoft, judgement)).toBe(
    `Heard: +3.0 dBu and noise at ${levelText(heard.noise)}, ${(Number(heard.level) - Number(heard.noise)).toFixed(1)} dB apart.`,
  );
  const [reason] = judgement.reasons;
  expect(reason && reasonSentence(netLoft, reason)).toMatch(
    /^\d+ % of the noise in Capture comes from the output of the plate\.$/,
  );
});

test('findings are asked by their kind, counted, and each told', () => {
  const board = { 'desk.ch3.sub1': true };
  expectWords({ kind: 'no-finding', code: 'arrives-twice' }, board, [
    'In the whole setup there is no source that arrives twice.',
    'Found: 1 finding.',
    'Cello arrives twice in Capture, 6.0 dB louder than by the louder way alone: the ways part after the pan of Strip 3 Cello, to the assign of Strip 3 Cello to the main bus and to the assign of Strip 3 Cello to Subgroup 1–2, and meet at the sum of the main bus.',
  ]);
  expectWords({ kind: 'no-finding', code: 'ghost' }, board, [
    'In the whole setup there is no effect that stays when the fader goes down.',
    'Found: none.',
  ]);
  expect(claimSentence(netLoft, { kind: 'no-finding' })).toBe(
    'An engineer would point at no fault in the whole setup.',
  );
});

test('every kind of finding has a name of its own', () => {
  const asked = FINDING_CODES.map((code) => claimSentence(netLoft, { kind: 'no-finding', code }));
  expect(new Set(asked).size).toBe(FINDING_CODES.length);
});
