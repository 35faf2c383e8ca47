import {
  type Address,
  ECHO_AFTER,
  type Finding,
  type FindingCode,
  type FindingOf,
  LOW_LEVEL,
  type Overshoot,
  type Owner,
  ownerOf,
  type PairPlace,
  type Rig,
  type Severity,
  type Stop,
} from '../../simulator/index.ts';
import { loopText } from './loops.ts';
import { ownerName, sourceName } from './owners.ts';
import { deviceName, placeName } from './places.ts';
import { levelText, NO_LEVEL } from './quantities.ts';
import { listedFirst, sentence } from './sentence.ts';
import { signed } from './signed.ts';
import { stopText } from './stops.ts';

/** The most things that a sentence names before it only counts them. */
const MOST_NAMED = 4;

/** What a kind of finding says: where it is and what it does, and how one mends it. */
interface Saying<Code extends FindingCode> {
  readonly what: (finding: FindingOf<Code>, rig: Rig) => string;
  readonly mend: (finding: FindingOf<Code>, rig: Rig) => string;
}
type Sayings = { readonly [Code in FindingCode]: Saying<Code> };

const sayings: Sayings = {
  'arrives-twice': {
    what: (finding, rig) =>
      `${sourceName(rig, finding.signal)} arrives twice in ${placeName(rig, finding.output)}, ${gainTogether(finding.gain)}: ${partingText(rig, finding)}`,
    mend: (finding, rig) => `close one of the two, at ${closersText(rig, finding)}`,
  },
  'inverted-path': {
    what: (finding, rig) =>
      `${sourceName(rig, finding.signal)} arrives in ${placeName(rig, finding.output)} by an upright way and an inverted one, ${gainTogether(finding.gain)}: ${partingText(rig, finding)}`,
    mend: (finding, rig) =>
      `turn the polarity of one of them round, or close one at ${closersText(rig, finding)}`,
  },
  'late-path': {
    what: (finding, rig) =>
      `two ways of ${sourceName(rig, finding.signal)} arrive in ${placeName(rig, finding.output)} ${timeText(finding.late)} apart and make a comb, with its first notch at ${frequencyText(finding.firstNull)}: ${partingText(rig, finding)}`,
    mend: (finding, rig) =>
      `close one of them at ${closersText(rig, finding)}, or, if an echo is meant, set it later than ${timeText(ECHO_AFTER)}`,
  },
  'stray-feed': {
    what: ({ feeds, lines, sharers }, rig) =>
      `the main mix of the box goes out by ${placesText(rig, lines)}, where ${ownersText(rig, sharers)} ${sharers.length === 1 ? 'goes' : 'go'} too, and it carries ${ownersText(rig, feeds.map(ownerOf))} besides`,
    mend: ({ feeds }, rig) =>
      `switch off ${placesText(rig, feeds)}, or give the main mix outputs of its own`,
  },
  'line-unpatched': {
    what: ({ line, owners }, rig) =>
      `${ownersText(rig, owners)} ${owners.length === 1 ? 'is' : 'are'} assigned to ${placeName(rig, line)}, and nothing is plugged into it`,
    mend: ({ line, owners }, rig) =>
      `plug ${placeName(rig, line)} into a strip, or assign ${ownersText(rig, owners)} elsewhere`,
  },
  'output-unfed': {
    what: ({ output }, rig) => `nothing is plugged into ${placeName(rig, output)}`,
    mend: ({ output }, rig) => `plug what is to be heard there into ${placeName(rig, output)}`,
  },
  'goes-nowhere': {
    what: ({ source, stop }, rig) =>
      `${sourceName(rig, source)} reaches no output: ${stopText(rig, stop)}`,
    mend: ({ source, stop }, rig) => {
      if (stop.code === 'closed') return openText(rig, stop);
      const isInBox = stop.ends.every((place) => place.startsWith('box.'));
      return isInBox
        ? `assign ${sourceName(rig, source)} to an output of the converter, and plug that into a strip`
        : 'lead it on from there, with a cord or an assignment';
    },
  },
  'leg-missing': {
    what: ({ pair, missing, stop }, rig) =>
      pair.kind === 'cords'
        ? `at ${placeName(rig, pair.place)} only the ${sideName(missing === 'l' ? 'r' : 'l')} side is plugged`
        : `of ${sourceName(rig, pair.source)} only the ${sideName(missing === 'l' ? 'r' : 'l')} side arrives in ${placeName(rig, pair.output)}${stop ? `: ${stopText(rig, stop)}` : ''}`,
    mend: ({ missing, stop }, rig) => {
      if (stop?.code === 'closed') return openText(rig, stop);
      return stop
        ? `lead the ${sideName(missing)} side on from there`
        : `plug the ${sideName(missing)} side too`;
    },
  },
  'legs-swapped': {
    what: ({ pair }, rig) =>
      pair.kind === 'cords'
        ? `at ${placeName(rig, pair.place)} the two cords are crossed: left is plugged from right, and right from left`
        : `${sourceName(rig, pair.source)} stands the wrong way round in ${placeName(rig, pair.output)}: its left side is on the right`,
    mend: ({ pair }) =>
      pair.kind === 'cords' ? 'exchange the two cords' : 'pan each side to where it belongs',
  },
  'legs-unpanned': {
    what: ({ pair }, rig) => `both sides of ${pairName(rig, pair)} stand in the middle`,
    mend: () => 'pan its left side to the left and its right side to the right',
  },
  'send-nowhere': {
    what: ({ sends, bus, stop }, rig) =>
      `${placesText(rig, sends)} ${sends.length === 1 ? 'is' : 'are'} open, but what comes into ${ownerName(rig, bus)} reaches no output: ${stopText(rig, stop)}`,
    mend: ({ sends, bus, stop }, rig) => {
      if (stop.code === 'closed') return openText(rig, stop);
      const lead = bus.startsWith('box.')
        ? `assign ${ownerName(rig, bus)} to an output of the converter`
        : `lead the output of ${ownerName(rig, bus)} on`;
      return `${lead}, or close ${placesText(rig, sends)}`;
    },
  },
  'return-feeds-send': {
    what: (finding, rig) =>
      `what comes back from ${ownerName(rig, finding.device)} is sent to it again: ${loopText(rig, finding)}`,
    mend: ({ send }, rig) => `close ${placeName(rig, send)}`,
  },
  'capture-plays-back': {
    what: (finding, rig) =>
      `${ownerName(rig, finding.capture)} records at ${placeName(rig, finding.records)} what it plays back itself by ${placeName(rig, finding.plays)}: ${loopText(rig, finding)}`,
    mend: ({ capture, records, plays }, rig) =>
      `have ${ownerName(rig, capture)} play back to an output that is not led to ${placeName(rig, records)}, or close the way from ${placeName(rig, plays)} on the desk while it records`,
  },
  loop: {
    what: (finding, rig) => loopText(rig, finding),
    mend: ({ mendAt }, rig) => `open the ring at ${placeName(rig, mendAt)}`,
  },
  'insert-not-returned': {
    what: ({ owner, goesTo, severity, passesOn }, rig) => {
      const sent = `the insert of ${ownerName(rig, owner)} is sent to ${placeName(rig, goesTo)} and does not come back`;
      if (!passesOn) return `${sent}: the signal does not go on from there`;
      return `${sent}: the signal goes straight on${severity === 'fault' ? ', and what it is sent to is not heard' : ', and is heard by another way too'}`;
    },
    mend: ({ mendAt, owner, goesTo }, rig) =>
      `plug the end of the chain into ${placeName(rig, mendAt)}, or take the cord between ${ownerName(rig, owner)} and ${ownerName(rig, ownerOf(goesTo))} out`,
  },
  'insert-not-sent': {
    what: ({ owner, comesFrom }, rig) =>
      `the insert of ${ownerName(rig, owner)} comes back from ${placeName(rig, comesFrom)}, which it does not feed: the signal of ${ownerName(rig, owner)} itself ends there`,
    mend: ({ mendAt, owner, comesFrom }, rig) =>
      `plug ${placeName(rig, mendAt)} into what leads to ${ownerName(rig, ownerOf(comesFrom))}, or take the cord out of the insert return of ${ownerName(rig, owner)}`,
  },
  ghost: {
    what: ({ sends, device, output }, rig) =>
      `${placesText(rig, sends)} ${sends.length === 1 ? 'is' : 'are'} taken before the fader, and ${deviceName(rig, device)} is heard in ${placeName(rig, output)}: the effect stays when the fader goes down`,
    mend: (finding, rig) => tapText(rig, finding, 'after'),
  },
  'post-fader-headphones': {
    what: ({ sends, output }, rig) =>
      `${placesText(rig, sends)} ${sends.length === 1 ? 'is' : 'are'} taken after the fader, so that ${placeName(rig, output)} hears every move of the mix`,
    mend: (finding, rig) => tapText(rig, finding, 'before'),
  },
  'over-full-scale': {
    what: ({ places, over, loudest }, rig) =>
      `${sourcesText(rig, loudest)} ${loudest.length === 1 ? 'comes' : 'come'} to ${placesText(rig, places)} with peaks ${overText(over)} above full scale, which the converter cuts off`,
    mend: overshootMending,
  },
  'stage-clips': {
    what: ({ places, over, clip, loudest }, rig) =>
      `${placesText(rig, places)} ${places.length === 1 ? 'clips' : 'clip'}: peaks, mostly of ${sourcesText(rig, loudest)}, come ${overText(over)} above the ${levelText(clip)} that ${places.length === 1 ? 'it passes' : 'they pass'}`,
    mend: overshootMending,
  },
  'low-level': {
    what: ({ place, level }, rig) =>
      `${placeName(rig, place)} is fed at ${levelText(level)}, below ${levelText(LOW_LEVEL)}: what brings it up later brings up the noise with it`,
    mend: ({ mendAt, place }, rig) =>
      mendAt === place
        ? 'feed it more'
        : `turn it up before it comes there, at ${placeName(rig, mendAt)} first`,
  },
  'box-fader': {
    what: ({ faders }, rig) =>
      `in the box ${listedFirst(
        faders.map(
          ({ address, gain }) => `${placeName(rig, address)} stands at ${fadedText(gain)}`,
        ),
        MOST_NAMED,
      )}: whoever sets the desk up again has to know it too`,
    mend: () => 'set it to unity and make up for it on the desk, or write it down',
  },
};

