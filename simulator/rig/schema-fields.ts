import * as z from 'zod/mini';
import { PAN_LAWS } from '../units/pan.ts';

/** Fields that several parts of the format of a rig share. */

/** An id. */
export const slug = z
  .string()
  .check(
    z.regex(/^[a-z][a-z0-9-]*$/),
    z.maxLength(40),
    z.describe(
      'An id: lower-case letters, digits and hyphens, a letter first. Unique among its kin.',
    ),
  );
/** A name. */
export const label = z
  .string()
  .check(z.minLength(1), z.maxLength(60), z.describe('The name that a person reads.'));
/** What stands on a strip. */
export const mark = z
  .string()
  .check(z.minLength(1), z.maxLength(4), z.describe('What stands on the strip: 1, 2, R1.'));
/** Mono unless it says otherwise. */
export const stereo = z
  ._default(z.boolean(), false)
  .check(z.describe('Whether it has two sides, left and right.'));
/** Equal power unless it says otherwise. */
export const panLaw = z
  ._default(z.enum(PAN_LAWS), 'equal-power')
  .check(
    z.describe(
      'How a pan divides a signal: −3.01, −4.52 or −6.02 dB at the centre, in this order.',
    ),
  );

/** As good as none: no sum of these comes near anything that a desk does. */
export const LEAST_NOISE = -200;
const NOISE_UNIT = 'in dBu RMS over a bandwidth of 20 kHz';
/** A noise in dBu, by what makes it. */
export const noise = (what: string) =>
  z.number().check(z.gte(LEAST_NOISE), z.lte(0), z.describe(`Noise that ${what}, ${NOISE_UNIT}.`));
/** A clip level in dBu, by what clips. */
export const clip = (what: string) =>
  z.number().check(z.gte(-20), z.lte(40), z.describe(`The largest sine that ${what}, in dBu RMS.`));

/** What a device can be. */
export const DEVICE_KINDS = ['gain', 'compressor', 'equaliser', 'delay', 'reverb'] as const;

/** Where the sends of an aux or of a bus in the box are taken: fixed before the fader, fixed after it, or switchable one by one. */
export const AUX_TAPS = ['pre', 'post', 'switchable'] as const;

/** A latency in milliseconds; none unless it says otherwise. */
export const latencyMs = z._default(z.number().check(z.gte(0), z.lte(1000)), 0);
