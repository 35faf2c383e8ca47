import type { Biquad, Seconds } from '../../simulator/index.ts';

/** A circuit as Web Audio can play it: parts, and wires between them. All of it is mono. */
export interface AudioGraph {
  readonly parts: readonly AudioPart[];
  readonly wires: readonly AudioWire[];
}

/** Sums what its wires bring, then does one thing to it that never changes: what changes makes another part. */
export interface AudioPart {
  /** Says what the part is and does: two parts of one id are alike. */
  readonly id: string;
  readonly action: AudioAction;
}

export type AudioAction =
  | { readonly kind: 'sum' }
  /** Plays the recording of a signal, at an RMS of 1. */
  | { readonly kind: 'play'; readonly signal: string }
  | { readonly kind: 'filter'; readonly sections: readonly Biquad[] }
  | { readonly kind: 'delay'; readonly time: Seconds }
  /** Makes reverberation of it, with an impulse response of its own for each stage. */
  | { readonly kind: 'reverberate'; readonly stage: string };

/** Leads from one part to another. All gains are gains of wires, so that only wires ever glide. */
export interface AudioWire {
  readonly from: string;
  readonly to: string;
  /** Voltage ratio, with the gains of all that only turns it up or down on this way. */
  readonly ratio: number;
  /** Whether it comes one block of Web Audio later, as it must somewhere in a loop. */
  readonly isLate: boolean;
}

/** The two parts that are heard. */
export const EARS = ['ear.l', 'ear.r'] as const;
