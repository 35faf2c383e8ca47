import * as z from 'zod/mini';
import { baySchema } from './bay-schema.ts';
import {
  type boxBusSchema,
  boxSchema,
  type captureSchema,
  converterSchema,
  type pluginSchema,
  type trackSchema,
} from './box-schema.ts';
import {
  deskSchema,
  type SOLO_MODES,
  type STRIP_STAGES,
  type stripTypeSchema,
} from './desk-schema.ts';
import { clip, DEVICE_KINDS, label, noise, slug, stereo } from './schema-fields.ts';

/**
 * The format of a rig: what is on the floor. It says which things exist and in which order a signal
 * meets them; where their controls stand is the board's business.
 */

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
  bay: z
    .optional(baySchema)
    .check(
      z.describe(
        'The patchbay, between what comes out and what goes in. Left out, there are only cords and the half-normals of inserts.',
      ),
    ),
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

/** What exists: the box, the converter, the desk, the rack, the bay and the outputs. */
export type Rig = z.output<typeof rigSchema>;
export type Track = z.output<typeof trackSchema>;
export type BoxBus = z.output<typeof boxBusSchema>;
export type Plugin = z.output<typeof pluginSchema>;
export type Capture = z.output<typeof captureSchema>;
export type Strip = Rig['desk']['strips'][number];
export type StripType = z.output<typeof stripTypeSchema>;
export type StripStage = (typeof STRIP_STAGES)[number];
export type Subgroup = Rig['desk']['subgroups'][number];
export type SoloMode = (typeof SOLO_MODES)[number];
export type Aux = Rig['desk']['auxes'][number];
export type Device = z.output<typeof deviceSchema>;
export type Bay = z.output<typeof baySchema>;
export type BayRow = Bay['rows'][number];
export type Mult = Bay['mults'][number];
export type Output = z.output<typeof outputSchema>;
export type FileBoard = z.output<typeof fileBoardSchema>;
