import type { Address } from '../rig/address.ts';
import type { Seconds } from '../units/frequency.ts';
import type { Db, Dbu } from '../units/level.ts';

/** What one side of a stereo place, or a mono place, holds of a path: its level there. */
export interface LegLevel {
  /** `''` where the place is mono. */
  readonly leg: 'l' | 'r' | '';
  readonly level: Dbu;
}

/** One place on a path. */
export interface PathStep {
  readonly place: Address;
  /** What this place did to the signal: the change from the step before, in dB. */
  readonly gain: Db;
  /** Level of this path's signal here, both legs together in power, in dBu. */
  readonly level: Dbu;
  /** The legs that the path uses here. */
  readonly legs: readonly LegLevel[];
}

/**
 * One way of a signal from where it enters to an output. Left and right of a stereo place are one way.
 * Its levels are of this way alone, once round: without what else arrives, and without what a loop adds.
 */
export interface Path {
  /** The recorded signal: `cello`, `piano.l`. */
  readonly signal: string;
  /** The places in signal order, from the recording to the output. */
  readonly steps: readonly PathStep[];
  /** Gain from end to end, in dB. */
  readonly gain: Db;
  /** Level at the output by this path alone, in dBu. */
  readonly level: Dbu;
  /** Whether it arrives with its polarity inverted. */
  readonly inverted: boolean;
  /** How late it arrives, in seconds; of its first arrival where its legs differ. */
  readonly delay: Seconds;
  /** Whether it passes a reverb: it arrives as a new signal then, and adds to the others in power. */
  readonly decorrelated: boolean;
}

/** The places of a path, in signal order. */
export const placesOf = ({ steps }: Path): Address[] => steps.map(({ place }) => place);

/** Whether a path passes a place, or any place of an owner: `desk.ch3.fader`, `rack.plate`. */
export const passes = (path: Path, placeOrOwner: Address): boolean =>
  path.steps.some(({ place }) => isWithin(place, placeOrOwner));

/** Whether a place is this one or belongs to it. */
export const isWithin = (place: Address, placeOrOwner: Address): boolean =>
  place === placeOrOwner || place.startsWith(`${placeOrOwner}.`);
