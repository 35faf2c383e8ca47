import * as z from 'zod/mini';
import { PAN_LAWS } from '../units/pan.ts';

/**
 * The format of a rig: what is on the floor. It says which things exist and in which order a signal
 * meets them; where their controls stand is the board's business.
 */

const slug = z
  .string()
  .check(
    z.regex(/^[a-z][a-z0-9-]*$/),
    z.maxLength(40),
    z.describe(
      'An id: lower-case letters, digits and hyphens, a letter first. Unique among its kin.',
    ),
  );
const label = z
  .string()
  .check(z.minLength(1), z.maxLength(60), z.describe('The name that a person reads.'));
const mark = z
  .string()
  .check(z.minLength(1), z.maxLength(4), z.describe('What stands on the strip: 1, 2, R1.'));
const stereo = z
  ._default(z.boolean(), false)
  .check(z.describe('Whether it has two sides, left and right.'));
const panLaw = z
  ._default(z.enum(PAN_LAWS), 'equal-power')
  .check(
    z.describe(
      'How a pan divides a signal: −3.01, −4.52 or −6.02 dB at the centre, in this order.',
    ),
  );

/** As good as none: no sum of these comes near anything that a desk does. */
const LEAST_NOISE = -200;
const NOISE_UNIT = 'in dBu RMS over a bandwidth of 20 kHz';
const noise = (what: string) =>
  z.number().check(z.gte(LEAST_NOISE), z.lte(0), z.describe(`Noise that ${what}, ${NOISE_UNIT}.`));
const clip = (what: string) =>
  z.number().check(z.gte(-20), z.lte(40), z.describe(`The largest sine that ${what}, in dBu RMS.`));

/** What a device can be. */
export const DEVICE_KINDS = ['gain', 'compressor', 'equaliser', 'delay', 'reverb'] as const;

/** Where the sends of an aux or of a bus in the box are taken: fixed before the fader, fixed after it, or switchable one by one. */
export const AUX_TAPS = ['pre', 'post', 'switchable'] as const;

const latencyMs = z._default(z.number().check(z.gte(0), z.lte(1000)), 0);

