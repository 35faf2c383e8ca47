import * as z from 'zod/mini';
import { FINDING_CODES } from '../trace/findings/finding.ts';

/**
 * What a task can ask for. Every check is about what is heard, or would be measured, never about where a
 * control stands.
 */

const name = z.string().check(z.minLength(1), z.maxLength(160));
const source = name.check(z.describe('A track (both sides where it is stereo), or one signal.'));
const output = name.check(z.describe('An output of the rig by id, or any place by address.'));
const stop = name.check(z.describe('A place or an owner on the way: rack.comp, desk.ch3.fader.'));
const level = z.number().check(z.gte(-120), z.lte(60));
const leastDb = z.number().check(z.gte(0), z.lte(140));
const toleranceDb = z._default(
  z.number().check(z.gt(0), z.lte(12), z.describe('How far it may be off, in dB.')),
  0.1,
);

/** A control that is moved to hear what follows it: by its address, or as that of the strip a source comes in on. */
export const probeSchema = z.union([
  z.strictObject({
    move: z.enum(['fader', 'trim']),
    of: source,
    byDb: z._default(z.number().check(z.gte(-40), z.lte(40)), -10),
  }),
  z.strictObject({
    control: name,
    byDb: z._default(z.number().check(z.gte(-40), z.lte(40)), -10),
  }),
]);
export type Probe = z.output<typeof probeSchema>;

/** What each kind of check asks. */
export const claimSchema = z.discriminatedUnion('kind', [
  /** The level of a source at an output lies within a band. */
  z.strictObject({ kind: z.literal('reaches'), source, output, minDbu: level, maxDbu: level }),
  /** A source is silent at an output. */
  z.strictObject({ kind: z.literal('absent'), source, output }),
  /** A source arrives by one way, not counting what reverbs make of it. */
  z.strictObject({ kind: z.literal('once'), source, output }),
  /** A source is heard and does not move with the probe. */
  z.strictObject({ kind: z.literal('steady'), source, output, probe: probeSchema, toleranceDb }),
  /** A source is heard and moves with the probe, dB for dB. */
  z.strictObject({ kind: z.literal('follows'), source, output, probe: probeSchema, toleranceDb }),
  /** Every way of a source to an output passes these, in this order. */
  z.strictObject({
    kind: z.literal('passes'),
    source,
    output,
    through: z.array(stop).check(z.minLength(1), z.maxLength(12)),
  }),
  /** No way of a source to an output passes this. */
  z.strictObject({ kind: z.literal('avoids'), source, output, past: stop }),
  /** A source arrives both past this and through it. */
  z.strictObject({ kind: z.literal('dry-and-through'), source, output, through: stop }),
  /** No loop is closed anywhere. */
  z.strictObject({ kind: z.literal('no-loop') }),
  /** Peaks stay so far below the clip level, at one place or at every stage of the setup. */
  z.strictObject({
    kind: z.literal('headroom'),
    at: z.optional(
      name.check(z.describe('An output by id, or a place by address; all when left out.')),
    ),
    minDb: leastDb,
  }),
  /** The level of a source at an output stands so far above the noise there. */
  z.strictObject({ kind: z.literal('above-noise'), source, output, minDb: leastDb }),
  /** An engineer would point at nothing of this kind; when it is left out, at no fault of any kind. */
  z.strictObject({
    kind: z.literal('no-finding'),
    code: z.optional(z.enum(FINDING_CODES)),
  }),
]);
export type Claim = z.output<typeof claimSchema>;
export type ClaimOf<Kind extends Claim['kind']> = Extract<Claim, { kind: Kind }>;

/** One check of a task: a claim with an id and a weight. */
export const checkSchema = z.strictObject({
  id: z.string().check(z.regex(/^[a-z][a-z0-9-]*$/), z.maxLength(60)),
  weight: z._default(z.int().check(z.gte(1), z.lte(100)), 1),
  claim: claimSchema,
});
export type Check = z.output<typeof checkSchema>;
