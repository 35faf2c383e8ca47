import * as z from 'zod/mini';
import {
  AUX_TAPS,
  DEVICE_KINDS,
  LEAST_NOISE,
  label,
  latencyMs,
  panLaw,
  slug,
  stereo,
} from './schema-fields.ts';

/** The format of the box and its converter. */

export const pluginSchema = z.strictObject({
  id: slug.check(z.describe('An id. Unique on its channel, and no name of another part of it.')),
  label,
  kind: z.enum(DEVICE_KINDS).check(z.describe('What it does: the kinds of the rack.')),
  latencyMs: latencyMs.check(z.describe('How much later its output comes, in milliseconds.')),
});
// What describes it stands inside the default: a default that is checked afterwards is one list for all.
const plugins = z._default(
  z
    .array(pluginSchema)
    .check(
      z.maxLength(16),
      z.describe(
        'Its plug-ins in signal order; they come before its fader, and are as wide as it is.',
      ),
    ),
  [],
);

export const trackSchema = z.strictObject({
  id: slug,
  label,
  levelDbfs: z
    .number()
    .check(
      z.gte(-120),
      z.lte(0),
      z.describe('RMS level of the recording, in dBFS; of each side where it is stereo.'),
    ),
  stereo,
  crestDb: z
    ._default(z.number().check(z.gte(0), z.lte(40)), 12)
    .check(
      z.describe(
        'By how much its peaks stand above its RMS level, in dB, both as dBFS has them: 0 for a sine.',
      ),
    ),
  plugins,
});

export const boxBusSchema = z.strictObject({
  id: slug,
  label,
  tap: z
    .optional(z.enum(AUX_TAPS))
    .check(
      z.describe(
        'Gives every track, and every bus before this one, a send to it, and says where sends are taken. Left out, there are no sends to it.',
      ),
    ),
  plugins,
});

export const captureSchema = z.strictObject({ id: slug, label, stereo });

export const boxSchema = z.strictObject({
  tracks: z
    .array(trackSchema)
    .check(z.minLength(1), z.maxLength(256), z.describe('The recordings that play.')),
  buses: z
    ._default(z.array(boxBusSchema).check(z.maxLength(64)), [])
    .check(z.describe('Stereo buses inside the box. One can feed those that stand after it.')),
  captures: z
    ._default(z.array(captureSchema).check(z.maxLength(64)), [])
    .check(
      z.describe(
        'Tracks that record what comes in at the converter. box.ID.in is where one listens to them.',
      ),
    ),
  compensates: z
    ._default(z.boolean(), false)
    .check(
      z.describe(
        'Whether the box makes up for the latency of its plug-ins, so that all that leaves it arrives at the converter together. What is assigned or fed counts, and every send that is not closed. What comes back from outside stays late.',
      ),
    ),
  panLaw,
});

export const converterSchema = z.strictObject({
  outputs: z
    .int()
    .check(z.gte(1), z.lte(256), z.describe('How many outputs there are: out1, out2 and so on.')),
  inputs: z
    ._default(z.int().check(z.gte(0), z.lte(256)), 0)
    .check(z.describe('How many inputs there are: in1, in2 and so on. Each is a jack.')),
  fullScaleDbu: z
    .number()
    .check(
      z.gte(-20),
      z.lte(40),
      z.describe('Alignment: the level in dBu that 0 dBFS comes out at. It clips there.'),
    ),
  noiseDbfs: z
    ._default(z.number().check(z.gte(LEAST_NOISE), z.lte(0)), -118)
    .check(
      z.describe(
        'Noise that each output and each input adds, in dBFS RMS over a bandwidth of 20 kHz.',
      ),
    ),
  latencyMs: latencyMs.check(
    z.describe('How long a signal takes through it, one way, in milliseconds; out and in alike.'),
  ),
});
