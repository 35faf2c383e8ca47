import {
  type Address,
  ownerOf,
  type Path,
  placesOf,
  type Reason,
  type Rig,
} from '../../simulator/index.ts';
import { findingText } from './findings.ts';
import { loopText } from './loops.ts';
import { ownerName, sourceName } from './owners.ts';
import { pathLine } from './paths.ts';
import { atGoal, goalName, goalOfSend, placeName } from './places.ts';
import { levelText } from './quantities.ts';
import { listed, sentence } from './sentence.ts';
import { signed } from './signed.ts';
import { stopText } from './stops.ts';

type ReasonOf<Code extends Reason['code']> = Extract<Reason, { code: Code }>;
type ReasonSayings = { [Code in Reason['code']]: (reason: ReasonOf<Code>, rig: Rig) => string };

const reasons = {
  stops: ({ source, after, output, stop }, rig) => {
    const why = stopText(rig, stop);
    const what = after ? `what leaves ${ownerName(rig, ownerOf(after))}` : sourceName(rig, source);
    return `${what} does not reach ${goalName(rig, output)}${why ? `: ${why}` : ''}`;
  },
  arrives: ({ path }, rig) =>
    `${sourceName(rig, path.signal)} arrives at ${levelText(path.level)}${natureText(path)} by ${pathLine(rig, path)}`,
  'changes-most': ({ place, gain }, rig) =>
    `what ${gain < 0 ? 'lowers' : 'raises'} it most on the way is ${placeName(rig, place)}: ${signed(gain)} dB`,
  parts: ({ paths: [one, other], at, meets }, rig) => {
    const turns = [one, other].map((path) => turnText(rig, path, at));
    return `two ways of ${sourceName(rig, one.signal)} part after ${placeName(rig, at)}, one by ${turns[0]} and one by ${turns[1]}, and meet again at ${placeName(rig, meets)}`;
  },
  'passes-probe': ({ path, control }, rig) => {
    const send = sendAfter(rig, path, control);
    const why = send ? `: the send to ${send.label} is taken after it` : '';
    return `${wayName(rig, path)} passes ${placeName(rig, control)}${why}`;
  },
  'misses-probe': ({ path, control, leavesAt }, rig) =>
    `${wayName(rig, path)} does not pass ${placeName(rig, control)}: ${leavingText(rig, leavesAt)}`,
  misses: ({ path, stop }, rig) =>
    `this way does not pass ${placeName(rig, stop)}: ${pathLine(rig, path)}`,
  passes: ({ path, stop }, rig) =>
    `this way passes ${placeName(rig, stop)}: ${pathLine(rig, path)}`,
  'wrong-order': ({ path, first, second }, rig) =>
    `this way passes ${placeName(rig, first)} before ${placeName(rig, second)}, not after it: ${pathLine(rig, path)}`,
  loop: (reason, rig) => loopText(rig, reason),
  driven: ({ by: { stage, peak, clip }, loudest }, rig) =>
    `peaks${loudest.length > 0 ? `, mostly of ${listed(loudest.map((one) => sourceName(rig, one)))},` : ''} come to ${levelText(peak)} at ${placeName(rig, stage)}, which passes ${levelText(clip)}`,
  'noise-from': ({ output, most: { place, share } }, rig) =>
    `${Math.round(100 * share)} % of the noise ${atGoal(rig, output)} comes from ${placeName(rig, place)}`,
  finding: ({ finding }, rig) => findingText(rig, finding),
  'no-probe': ({ source, control }, rig) =>
    control
      ? `there is nothing to hear from ${placeName(rig, control)}: it is closed, so it cannot be moved`
      : `there is no control to move: ${sourceName(rig, source)} comes in on no strip, or its fader is closed`,
} satisfies ReasonSayings;

/** Why a check was heard as it was, in one sentence that names the way and the place that decides. */
export function reasonSentence(rig: Rig, reason: Reason): string {
  const say = reasons[reason.code] as (reason: Reason, rig: Rig) => string;
  return sentence(say(reason, rig));
}

/** A way by its end and the devices that it passes: `the way to Capture through the plate`. */
function wayName(rig: Rig, path: Path): string {
  const owners = [...new Set(placesOf(path).map(ownerOf))];
  const end = placeName(rig, path.steps.at(-1)?.place ?? '');
  const devices = owners.slice(0, -1).filter((owner) => owner.startsWith('rack.'));
  const through =
    devices.length > 0 ? ` through ${listed(devices.map((one) => ownerName(rig, one)))}` : '';
  return `the way to ${end}${through}`;
}

function natureText({ inverted, decorrelated }: Path): string {
  if (decorrelated) return ', as reverberation,';
  return inverted ? ', inverted,' : '';
}

/** The first place that a path takes after another one. */
function turnText(rig: Rig, path: Path, after: Address): string {
  const places = placesOf(path);
  const next = places[places.indexOf(after) + 1];
  return next === undefined ? 'no other place' : placeName(rig, next);
}

/** What the send goes to that a path leaves an owner by, behind a control of the same owner. */
function sendAfter(rig: Rig, path: Path, control: Address) {
  const places = placesOf(path);
  const owner = ownerOf(control);
  const send = places
    .slice(places.indexOf(control) + 1)
    .find((place) => place.startsWith(`${owner}.`) && goalOfSend(rig, place));
  return send === undefined ? undefined : goalOfSend(rig, send);
}

function leavingText(rig: Rig, leavesAt: Address | undefined): string {
  if (leavesAt === undefined) return 'it comes from elsewhere';
  const goal = goalOfSend(rig, leavesAt);
  if (goal) return `the send to ${goal.label} is taken before it`;
  return `it turns off before it, to ${placeName(rig, leavesAt)}`;
}
