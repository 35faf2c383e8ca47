import type { Move, Rig } from '../../simulator/index.ts';
import { placeName } from './places.ts';
import { controlText, spokenControl } from './quantities.ts';
import { capitalised } from './sentence.ts';

/** What changed between two boards: `The fader of Strip 3 Cello: 0.0 dB → −6.0 dB`. */
export const moveText = (rig: Rig, { control, from, to }: Move): string =>
  `${capitalised(placeName(rig, control.address))}: ${controlText(control, from)} → ${controlText(control, to)}`;

/** The same as it is read out: `The fader of Strip 3 Cello, minus 6.0 decibels`. */
export const spokenMove = (rig: Rig, { control, to }: Move): string =>
  `${capitalised(placeName(rig, control.address))}, ${spokenControl(control, to)}`;
