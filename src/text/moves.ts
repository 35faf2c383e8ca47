import { type Move, type Rig, type Setup, soloingOf } from '../../simulator/index.ts';
import { capitalised } from './capitalised.ts';
import { placeName } from './places.ts';
import { controlText, spokenControl } from './quantities.ts';
import { counted } from './sentence.ts';

/** What changed between two boards: `The fader of Strip 3 Cello: 0.0 dB → −6.0 dB`. */
export const moveText = (rig: Rig, { control, from, to }: Move): string =>
  `${capitalised(placeName(rig, control.address))}: ${controlText(control, from)} → ${controlText(control, to)}`;

/** The same as it is read out: `The fader of Strip 3 Cello, minus 6.0 decibels`. */
export const spokenMove = (rig: Rig, { control, to }: Move): string =>
  `${capitalised(placeName(rig, control.address))}, ${spokenControl(control, to)}`;

/** How many strips the solo of others cuts, as it is read out; nothing when there is none. */
export function cutSentence(setup: Setup): string | undefined {
  const { size } = soloingOf(setup).cut;
  return size === 0 ? undefined : `Solo cuts ${counted(size, 'strip')}`;
}
