import type { Claim, ClaimOf, Heard, Judgement, Level, Probe, Rig } from '../../simulator/index.ts';
import { amountText } from './amounts.ts';
import { FINDING_NAMES } from './finding-names.ts';
import { headroomFigure } from './noise.ts';
import { sourceName } from './owners.ts';
import { atGoal, goalName, placeName } from './places.ts';
import { levelText, NO_LEVEL } from './quantities.ts';
import { counted, listed, sentence } from './sentence.ts';
import { signed, unsigned } from './signed.ts';

/** The ends of the levels that a claim can name: a band that goes so far is open on that side. */
const LOWEST = -120;
const HIGHEST = 60;
/** The tolerance that goes without saying. */
const USUAL_TOLERANCE = 0.1;

type ClaimSayings = { [Kind in Claim['kind']]: (claim: ClaimOf<Kind>, rig: Rig) => string };

const claims = {
  reaches: ({ source, output, minDbu, maxDbu }, rig) =>
    `${sourceName(rig, source)} reaches ${goalName(rig, output)} ${bandText(minDbu, maxDbu)}`,
  absent: ({ source, output }, rig) =>
    `nothing of ${sourceName(rig, source)} reaches ${goalName(rig, output)}`,
  once: ({ source, output }, rig) =>
    `${sourceName(rig, source)} reaches ${goalName(rig, output)} by exactly one way, reverberation not counted`,
  steady: ({ source, output, probe, toleranceDb }, rig) =>
    `when you ${probeText(rig, probe)}, ${sourceName(rig, source)} ${atGoal(rig, output)} does not move${
      toleranceDb > USUAL_TOLERANCE ? ` by more than ${amountText(toleranceDb)}` : ''
    }`,
  follows: ({ source, output, probe, toleranceDb }, rig) =>
    `when you ${probeText(rig, probe)}, ${sourceName(rig, source)} ${atGoal(rig, output)} moves with it, dB for dB${
      toleranceDb > USUAL_TOLERANCE ? `, within ${amountText(toleranceDb)}` : ''
    }`,
  passes: ({ source, output, through }, rig) =>
    `every way of ${sourceName(rig, source)} to ${goalName(rig, output)} passes ${stopsText(rig, through)}`,
  avoids: ({ source, output, past }, rig) =>
    `no way of ${sourceName(rig, source)} to ${goalName(rig, output)} passes ${placeName(rig, past)}`,
  'dry-and-through': ({ source, output, through }, rig) =>
    `${sourceName(rig, source)} reaches ${goalName(rig, output)} both through ${placeName(rig, through)} and past it`,
  'no-loop': () => 'no loop is closed: nothing feeds itself',
  headroom: ({ at, minDb }, rig) =>
    `${at === undefined ? 'every stage' : goalName(rig, at)} has at least ${amountText(minDb)} of headroom`,
  'above-noise': ({ source, output, minDb }, rig) =>
    `${sourceName(rig, source)} stands at least ${amountText(minDb)} above the noise ${atGoal(rig, output)}`,
  'no-finding': ({ code }) =>
    code === undefined
      ? 'an engineer would point at no fault in the whole setup'
      : `in the whole setup there is no ${FINDING_NAMES[code]}`,
} satisfies ClaimSayings;

/** What a claim asks, as a sentence to the learner. */
export function claimSentence(rig: Rig, claim: Claim): string {
  const say = claims[claim.kind] as (claim: Claim, rig: Rig) => string;
  return sentence(say(claim, rig));
}

function bandText(minDbu: number, maxDbu: number): string {
  if (maxDbu >= HIGHEST) return `at ${levelText(minDbu)} or more`;
  if (minDbu <= LOWEST) return `at ${levelText(maxDbu)} or less`;
  if (minDbu === maxDbu) return `at ${levelText(minDbu)}`;
  return `between ${signed(minDbu)} and ${signed(maxDbu)} dBu`;
}

/** What a probe does: `pull the fader of the strip that carries Cello down by 10 dB`. */
export function probeText(rig: Rig, probe: Probe): string {
  const isFader = 'move' in probe ? probe.move === 'fader' : probe.control.endsWith('.fader');
  const isDown = probe.byDb < 0;
  const verb = isFader ? (isDown ? 'pull' : 'push') : 'turn';
  const control =
    'move' in probe
      ? `the ${probe.move} of the strip that carries ${sourceName(rig, probe.of)}`
      : placeName(rig, probe.control);
  return `${verb} ${control} ${isDown ? 'down' : 'up'} by ${amountText(probe.byDb)}`;
}

