import { type Address, jacks, ownerOf, type Rig, type Stop } from '../../simulator/index.ts';
import { ownerName } from './owners.ts';
import { placeName } from './places.ts';
import { listed, listedFirst } from './sentence.ts';

/** The most places that a sentence names before it only counts them. */
const MOST_NAMED = 3;

/** The last places in the box before a track, a bus or the main mix is assigned somewhere. */
const LEAVES_BOX = /^box\..+\.pan$|^box\.main\.fader$/;

/** Why a source does not arrive, to stand behind a colon: `the mute of Strip 3 Cello is on`. */
export function stopText(rig: Rig, stop: Stop): string {
  if (stop.code === 'closed') {
    return listed(stop.places.map((place) => closedText(rig, place)));
  }
  const gaps = [
    firstOf(farthest(stop.ends).map((place) => endText(rig, place))),
    firstOf(stop.openings.map((place) => openingText(rig, place))),
  ].filter(Boolean);
  return gaps.length === 0 ? 'no cord and no assignment leads there' : gaps.join('; ');
}

/**
 * A track that is assigned to one output leaves before its pan, which then leads nowhere, and a mult mostly has
 * outputs to spare. So what ends there tells something only when nothing gets farther.
 */
function farthest(ends: readonly Address[]): readonly Address[] {
  const outside = ends.filter((place) => !LEAVES_BOX.test(place));
  const behind = outside.filter((place) => !place.startsWith('bay.'));
  return [behind, outside, ends].find((some) => some.length > 0) ?? [];
}

/** Several remarks in a row, each once; of many only the first. */
const firstOf = (remarks: readonly string[]): string =>
  listedFirst([...new Set(remarks)], MOST_NAMED);

/** What is wrong at a closed place, in the words of the trade. */
export function closedText(rig: Rig, place: Address): string {
  const [section, id = '', part] = place.split('.');
  const owner = ownerName(rig, `${section}.${id}`);
  if (part === 'mute') return `the mute of ${owner} is on`;
  if (part === 'pan') return `the pan of ${owner} is turned all the way to the other side`;
  if (part === 'cut') return `${owner} is cut by the solo of another strip`;
  if (part === 'solo') return `${owner} is not soloed`;
  if (part === 'path') return `${owner} is fed from elsewhere`;
  if (part === 'listen') return `the control room listens to something else`;
  if (part === 'main' && section === 'box') return `the main feed of ${owner} is off`;
  if (part === 'main') return `${owner} is not assigned to ${mainBus(rig, id)}`;
  const subgroup = rig.desk.subgroups.find((one) => one.id === part);
  if (subgroup) return `${owner} is not assigned to ${subgroup.label}`;
  return `${placeName(rig, place)} is closed`;
}

/** The main bus, or the side of it that a mono subgroup is not assigned to. */
const mainBus = (rig: Rig, id: string): string =>
  rig.desk.subgroups.some((one) => one.id === id && one.takes !== 'both')
    ? 'that side of the main bus'
    : 'the main bus';

/** A place that the source comes to and that leads no further. */
function endText(rig: Rig, place: Address): string {
  const owner = ownerName(rig, ownerOf(place));
  if (LEAVES_BOX.test(place)) return `${owner} is assigned nowhere`;
  const isJack = jacks(rig).outputs.some((jack) => jack === place || jack.startsWith(`${place}.`));
  return isJack
    ? `${placeName(rig, place)} is plugged nowhere`
    : `it gets no further than ${placeName(rig, place)}`;
}

/** A place before the output that nothing comes to. */
function openingText(rig: Rig, place: Address): string {
  const capture = rig.box.captures.find(({ id }) => place === `box.${id}.in`);
  if (capture) return `the capture track ${capture.label} stands at no input of the converter`;
  if (place.startsWith('converter.in')) return `nothing is plugged into ${placeName(rig, place)}`;
  const isAssigned = place.startsWith('converter.') || place.startsWith('box.');
  const owner = ownerName(rig, ownerOf(place));
  return isAssigned
    ? `nothing is assigned to ${owner}`
    : `nothing is plugged into ${placeName(rig, place)}`;
}
