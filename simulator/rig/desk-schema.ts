import * as z from 'zod/mini';
import { AUX_TAPS, clip, label, mark, noise, panLaw, slug, stereo } from './schema-fields.ts';

/** The format of a desk: its strips in signal order, auxes and subgroups. */

/** Stages that a strip can be made of. `pan` is a balance on a stereo strip. */
export const STRIP_STAGES = ['trim', 'polarity', 'insert', 'fader', 'mute', 'pan'] as const;
const stripStage = z.enum(STRIP_STAGES);

export const stripTypeSchema = z.strictObject({
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

export const deskSchema = z.strictObject({
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