function stopsText(rig: Rig, stops: readonly string[]): string {
  const [first = '', ...rest] = stops.map((stop) => placeName(rig, stop));
  return [first, ...rest.map((stop) => `then ${stop}`)].join(', ');
}

type HeardOf<Kind extends Heard['kind']> = Extract<Heard, { kind: Kind }>;
type HeardSayings = {
  [Kind in Heard['kind']]: (heard: HeardOf<Kind>, claim: Claim, rig: Rig) => string;
};

const heards = {
  level: ({ level }) => (level === -Infinity ? 'heard: silence' : `heard: ${levelText(level)}`),
  arrivals: ({ counts }, _claim, rig) =>
    `heard: ${listed(
      counts.map(
        ({ signal, count }) =>
          `${sourceName(rig, signal)} ${count === 0 ? 'by no way' : `by ${counted(count, 'way')}`}`,
      ),
    )}`,
  move: ({ before, after, probeDb }) =>
    `heard: ${moveText(before, after)}; the control was moved by ${signed(probeDb)} dB`,
  ways: ({ all, through }, claim, rig) => {
    if (all === 0) return 'found: no way at all';
    const common = throughText(claim, rig);
    if (all === 1) return `found: 1 way, ${through === 1 ? '' : 'not '}${common}`;
    const some = new Map([
      [0, 'none'],
      [all, 'all'],
    ]);
    return `found: ${counted(all, 'way')}, ${some.get(through) ?? through} of them ${common}`;
  },
  loops: ({ count }) => (count === 0 ? 'found: no loop' : `found: ${counted(count, 'loop')}`),
  headroom: ({ least }, _claim, rig) => {
    if (!least) return 'found: no level at any stage';
    const { stage, headroom } = least;
    if (headroom === Infinity) return `found: silence at ${placeName(rig, stage)}`;
    return headroom < 0
      ? `found: ${placeName(rig, stage)} clips, by ${headroomFigure(-headroom)} dB`
      : `found: ${headroomFigure(headroom)} dB at ${placeName(rig, stage)}`;
  },
  'above-noise': ({ level, noise }) => {
    if (level === undefined || noise === undefined) return `heard: ${NO_LEVEL}`;
    if (level === -Infinity) return `heard: silence, and noise at ${levelText(noise)}`;
    if (noise === -Infinity) return `heard: ${levelText(level)}, and no noise`;
    return `heard: ${levelText(level)} and noise at ${levelText(noise)}, ${unsigned(level - noise)} dB apart`;
  },
  findings: ({ found }) =>
    found.length === 0 ? 'found: none' : `found: ${counted(found.length, 'finding')}`,
  'no-probe': () => 'heard: nothing, for there was nothing to move',
} satisfies HeardSayings;

/** What was heard for a claim: `Heard: +4.0 dBu.` */
export function heardSentence(rig: Rig, { claim, heard }: Judgement): string {
  const say = heards[heard.kind] as (heard: Heard, claim: Claim, rig: Rig) => string;
  return sentence(say(heard, claim, rig));
}

/** What a claim that holds comes to, with the figures that were heard: `Cello reaches Capture at +3.0 dBu.` */
export function shownSentence(rig: Rig, judgement: Judgement): string {
  const { claim, heard } = judgement;
  if (claim.kind === 'reaches' && heard.kind === 'level') {
    const { source, output } = claim;
    return sentence(
      `${sourceName(rig, source)} reaches ${goalName(rig, output)} at ${levelText(heard.level)}`,
    );
  }
  if (heard.kind !== 'move') return claimSentence(rig, claim);
  return `${claimSentence(rig, claim)} ${heardSentence(rig, judgement)}`;
}

function moveText(before: Level, after: Level): string {
  if (before === undefined || after === undefined) return NO_LEVEL;
  if (before === -Infinity && after === -Infinity) return 'silence before and after';
  if (before === -Infinity || after === -Infinity) {
    return `from ${levelText(before)} to ${levelText(after)}`;
  }
  if (signed(before) === signed(after)) return `${levelText(before)} before and after`;
  return `${signed(after - before)} dB, from ${signed(before)} to ${levelText(after)}`;
}

/** What the counted ways have in common, by the claim that counted them. */
function throughText(claim: Claim, rig: Rig): string {
  if (claim.kind === 'passes') return 'as asked';
  if (claim.kind === 'avoids') return `through ${placeName(rig, claim.past)}`;
  return claim.kind === 'dry-and-through'
    ? `through ${placeName(rig, claim.through)}`
    : 'through it';
}
