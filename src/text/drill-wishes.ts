import { pluginAt, type Rig, type Wish, type WishCode } from '../../simulator/index.ts';
import { capitalised } from './capitalised.ts';
import { ownerName } from './owners.ts';
import { deviceName, goalName, placeName, playerNames } from './places.ts';
import { signed } from './signed.ts';

type Sayings = readonly ((wish: Wish, rig: Rig) => string)[];

const band = ({ band: asked }: Wish): string =>
  asked ? ` between ${signed(asked[0])} and ${signed(asked[1])} dBu` : '';
const also = ({ also: [first = ''] = [] }: Wish): string => first;

/** Every way of asking for a thing. A drill takes one of them. */
const WISHES: Readonly<Record<WishCode, Sayings>> = {
  inserted: [
    ({ sources, at }, rig) =>
      `I want all of ${playerNames(rig, sources)} to go through ${ownerName(rig, at)}, with nothing dry beside it.`,
    ({ sources, at }, rig) =>
      `Put ${ownerName(rig, at)} in line with ${playerNames(rig, sources)}: every bit of it, and one way only.`,
  ],
  beside: [
    ({ sources, at }, rig) =>
      `Leave ${playerNames(rig, sources)} dry, once, and let me hear ${ownerName(rig, at)} beside it.`,
    ({ sources, at }, rig) =>
      `${capitalised(playerNames(rig, sources))} should stand in ${ownerName(rig, at)}, and in front of it as well: dry once, and the effect with it.`,
  ],
  'stays-out': [
    ({ sources, at }, rig) =>
      `Keep ${playerNames(rig, sources)} out of ${ownerName(rig, at)}, please.`,
    ({ sources, at }, rig) =>
      `${capitalised(playerNames(rig, sources))} must not come by ${ownerName(rig, at)}.`,
  ],
  'holds-still': [
    (wish, rig) =>
      `Whatever I do with the fader, ${playerNames(rig, wish.sources)} in ${placeName(rig, wish.at)} must hold still,${band(wish)}.`,
    (wish, rig) =>
      `Who wears ${placeName(rig, wish.at)} must hear ${playerNames(rig, wish.sources)}${band(wish)}, and must not notice when I mix.`,
  ],
  'effect-follows': [
    (wish, rig) =>
      `When I pull ${playerNames(rig, wish.sources)} down, what ${ownerName(rig, wish.at)} gets must go down too, dB for dB. It gets${band(wish)}.`,
    (wish, rig) =>
      `No ghosts: ${ownerName(rig, wish.at)} follows the fader of ${playerNames(rig, wish.sources)}, and is fed${band(wish)}.`,
  ],
  'as-loud': [
    (wish, rig) => `In the mix, ${playerNames(rig, wish.sources)} should come to${band(wish)}.`,
    (wish, rig) => `The mix gets ${playerNames(rig, wish.sources)}${band(wish)}.`,
  ],
  'own-strip': [
    ({ sources, at }, rig) =>
      `${capitalised(playerNames(rig, sources))} comes in on ${ownerName(rig, at)}, once, and by nothing else.`,
    ({ sources, at }, rig) =>
      `I expect ${playerNames(rig, sources)} on ${ownerName(rig, at)} alone.`,
  ],
  'cue-mix': [
    ({ sources, at }, rig) =>
      `The mix of the box goes to ${placeName(rig, at)}, with ${playerNames(rig, sources)} in it.`,
    ({ sources, at }, rig) =>
      `${capitalised(playerNames(rig, sources))} should also be heard in ${placeName(rig, at)}, out of the mix of the box.`,
  ],
  'not-in-cue': [
    ({ sources, at }, rig) => `Nothing of ${playerNames(rig, sources)} in ${placeName(rig, at)}.`,
    ({ sources, at }, rig) =>
      `${capitalised(placeName(rig, at))} stays without ${playerNames(rig, sources)}.`,
  ],
  'in-order': [
    (wish, rig) =>
      `${capitalised(playerNames(rig, wish.sources))} passes ${ownerName(rig, wish.at)} first and ${ownerName(rig, also(wish))} after it.`,
    (wish, rig) =>
      `I want ${ownerName(rig, wish.at)} before ${ownerName(rig, also(wish))} on ${playerNames(rig, wish.sources)}.`,
  ],
  'past-plugin': [
    ({ sources, at }, rig) =>
      `${capitalised(playerNames(rig, sources))} leaves the box without ${pluginName(rig, at)}.`,
    ({ sources, at }, rig) =>
      `${capitalised(playerNames(rig, sources))} must not be squeezed before the desk: keep ${pluginName(rig, at)} off.`,
  ],
  'by-plugin': [
    ({ sources, at }, rig) =>
      `${capitalised(playerNames(rig, sources))} is squeezed in the box already, by ${pluginName(rig, at)}.`,
    ({ sources, at }, rig) =>
      `Use ${pluginName(rig, at)} on ${playerNames(rig, sources)}, before the desk.`,
  ],
  'no-feedback': [
    () => 'And nothing may feed itself: the loft is small and the monitors are near.',
    () => 'Mind the loops. I do not want to hear the shed howl.',
  ],
  grouped: [
    ({ sources, at }, rig) =>
      `${capitalised(playerNames(rig, sources))} runs through ${ownerName(rig, at)}, and nowhere past it.`,
    ({ sources, at }, rig) =>
      `One fader for ${playerNames(rig, sources)}: ${ownerName(rig, at)}, and no other way into the mix.`,
  ],
  'in-parallel': [
    ({ sources, at }, rig) =>
      `${capitalised(playerNames(rig, sources))} goes to the main bus and through ${ownerName(rig, at)} as well, side by side.`,
    ({ sources, at }, rig) =>
      `For ${playerNames(rig, sources)} I want both: the plain way, and ${ownerName(rig, at)} beside it.`,
  ],
  pair: [
    ({ sources }, rig) =>
      `${capitalised(playerNames(rig, sources))} is a pair: its left on the left, its right on the right, and nothing across.`,
    ({ sources }, rig) =>
      `Give me ${playerNames(rig, sources)} in stereo again, the right way round.`,
  ],
  centre: [
    ({ sources }, rig) => `${capitalised(playerNames(rig, sources))} stands in the middle.`,
    ({ sources }, rig) => `I want ${playerNames(rig, sources)} as loud left as right.`,
  ],
  'at-level': [
    (wish, rig) =>
      `Behind ${placeName(rig, wish.at)} I want to read ${playerNames(rig, wish.sources)}${band(wish)}.`,
    (wish, rig) =>
      `${capitalised(playerNames(rig, wish.sources))} should stand${band(wish)} behind ${placeName(rig, wish.at)}.`,
  ],
  'in-step': [
    (wish, rig) =>
      `${capitalised(playerNames(rig, wish.sources))} comes by two strips, its own and ${ownerName(rig, wish.at)}, and the two must add up as one.`,
    (wish, rig) =>
      `${capitalised(ownerName(rig, wish.at))} doubles ${playerNames(rig, wish.sources)}. Together they must be as strong as two in step are.`,
  ],
  alone: [
    ({ sources, at }, rig) =>
      `Let me hear ${playerNames(rig, sources)} alone in ${placeName(rig, at)}, while the recording of the mix goes on.`,
    ({ sources, at }, rig) =>
      `In ${placeName(rig, at)} I need only ${playerNames(rig, sources)}; the mix must not notice.`,
  ],
  'alone-with-effect': [
    (wish, rig) =>
      `I want to print ${playerNames(rig, wish.sources)} alone into ${goalName(rig, wish.at)}, with ${ownerName(rig, also(wish))} around it.`,
    (wish, rig) =>
      `Everybody off but ${playerNames(rig, wish.sources)} and what ${ownerName(rig, also(wish))} makes of it: that goes into ${goalName(rig, wish.at)}.`,
  ],
  everyone: [
    ({ at }, rig) => `Everybody has to be in ${placeName(rig, at)}, once each.`,
    ({ sources, at }, rig) =>
      `${capitalised(placeName(rig, at))} is to hold ${playerNames(rig, sources)}, each of them once.`,
  ],
};

const pluginName = (rig: Rig, at: string): string =>
  pluginAt(rig, `${at}.on`) ? deviceName(rig, `${at}.on`) : deviceName(rig, at);

/** What is asked for, as somebody in the room says it. @param voice which way of saying it is taken. */
export function wishSentence(rig: Rig, wish: Wish, voice: number): string {
  const sayings = WISHES[wish.code];
  return sayings[voice % sayings.length]?.(wish, rig) ?? '';
}
