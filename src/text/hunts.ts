import {
  type Complaint,
  type Contradiction,
  type Hunt,
  type HuntFault,
  type HuntScore,
  jacks,
  lookAlike,
  type Oddity,
  type ProbeReading,
  partnerOf,
  type Reading,
  type Rig,
  type Setup,
  type Symptom,
  type Worth,
} from '../../simulator/index.ts';
import { capitalised } from './capitalised.ts';
import { IN_DBU, type LevelScale } from './level-units.ts';
import { ownerName } from './owners.ts';
import { atGoal, goalName, placeName, playerNames } from './places.ts';
import { levelText } from './quantities.ts';
import { counted, listed, sentence } from './sentence.ts';
import { closedText } from './stops.ts';

/** What a client says of a symptom, about some tracks or about all that is to be heard. */
const SAID: Readonly<Record<Symptom, (who: string, isMany: boolean) => string>> = {
  silent: (who) => `I hear nothing of ${who}.`,
  intruder: (who) => `I hear ${who}, which should not be there at all.`,
  'left-lost': (who, isMany) =>
    `${who} ${be(isMany)} on the right alone: nothing comes from the left.`,
  'right-lost': (who, isMany) =>
    `${who} ${be(isMany)} on the left alone: nothing comes from the right.`,
  'sides-swapped': (who, isMany) => `${who} ${isMany ? 'come' : 'comes'} from the wrong side.`,
  quiet: (who, isMany) => `${who} ${be(isMany)} far too quiet.`,
  loud: (who, isMany) => `${who} ${be(isMany)} far too loud.`,
  'leans-left': (who, isMany) => `${who} ${isMany ? 'lean' : 'leans'} over to the left.`,
  'leans-right': (who, isMany) => `${who} ${isMany ? 'lean' : 'leans'} over to the right.`,
};

const be = (isMany: boolean): string => (isMany ? 'are' : 'is');

/** A complaint in a client's words: `I hear nothing of the Cello. All the rest is as it should be.` */
export function complaintWords(rig: Rig, { oddities, isOfAll }: Complaint): string {
  const bySymptom = Map.groupBy(oddities, ({ symptom }) => symptom);
  if (isOfAll) return [...bySymptom.keys()].map(saidOfAll).join(' ');
  const said = [...bySymptom].map(([symptom, of]) =>
    capitalised(SAID[symptom](tracksOf(rig, of), of.length > 1)),
  );
  return [...said, 'All the rest is as it should be.'].join(' ');
}

const saidOfAll = (symptom: Symptom): string =>
  symptom === 'silent' ? 'I hear nothing at all.' : capitalised(SAID[symptom]('everything', false));

const tracksOf = (rig: Rig, oddities: readonly Oddity[]): string =>
  playerNames(
    rig,
    oddities.map(({ track }) => track),
  );

/** Who complains: `Somebody who listens to Headphones A says:` */
export const complainerWords = (rig: Rig, { output }: Complaint): string =>
  `Somebody who listens to ${goalName(rig, output)} says:`;

/** What is wrong, to stand behind a colon: `the mute of Strip 3 Cello is on`. */
export function faultText(setup: Setup, { kind, at }: HuntFault): string {
  const { rig } = setup;
  const name = placeName(rig, at);
  switch (kind) {
    case 'dead':
      return isInputJack(rig, at) ? `nothing comes through into ${name}` : `${name} is dead`;
    case 'weak':
      return `a bad contact into ${name} loses 20 dB`;
    case 'inverted':
      return `the cord into ${name} is wired the wrong way round`;
    case 'polarity':
      return `the polarity of ${ownerName(rig, ownerPart(at))} is switched over`;
    case 'muted':
    case 'closed':
      return closedText(rig, at);
    case 'unassigned':
      return at.endsWith('.to')
        ? `${ownerName(rig, ownerPart(at))} is assigned nowhere`
        : closedText(rig, at);
    case 'stray':
      return `${name} is on, and should be off`;
    case 'tap':
      return `${name} is on the other side of the fader`;
    case 'unplugged':
      return `the cord into ${name} is pulled`;
    case 'open-plug':
      return `an open plug in ${name} breaks its normal`;
    case 'crossed':
      return `the cords into ${name} and ${placeName(rig, partnerOf(setup, at) ?? at)} are crossed`;
  }
}

