import type { Address, Leg } from '../rig/address.ts';
import type { Biquad } from '../units/biquad.ts';
import type { CompressionCurve } from '../units/compression.ts';
import type { Seconds } from '../units/frequency.ts';
import type { Db, Dbu } from '../units/level.ts';

/**
 * A point that a signal passes. It sums what its wires bring, then acts on the sum by its law.
 * Its index is its place in the list of stages; a circuit names stages by index throughout.
 */
export interface Stage {
  /** `desk.ch3.pan.l`: the place, and the leg where the place is stereo. */
  readonly id: Address;
  /** `desk.ch3.pan` */
  readonly place: Address;
  readonly leg: Leg | undefined;
  readonly law: Law;
}

/** What a stage does to the sum of its wires. */
export type Law =
  /** Passes it on. */
  | { readonly kind: 'sum' }
  /** Adds a signal of its own, so that the signal has this level here. */
  | { readonly kind: 'source'; readonly level: Dbu }
  /** Turns it down by a static curve, which follows the level of all `listensTo` stages together. */
  | {
      readonly kind: 'compressor';
      readonly curve: CompressionCurve;
      readonly listensTo: readonly number[];
    }
  /** Filters it: second-order sections one after the other. */
  | { readonly kind: 'filter'; readonly sections: readonly Biquad[] }
  /** Passes it on later. */
  | { readonly kind: 'delay'; readonly time: Seconds }
  /** Makes a new signal of the same power, uncorrelated with what came in and with every other. */
  | { readonly kind: 'decorrelator' };

/** A connection from one stage to another. Ratio 0 is a closed one: a fader down, a mute, an assign that is off. */
export interface Wire {
  readonly from: number;
  /** Voltage ratio; negative where it inverts. */
  readonly ratio: number;
}

/** One recorded signal: a mono track, or one side of a stereo track. */
export interface Signal {
  /** `cello`, or `piano.l` */
  readonly id: string;
  /** `piano` */
  readonly track: string;
  /** The stage where it enters. */
  readonly stage: number;
  readonly level: Dbu;
  /** By how much its peaks stand above its level, in dB; 0 for a sine. */
  readonly crest: Db;
}

/** What makes a stage an active one. */
export interface ActiveStage {
  /** What it adds of its own to what comes out, RMS over a bandwidth of 20 kHz. `-Infinity` where it adds nothing. */
  readonly noise: Dbu;
  /** The largest sine that passes, RMS. */
  readonly clip: Dbu;
}

/** Left and right of a stereo place. */
export type Pair = readonly [left: number, right: number];
/** The stages of a place: one, or left and right. */
export type Legs = readonly [number] | Pair;

/** All stages and wires of a setup. */
export interface Circuit {
  readonly stages: readonly Stage[];
  /** Wires into a stage, by stage. */
  readonly wires: readonly (readonly Wire[])[];
  readonly signals: readonly Signal[];
  /** Stages of a place, by place. */
  readonly stagesAt: ReadonlyMap<Address, Legs>;
  /** The active stages, by stage. All others pass signals on without noise or limit. */
  readonly active: ReadonlyMap<number, ActiveStage>;
}

/** The stages of a place, or the one stage of an id with a leg. @throws RangeError when there is none. */
export function stagesOf(circuit: Circuit, place: Address): readonly number[] {
  const stages = circuit.stagesAt.get(place);
  if (stages) return stages;
  const stage = circuit.stages.findIndex(({ id }) => id === place);
  if (stage < 0) throw new RangeError(`Expected a place in the circuit, but got ${place}.`);
  return [stage];
}

/** The signals of a track, or the one signal of that id. @throws RangeError when there is none. */
export function signalsNamed(circuit: Circuit, name: string): readonly Signal[] {
  const signals = circuit.signals.filter(({ id, track }) => id === name || track === name);
  if (signals.length === 0) throw new RangeError(`Expected a source of the rig, but got ${name}.`);
  return signals;
}
