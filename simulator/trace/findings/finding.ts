import type { Address, Leg, Owner } from '../../rig/address.ts';
import type { Hz, Seconds } from '../../units/frequency.ts';
import type { Db, Dbu } from '../../units/level.ts';
import type { Path } from '../path.ts';
import type { Stop } from '../stops.ts';

/** What an experienced engineer would point at, by kind. */
export const FINDING_CODES = [
  'arrives-twice',
  'inverted-path',
  'late-path',
  'stray-feed',
  'line-unpatched',
  'output-unfed',
  'goes-nowhere',
  'leg-missing',
  'legs-swapped',
  'legs-unpanned',
  'send-nowhere',
  'return-feeds-send',
  'capture-plays-back',
  'loop',
  'insert-not-returned',
  'insert-not-sent',
  'ghost',
  'post-fader-headphones',
  'over-full-scale',
  'stage-clips',
  'low-level',
  'box-fader',
] as const;
export type FindingCode = (typeof FINDING_CODES)[number];

/**
 * A `fault` is hardly ever meant. A `note` is worth a look: it is a trick when it is meant, and a mistake
 * when it is not.
 */
export type Severity = 'fault' | 'note';

/** Two ways of one signal to an output, past every reverb, that meet on the same side of it. */
export interface Doubling {
  /** The recorded signal: `cello`, `piano.l`. */
  readonly signal: string;
  readonly output: Address;
  /** The louder one first. */
  readonly paths: readonly [Path, Path];
  /** The last place before they part, the first one on each after it, and where they meet again. */
  readonly at: Address;
  readonly turns: readonly [Address, Address];
  readonly meets: Address;
  /** Where each of them can be closed behind where they part; a place where it has no control to close. */
  readonly closers: readonly [Address, Address];
  /**
   * All that arrives of the signal past reverbs against the louder of the two ways alone, in dB; less than 0
   * where they cancel in part. Nothing where an unstable loop leaves no level.
   */
  readonly gain: Db | undefined;
}

/** Where a pair of legs is amiss: at two jacks side by side, or with both sides of a stereo source at an output. */
export type PairPlace =
  | { readonly kind: 'cords'; readonly place: Address }
  | { readonly kind: 'source'; readonly source: string; readonly output: Address };

/** What the peaks go over, by how much, and whose they are. */
export interface Overshoot {
  /** The places that are mended together, the worst one first. */
  readonly places: readonly Address[];
  /** By how much the peaks exceed what the worst of them passes, in dB; above 0. */
  readonly over: Db;
  /** The largest sine that passes each of them, RMS; at a converter 0 dBFS. */
  readonly clip: Dbu;
  /**
   * The fewest tracks that make half of the peaks there between them, the loudest first; once those are turned down
   * that make a stage before it clip.
   */
  readonly loudest: readonly string[];
}

/** Places that feed one another. */
export interface Ring {
  readonly places: readonly Address[];
  /** Once round. */
  readonly gain: Db;
  readonly stable: boolean;
  /** Where what circulates is strongest; nothing where all frequencies are alike. */
  readonly worst: Hz | undefined;
}