const pluginSchema = z.strictObject({
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

const trackSchema = z.strictObject({
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

const boxBusSchema = z.strictObject({
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

const captureSchema = z.strictObject({ id: slug, label, stereo });

const boxSchema = z.strictObject({
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
        'Whether the box makes up for the latency of its plug-ins, so that all that leaves it arrives at the converter together. What comes back from outside stays late.',
      ),
    ),
  panLaw,
});

const converterSchema = z.strictObject({
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

/** Stages that a strip can be made of. `pan` is a balance on a stereo strip. */
export const STRIP_STAGES = ['trim', 'polarity', 'insert', 'fader', 'mute', 'pan'] as const;
const stripStage = z.enum(STRIP_STAGES);

const stripTypeSchema = z.strictObject({
  id: slug,
  stereo,
  stages: z
    .array(stripStage)
    .check(
      z.minLength(1),
      z.maxLength(STRIP_STAGES.length),
      z.describe('The stages in signal order, each at most once.'),
    ),
  taps: z
    .strictObject({
      pre: stripStage.check(z.describe('The stage before a send that is taken before the fader.')),
      post: stripStage.check(z.describe('The stage before a send that is taken after the fader.')),
    })
    .check(z.describe('After which stage a send is taken: before the fader, and after it.')),
});

const deskNoiseSchema = z.strictObject({
  line: z._default(noise('the line input of a strip adds'), -95),
  fader: z._default(
    noise('the amplifier behind each fader, of strips and buses, and behind each aux master adds'),
    -100,
  ),
  bus: z._default(
    noise(
      'the summing amplifier of a bus has by itself: it comes out N + 1 times with N strips or subgroups assigned to the bus',
    ),
    -115,
  ),
});

const deskSchema = z.strictObject({
  panLaw,
  noise: z.prefault(deskNoiseSchema, {}).check(z.describe('What its stages add of their own.')),
  clipDbu: z._default(clip('passes each of its stages'), 24),
  stripTypes: z
    .array(stripTypeSchema)
    .check(z.minLength(1), z.maxLength(8), z.describe('What a strip can be made of.')),
  strips: z
    .array(
      z.strictObject({
        id: slug,
        mark,
        label,
        type: slug.check(z.describe('Id of its strip type.')),
      }),
    )
    .check(z.minLength(1), z.maxLength(256), z.describe('The strips, from left to right.')),
  auxes: z
    ._default(
      z
        .array(
          z.strictObject({
            id: slug,
            label,
            tap: z
              .enum(AUX_TAPS)
              .check(z.describe('Where sends are taken: fixed, or switchable on each strip.')),
          }),
        )
        .check(z.maxLength(32)),
      [],
    )
    .check(z.describe('Aux buses. Every strip has a send to each.')),
  subgroups: z
    ._default(z.array(z.strictObject({ id: slug, label })).check(z.maxLength(32)), [])
    .check(
      z.describe(
        'Each is a stereo pair with an insert, a fader, a mute and an assign to the main bus.',
      ),
    ),
});

/** The nominal level that a device is made for: +4 dBu, or −10 dBV. */
export const DEVICE_LEVELS = ['plus4', 'minus10'] as const;

const deviceSchema = z.strictObject({
  id: slug,
  label,
  kind: z.enum(DEVICE_KINDS).check(z.describe('What it does.')),
  inputs: z
    ._default(z.union([z.literal(1), z.literal(2)]), 1)
    .check(z.describe('How many input jacks it has.')),
  outputs: z
    ._default(z.union([z.literal(1), z.literal(2)]), 1)
    .check(z.describe('How many output jacks: as many as inputs; a reverb may have more.')),
  level: z
    ._default(z.enum(DEVICE_LEVELS), 'plus4')
    .check(
      z.describe(
        'Nominal level: +4 dBu, or −10 dBV, which has a pad of 11.78 dB before it and as much gain behind it.',
      ),
    ),
  noiseDbu: z.optional(noise('it adds at its own output; −92, of a −10 dBV device −98')),
  clipDbu: z.optional(clip('passes its own input and output; 22, of a −10 dBV device 12')),
});

const outputSchema = z.strictObject({
  id: slug,
  label,
  stereo,
  noiseDbu: z.optional(noise('what stands here adds; none where it is left out')),
  clipDbu: z.optional(clip('passes what stands here; that of 0 dBFS where it is left out')),
});

/** The value of a control in a file: a number, `-inf` for closed, true or false, or the name of an option or jack. */
export const fileValueSchema = z.union([
  z.number(),
  z.boolean(),
  z.string().check(z.maxLength(80)),
]);
export const fileBoardSchema = z.record(z.string().check(z.maxLength(160)), fileValueSchema);

export const rigSchema = z.strictObject({
  id: slug,
  label,
  box: boxSchema.check(
    z.describe('The computer side: tracks, buses, capture tracks, and a main mix of its own.'),
  ),
  converter: converterSchema.check(z.describe('Where the box becomes analog.')),
  desk: deskSchema.check(z.describe('Strips, auxes, subgroups, and the main bus.')),
  rack: z._default(z.array(deviceSchema).check(z.maxLength(64)), []).check(z.describe('Outboard.')),
  outputs: z
    .array(outputSchema)
    .check(
      z.minLength(1),
      z.maxLength(64),
      z.describe('Where sound ends up: what is captured, and what somebody listens to.'),
    ),
  defaults: z
    ._default(fileBoardSchema, {})
    .check(
      z.describe(
        'Where controls and cords stand when the room is as one finds it, where that is not the usual default.',
      ),
    ),
});

/** What exists: the box, the converter, the desk, the rack and the outputs. */
export type Rig = z.output<typeof rigSchema>;
export type Track = z.output<typeof trackSchema>;
export type BoxBus = z.output<typeof boxBusSchema>;
export type Plugin = z.output<typeof pluginSchema>;
export type Capture = z.output<typeof captureSchema>;
export type Strip = Rig['desk']['strips'][number];
export type StripType = z.output<typeof stripTypeSchema>;
export type StripStage = (typeof STRIP_STAGES)[number];
export type Aux = Rig['desk']['auxes'][number];
export type Device = z.output<typeof deviceSchema>;
export type Output = z.output<typeof outputSchema>;
export type FileBoard = z.output<typeof fileBoardSchema>;