const sayingOf = (code: FindingCode) =>
  sayings[code] as {
    readonly what: (finding: Finding, rig: Rig) => string;
    readonly mend: (finding: Finding, rig: Rig) => string;
  };

/** What a finding is and where, to stand inside a sentence. */
export const findingText = (rig: Rig, finding: Finding): string =>
  sayingOf(finding.code).what(finding, rig);

/** What a finding is and where, in one sentence. */
export const findingSentence = (rig: Rig, finding: Finding): string =>
  sentence(findingText(rig, finding));

/** How one mends it, in one sentence; of a note, if it is not meant. */
export function mendingSentence(rig: Rig, finding: Finding): string {
  const mend = sayingOf(finding.code).mend(finding, rig);
  return sentence(finding.severity === 'note' ? `if that is not meant: ${mend}` : mend);
}

/** The word that stands beside a finding. */
export const severityWord = (severity: Severity): string =>
  ({ fault: 'Fault', note: 'Worth a look' })[severity];

const sideName = (leg: 'l' | 'r'): string => (leg === 'l' ? 'left' : 'right');

const placesText = (rig: Rig, places: readonly Address[]): string =>
  listedFirst([...new Set(places.map((place) => placeName(rig, place)))], MOST_NAMED);

const ownersText = (rig: Rig, owners: readonly Owner[]): string =>
  listedFirst([...new Set(owners.map((owner) => ownerName(rig, owner)))], MOST_NAMED);