const ownerPart = (at: string): string => at.split('.').slice(0, 2).join('.');

const isInputJack = (rig: Rig, at: string): boolean => jacks(rig).inputs.includes(at);

/** Several faults that no reading tells apart: `the mute of Strip 3 is on, or the mute of Strip 3 is dead`. */
export const suspectText = (setup: Setup, faults: readonly HuntFault[]): string =>
  faults.map((fault) => faultText(setup, fault)).join(', or ');

/** What a meter shows: `−6.0 dBu`, `left −6.0 dBu, right silent`. */
export function readingText(reading: Reading, scale: LevelScale = IN_DBU): string {
  const [left, right] = reading.map((level) => levelText(level, 1, scale));
  if (right === undefined) return left ?? '';
  return left === right ? `${left} on each side` : `left ${left}, right ${right}`;
}

/** What a reading says: whether it is what was written down. */
export const readingVerdict = ({ found, meant }: ProbeReading): string =>
  lookAlike(found, meant) ? 'as it should be' : 'not as it should be';

/** The last reading, to be read out. */
export const readingSentence = (
  rig: Rig,
  reading: ProbeReading,
  count: number,
  scale: LevelScale = IN_DBU,
): string =>
  `Reading ${count}, behind ${placeName(rig, reading.place)}: ${readingText(reading.found, scale)}, ${readingVerdict(reading)}.`;

/** What a probe was worth, in a word. */
export const WORTH_WORDS: Readonly<Record<Worth, string>> = {
  sound: 'Well chosen',
  premature: 'Premature',
  redundant: 'Redundant',
  outside: 'Outside',
};

/** What a probe was worth, and why. */
export function worthSentence(
  rig: Rig,
  worth: Worth,
  better: { readonly place: string; readonly left: number } | undefined,
): string {
  const advice = better
    ? ` ${capitalised(placeName(rig, better.place))} would have left at most ${counted(better.left, 'suspect')}.`
    : '';
  switch (worth) {
    case 'sound':
      return 'From there no more readings are needed than from the best place.';
    case 'premature':
      return `It told something, but another place would have left fewer readings to make.${advice}`;
    case 'redundant':
      return `All suspects that were left read alike there.${advice}`;
    case 'outside':
      return `No suspect changes anything there.${advice}`;
  }
}

/** Why an accused fault is not it. */
export function contradictionSentence(
  { rig }: Setup,
  contradiction: Contradiction,
  complaint: Complaint,
  scale: LevelScale = IN_DBU,
): string {
  switch (contradiction.code) {
    case 'other-complaint':
      return `With that, somebody who listens to ${goalName(rig, complaint.output)} would have said something else.`;
    case 'other-reading': {
      const { reading, would } = contradiction;
      const at = atGoal(rig, reading.place);
      return `With that, ${readingText(would, scale)} would have been read ${at}, and it was ${readingText(reading.found, scale)}.`;
    }
    case 'it-fitted':
      return 'It fitted all that you knew, but so did others: a reading that tells them apart was missing.';
  }
}

/** How a hunt went, in a sentence or two. */
export function scoreSentence({ isFound, probes, wrong, owed, best, score }: HuntScore): string {
  const had = `The best strategy needs ${counted(best, 'reading')} here at the most`;
  const took = counted(probes, 'reading');
  if (!isFound) return sentence(`Not found, after ${took}. ${had}`);
  const more = [
    ...(wrong > 0 ? [counted(wrong, 'wrong accusation')] : []),
    ...(owed > 0 ? [`${counted(owed, 'reading')} short of a proof`] : []),
  ];
  const cost = listed([`Found with ${took}`, ...more]);
  return `${cost}. ${had}: ${Math.round(score * 100)} of 100.`;
}

/** How the best strategy was found, and what it needs. */
export const strategySentence = ({
  suspects,
  best,
  strategy,
}: Pick<Hunt, 'suspects' | 'best' | 'strategy'>): string =>
  strategy.isExact
    ? `${capitalised(counted(suspects.length, 'suspect'))} fitted the complaint. No strategy needs fewer than ${counted(best, 'reading')} in the worst case: all were tried.`
    : `${capitalised(counted(suspects.length, 'suspect'))} fitted the complaint. Splitting them as evenly as can be at each reading needs ${best} in the worst case.`;
