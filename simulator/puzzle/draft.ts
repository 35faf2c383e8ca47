import { type Board, withValues } from '../board/board.ts';
import type { Check, Claim } from '../grade/check.ts';
import type { Task } from '../grade/grade.ts';
import { placeNamed } from '../grade/hearing.ts';
import type { Address } from '../rig/address.ts';
import type { Rig } from '../rig/schema.ts';
import { levelOf } from '../solve/levels.ts';
import { simulate } from '../solve/simulate.ts';

/** What somebody asks for in a drill. Its sentence is written elsewhere. */
export interface Wish {
  readonly code: WishCode;
  /** Whom it is about. */
  readonly sources: readonly string[];
  /** The device, group, strip, output or place that it is about. */
  readonly at: Address;
  /** More of them, where it is about several in order. */
  readonly also?: readonly Address[];
  /** The band of levels that it asks for, in dBu. */
  readonly band?: readonly [least: number, most: number];
}

export const WISH_CODES = [
  'inserted',
  'beside',
  'stays-out',
  'holds-still',
  'effect-follows',
  'as-loud',
  'own-strip',
  'cue-mix',
  'not-in-cue',
  'in-order',
  'past-plugin',
  'by-plugin',
  'no-feedback',
  'grouped',
  'in-parallel',
  'pair',
  'centre',
  'at-level',
  'in-step',
  'alone',
  'alone-with-effect',
  'everyone',
] as const;
export type WishCode = (typeof WISH_CODES)[number];

/** What stands wrong at the start of a drill. Its sentence is written elsewhere. */
export interface DrillFault {
  readonly code: FaultCode;
  readonly source: string;
  /** The control, jack or device where it is. */
  readonly at: Address;
}

export const FAULT_CODES = [
  'return-missing',
  'send-missing',
  'returned-elsewhere',
  'hung-on-send',
  'effect-inserted',
  'send-closed',
  'send-level',
  'effect-unplugged',
  'return-unplugged',
  'return-muted',
  'return-off-main',
  'taken-after',
  'taken-before',
  'fixed-rail',
  'output-shared',
  'output-nowhere',
  'outputs-swapped',
  'output-spare',
  'output-pair',
  'mix-shares',
  'feed-missing',
  'feed-only',
  'bus-shares',
  'order-swapped',
  'link-missing',
  'plugin-on',
  'plugin-off',
  'feeds-itself',
  'group-feeds-itself',
  'main-feeds-itself',
  'main-left-on',
  'assign-off',
  'second-group',
  'group-off-main',
  'group-down',
  'group-muted',
  'parallel-only',
  'pan-centre',
  'pans-swapped',
  'pan-aside',
  'pair-on-one',
  'pair-shifted',
  'trim-off',
  'fader-off',
  'device-off',
  'open-plug',
  'normal-broken',
  'cross-patched',
  'inverted',
  'late',
  'muted',
  'solo-left',
  'solo-mode',
  'solo-missing',
  'not-safe',
] as const;
export type FaultCode = (typeof FAULT_CODES)[number];

/** A level claim whose band is laid around what is heard when all is right. */
export interface AroundClaim {
  readonly kind: 'around';
  readonly source: string;
  readonly output: string;
  /** How far it may be off to either side, in dB. */
  readonly by: number;
}

/** A drill before it is proven. */
export interface Draft extends Task {
  /** Where all is as it should be: one solution, which need not be the shortest. */
  readonly right: Board;
  readonly follow: string;
  readonly wishes: readonly Wish[];
  readonly faults: readonly DrillFault[];
}

type AskedWish = Omit<Wish, 'band'>;

/** A drill while it is drawn: what is right, what is asked for, then what is put wrong. */
export class Sketch {
  readonly rig: Rig;
  readonly #right: Record<Address, Board[string]> = {};
  readonly #wishes: { wish: AskedWish; claims: readonly (Claim | AroundClaim)[] }[] = [];
  readonly #faults: DrillFault[] = [];
  readonly #wrong: Record<Address, Board[string]> = {};

  constructor(rig: Rig) {
    this.rig = rig;
  }

  /** Where controls stand when all is right, besides the defaults of the rig. */
  stand(values: Board): void {
    Object.assign(this.#right, values);
  }

  /** What is asked for, and what has to be heard for it. */
  ask(wish: AskedWish, ...claims: readonly (Claim | AroundClaim)[]): void {
    this.#wishes.push({ wish, claims });
  }

  /** Whether none of these controls was put wrong before. */
  isFree(values: Board): boolean {
    return Object.keys(values).every((address) => !(address in this.#wrong));
  }

  /** Puts something wrong. @returns whether it did: what was put wrong before at the same control stays. */
  spoil(code: FaultCode, source: string, at: Address, values: Board): boolean {
    if (!this.isFree(values)) return false;
    Object.assign(this.#wrong, values);
    this.#faults.push({ code, source, at });
    return true;
  }

  /** @param open patterns of what may be moved. */
  draft(follow: string, open: readonly string[]): Draft {
    const { rig } = this;
    const right = withValues(rig, {}, this.#right);
    const solution = simulate({ rig, board: right });
    const settled = (claim: Claim | AroundClaim): Claim => {
      if (claim.kind !== 'around') return claim;
      const { source, output, by } = claim;
      const level = levelOf(solution, source, placeNamed(rig, output)) ?? 0;
      const [minDbu, maxDbu] = [half(level - by), half(level + by)];
      return { kind: 'reaches', source, output, minDbu, maxDbu };
    };
    const checks: Check[] = [];
    const wishes = this.#wishes.map(({ wish, claims }): Wish => {
      const asked = claims.map(settled);
      for (const claim of asked) {
        checks.push({ id: `${wish.code}-${checks.length + 1}`, weight: 1, claim });
      }
      const level = asked.find((claim) => claim.kind === 'reaches');
      return level ? { ...wish, band: [level.minDbu, level.maxDbu] } : wish;
    });
    const start = withValues(rig, right, this.#wrong);
    return { rig, right, start, open, checks, follow, wishes, faults: this.#faults };
  }
}

/** To half a decibel. */
const half = (level: number): number => Math.round(level * 2) / 2;