/** What each kind of finding tells beside its code. */
type Told =
  | ({ readonly code: 'arrives-twice' } & Doubling)
  /** One of the two ways turns the polarity round and the other does not. */
  | ({ readonly code: 'inverted-path' } & Doubling)
  /** One way comes later than the other: so much, and with the first notch of the comb here. */
  | ({
      readonly code: 'late-path';
      readonly late: Seconds;
      readonly firstNull: Hz;
    } & Doubling)
  /** These channels feed the box's main mix, which leaves by lines that these other owners use too. */
  | {
      readonly code: 'stray-feed';
      readonly feeds: readonly Address[];
      readonly lines: readonly Address[];
      readonly sharers: readonly Owner[];
    }
  /** A converter output that these owners are assigned to, and that nothing is plugged into. */
  | {
      readonly code: 'line-unpatched';
      readonly line: Address;
      readonly owners: readonly Owner[];
    }
  /** An output of the room that nothing is plugged into. */
  | { readonly code: 'output-unfed'; readonly output: Address }
  /** A track that no open way leads from to any output; why not to `output`, which it comes nearest to. */
  | {
      readonly code: 'goes-nowhere';
      readonly source: string;
      readonly output: Address;
      readonly stop: Stop;
    }
  | {
      readonly code: 'leg-missing';
      readonly pair: PairPlace;
      readonly missing: Leg;
      /** Why the missing side of a source does not arrive; nothing where a cord is missing. */
      readonly stop: Stop | undefined;
    }
  | { readonly code: 'legs-swapped'; readonly pair: PairPlace }
  | { readonly code: 'legs-unpanned'; readonly pair: PairPlace }
  /** Open sends into a bus, on the desk or in the box, from which no open way leads to any output. */
  | {
      readonly code: 'send-nowhere';
      readonly bus: Owner;
      readonly sends: readonly Address[];
      readonly output: Address;
      readonly stop: Stop;
    }
  /** What a device gives back comes to its own input again, by this send. */
  | ({ readonly code: 'return-feeds-send'; readonly send: Address; readonly device: Owner } & Ring)
  /** What a capture track records comes from what it plays back: these lines of the converter lie in the ring. */
  | ({
      readonly code: 'capture-plays-back';
      readonly capture: Owner;
      readonly records: Address;
      readonly plays: Address;
    } & Ring)
  /** Any other places that feed one another. */
  | ({ readonly code: 'loop' } & Ring)
  /** An insert send that goes to this jack and does not come back. */
  | {
      readonly code: 'insert-not-returned';
      readonly owner: Owner;
      readonly goesTo: Address;
      /** Whether the signal goes on to the return all the same, by the normal from its send. */
      readonly passesOn: boolean;
    }
  /** An insert return that is fed from this jack, and not from its own send. */
  | {
      readonly code: 'insert-not-sent';
      readonly owner: Owner;
      readonly comesFrom: Address;
    }
  /** Sends taken before the fader into a device or plug-in that is heard where the strips or tracks themselves are. */
  | {
      readonly code: 'ghost';
      readonly bus: Owner;
      readonly sends: readonly Address[];
      readonly device: Address;
      readonly output: Address;
    }
  /** Sends taken after the fader into a bus that feeds an output straight. */
  | {
      readonly code: 'post-fader-headphones';
      readonly bus: Owner;
      readonly sends: readonly Address[];
      readonly output: Address;
    }
  /** A sum in the box, or what comes in from the room, that is more than 0 dBFS at the converter. */
  | ({ readonly code: 'over-full-scale' } & Overshoot)
  /** An amplifier, a device or an output of the room that gets more than the largest sine that it passes. */
  | ({ readonly code: 'stage-clips' } & Overshoot)
  /** An input that is fed below {@link LOW_LEVEL}. */
  | { readonly code: 'low-level'; readonly place: Address; readonly level: Dbu }
  /** Faders of the box away from unity, and where they stand in dB. */
  | {
      readonly code: 'box-fader';
      readonly faders: readonly { readonly address: Address; readonly gain: Db }[];
    };

/** One thing to point at. Its sentence is written elsewhere. */
export type Finding = Told & {
  readonly severity: Severity;
  /** The control or jack to begin with when one mends it. */
  readonly mendAt: Address;
  /** A track whose way shows it; nothing where no sound comes there. */
  readonly follow: string | undefined;
};
export type FindingOf<Code extends FindingCode> = Extract<Finding, { code: Code }>;

/**
 * A level at an input below this is too low for what follows: 40 dB under line level, +4 dBu. What an input
 * stage adds of its own is brought up with the signal then. The figure is a choice of ours, not a standard's.
 */
export const LOW_LEVEL = -36 as Dbu;

/**
 * What is turned down because it clips is turned down by so much more, in dB: what still clips behind it then has
 * a cause of its own. Clip levels along a chain commonly differ by two or three. The figure is a choice of ours.
 */
export const MENDED_MARGIN = 3 as Db;

/**
 * A way that comes so much later than another, in seconds, is heard as an echo and no longer as a change of
 * tone. Common practice puts the border between 20 and 40 ms.
 */
export const ECHO_AFTER = 0.03 as Seconds;

/** Notches above this are not heard, in hertz: the way is not late then. */
export const HIGHEST_NULL = 20_000 as Hz;