const pairName = (rig: Rig, pair: PairPlace): string =>
  pair.kind === 'cords'
    ? placeName(rig, pair.place)
    : `${sourceName(rig, pair.source)} in ${placeName(rig, pair.output)}`;

type Parted = { at: Address; turns: readonly [Address, Address]; meets: Address };

const turnsText = (rig: Rig, { turns }: Parted): string =>
  turns.map((turn) => placeName(rig, turn)).join(' and to ');

const closersText = (rig: Rig, { closers }: { closers: readonly Address[] }): string =>
  closers.map((place) => placeName(rig, place)).join(' or at ');

const partingText = (rig: Rig, parted: Parted): string =>
  `the ways part after ${placeName(rig, parted.at)}, to ${turnsText(rig, parted)}, and meet at ${placeName(rig, parted.meets)}`;

function gainTogether(gain: number | undefined): string {
  if (gain === undefined) return `with ${NO_LEVEL}`;
  if (gain === -Infinity) return 'and the ways cancel to silence';
  if (signed(gain) === '0.0') return 'as loud as by the louder way alone';
  return `${Math.abs(gain).toFixed(1)} dB ${gain > 0 ? 'louder' : 'softer'} than by the louder way alone`;
}

const timeText = (seconds: number): string => `${Number((seconds * 1000).toPrecision(3))} ms`;
const frequencyText = (hertz: number): string =>
  hertz >= 1000
    ? `${Number((hertz / 1000).toPrecision(3))} kHz`
    : `${Number(hertz.toPrecision(3))} Hz`;
const fadedText = (gain: number): string =>
  gain === -Infinity ? 'the bottom' : `${signed(gain)} dB`;

const openText = (rig: Rig, stop: Extract<Stop, { code: 'closed' }>): string =>
  `open the way at ${placesText(rig, stop.places)}`;

/** Taken on the other side of the fader where there is a switch for it; else another bus. */
function tapText(
  rig: Rig,
  { bus, sends, mendAt }: FindingOf<'ghost' | 'post-fader-headphones'>,
  side: 'before' | 'after',
): string {
  const them = sends.length === 1 ? 'it' : 'them';
  if (mendAt.endsWith('.tap')) return `take ${them} ${side} the fader`;
  return `use a bus whose sends are taken ${side} the fader, since those to ${ownerName(rig, bus)} are fixed`;
}

const sourcesText = (rig: Rig, sources: readonly string[]): string =>
  listedFirst(
    sources.map((source) => sourceName(rig, source)),
    MOST_NAMED,
  );

const overText = (over: number): string => `${over.toFixed(1)} dB`;

function overshootMending({ loudest, mendAt }: Overshoot & { mendAt: Address }, rig: Rig): string {
  return `turn ${sourcesText(rig, loudest)} down, first at ${placeName(rig, mendAt)}`;
}
