import type { Address, Headroom, Level, NoiseShare, Rig } from '../../simulator/index.ts';
import { IN_DBU } from './level-units.ts';
import { atGoal, placeName } from './places.ts';
import { levelText } from './quantities.ts';
import { counted, listed, listedFirst, sentence } from './sentence.ts';
import { signed, unsigned } from './signed.ts';

/** The most stages that a sentence names. */
const MOST_NAMED = 3;
/** What has less than this share of the noise is not worth a word. */
const LEAST_SHARE = 0.05;

/** How loud the noise at a place is, and what makes most of it. */
export function noiseSentence(
  rig: Rig,
  place: Address,
  noise: Level,
  shares: readonly NoiseShare[] = [],
  scale = IN_DBU,
): string {
  const where = atGoal(rig, place);
  if (noise === undefined)
    return sentence(`there is no level of the noise ${where}: an unstable loop reaches it`);
  if (noise === -Infinity) return sentence(`no noise arrives ${where}`);
  const largest = shares.filter(({ share }) => share >= LEAST_SHARE).slice(0, MOST_NAMED);
  const from = largest.map(
    ({ place: born, share }, index) =>
      `${percent(share)} ${index === 0 ? 'of it ' : ''}from ${placeName(rig, born)}`,
  );
  const whence =
    from.length > 0
      ? listed(from)
      : `of ${counted(shares.length, 'stage')}, none of which stands out`;
  return sentence(`the noise ${where} is ${levelText(noise, 1, scale)}, ${whence}`);
}

/** What clips, or would clip first, and by how much. */
export function firstToClipSentence(rig: Rig, first: Headroom | undefined, scale = IN_DBU): string {
  if (!first) return 'Nothing can clip: no level arrives at any stage.';
  const { stage, clip, peak, headroom } = first;
  const name = placeName(rig, stage);
  return sentence(
    headroom < 0
      ? `${name} clips: its peaks come to ${levelText(peak, 1, scale)}, ${headroomFigure(-headroom)} dB above what it passes`
      : `first to clip is ${name}: ${headroomFigure(headroom)} dB are left up to ${levelText(clip, 1, scale)}`,
  );
}

/** All that clips, when it is more than the one stage that clips most. */
export function clippingSentence(rig: Rig, clipping: readonly Headroom[]): string | undefined {
  if (clipping.length < 2) return undefined;
  const names = clipping.map(({ stage }) => placeName(rig, stage));
  return sentence(`${counted(names.length, 'stage')} clip: ${listedFirst(names, 2 * MOST_NAMED)}`);
}

/** By how much a compressor turns down what it hears. */
export const compressionSentence = (rig: Rig, place: Address, gain: number): string =>
  sentence(`${placeName(rig, place)} is ${gain === 0 ? 'none now' : `${unsigned(gain)} dB`}`);

/** A headroom for a table of figures, without its unit: `8.0`, `−2.5` where it clips, `∞` where nothing comes. */
export const headroomFigure = (headroom: number): string =>
  headroom === Infinity ? '∞' : signed(headroom).replace('+', '');

const percent = (share: number): string => `${Math.round(100 * share)} %`;
