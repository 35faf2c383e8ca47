import type { Address } from '../rig/address.ts';
import type { Headroom } from '../solve/headroom.ts';
import type { Level } from '../solve/levels.ts';
import type { NoiseShare } from '../solve/noise.ts';
import type { Finding } from '../trace/findings/finding.ts';
import type { Path } from '../trace/path.ts';
import type { Stop } from '../trace/stops.ts';
import type { Db } from '../units/level.ts';
import type { Check, Claim } from './check.ts';

/** What was heard for a claim. */
export type Heard =
  | { readonly kind: 'level'; readonly level: Level }
  /** By how many ways each signal of the source arrives. */
  | { readonly kind: 'arrivals'; readonly counts: readonly SignalCount[] }
  /** Levels before and after the probe, and by how much the probe moved its control. */
  | { readonly kind: 'move'; readonly before: Level; readonly after: Level; readonly probeDb: Db }
  /** How many ways there are in all, and how many of them pass what was asked for. */
  | { readonly kind: 'ways'; readonly all: number; readonly through: number }
  | { readonly kind: 'loops'; readonly count: number }
  /** The stage with the least headroom; none where an unstable loop leaves no level, or nothing arrives anywhere. */
  | { readonly kind: 'headroom'; readonly least: Headroom | undefined }
  | { readonly kind: 'above-noise'; readonly level: Level; readonly noise: Level }
  /** All findings of the kind that was asked about. */
  | { readonly kind: 'findings'; readonly found: readonly Finding[] }
  /** There was nothing to move: the source comes in on no strip, or its control is closed. */
  | { readonly kind: 'no-probe' };

export interface SignalCount {
  readonly signal: string;
  readonly count: number;
}

/** Why it was heard so: the way, and the place on it that decides. */
export type Reason =
  /** It does not arrive. */
  | {
      readonly code: 'stops';
      readonly source: string;
      /** The place behind which it stops, where the source does arrive by other ways. */
      readonly after?: Address;
      readonly output: Address;
      readonly stop: Stop;
    }
  /** It arrives by this way. */
  | { readonly code: 'arrives'; readonly path: Path }
  /** This place on the way changes its level most. */
  | {
      readonly code: 'changes-most';
      readonly path: Path;
      readonly place: Address;
      readonly gain: Db;
    }
  /** Two ways part here, and meet again there. */
  | {
      readonly code: 'parts';
      readonly paths: readonly [Path, Path];
      readonly at: Address;
      readonly meets: Address;
    }
  /** This way passes the control that was moved. */
  | { readonly code: 'passes-probe'; readonly path: Path; readonly control: Address }
  /** This way does not pass the control that was moved: it leaves before it, or comes from elsewhere. */
  | {
      readonly code: 'misses-probe';
      readonly path: Path;
      readonly control: Address;
      /** The first place on this way that the moved control is not behind of; none when they never met. */
      readonly leavesAt: Address | undefined;
    }
  /** This way does not pass what it should, or passes what it should not. */
  | { readonly code: 'misses'; readonly path: Path; readonly stop: Address }
  | { readonly code: 'passes'; readonly path: Path; readonly stop: Address }
  /** It passes both, but the later one first. */
  | {
      readonly code: 'wrong-order';
      readonly path: Path;
      readonly first: Address;
      readonly second: Address;
    }
  /** These places feed one another. */
  | {
      readonly code: 'loop';
      readonly places: readonly Address[];
      readonly gain: Db;
      readonly stable: boolean;
    }
  /** This stage has the least headroom, and these tracks make half of its peaks, the loudest first. */
  | { readonly code: 'driven'; readonly by: Headroom; readonly loudest: readonly string[] }
  /** More of the noise at an output comes from this place than from any other. */
  | { readonly code: 'noise-from'; readonly output: Address; readonly most: NoiseShare }
  | { readonly code: 'finding'; readonly finding: Finding }
  /** The source comes in on no strip, or the control to be moved is closed. */
  | { readonly code: 'no-probe'; readonly source: string; readonly control: Address | undefined };

/** How a claim held against what is heard. */
export interface Judgement {
  readonly claim: Claim;
  readonly holds: boolean;
  readonly heard: Heard;
  /** Why, most telling first. Also when it holds: then the ways by which it does. */
  readonly reasons: readonly Reason[];
}

/** The result of one check. */
export interface CheckResult extends Judgement {
  readonly check: Check;
}

/** The result of a task. */
export interface Verdict {
  readonly results: readonly CheckResult[];
  /** Sum of the weights of the checks that were passed. */
  readonly score: number;
  /** Sum of all weights. */
  readonly of: number;
  /** Locked controls that do not stand where the task put them. Any of them fails the task. */
  readonly movedLocks: readonly Address[];
  readonly passed: boolean;
}
