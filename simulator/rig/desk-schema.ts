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
      pre: stripStage.check(
        z.describe(
          'The stage that a send before the fader is taken behind; it stands before the fader.',
        ),
      ),
      post: stripStage.check(
        z.describe(
          'The stage that a send after the fader is taken behind: the fader, or a later one.',
        ),
      ),
    })
    .check(z.describe('After which stage a send is taken: before the fader, and after it.')),
  directOut: z
    .optional(stripStage)
    .check(
      z.describe(
        'The stage after which its direct output is taken: a jack of its own. Left out, it has none.',
      ),
    ),
  auxes: z
    .optional(z.array(slug).check(z.maxLength(32)))
    .check(z.describe('Ids of the auxes that it has sends to; left out, all.')),
  assigns: z
    .optional(z.array(slug).check(z.maxLength(33)))
    .check(
      z.describe('Ids of the subgroups, and main, that it can be assigned to; left out, all.'),
    ),
});

const deskNoiseSchema = z.strictObject({
  line: z._default(
    noise('the amplifier of a line input adds, behind its trim where the strip has one'),
    -95,
  ),
  fader: z._default(
    noise(
      'the amplifier behind each fader, of strips and buses, behind each aux master and behind the level of the control room adds',
    ),
    -100,
  ),
  bus: z._default(
    noise(
      'the summing amplifier of a bus has by itself: it comes out N + 1 times with N strips or subgroups assigned to the bus, or with N strips that have a send to the aux',
    ),
    -115,
  ),
});

/** What a subgroup takes of what is assigned to it. */
export const SUBGROUP_SIDES = ['both', 'left', 'right'] as const;

/** What a solo switch does. */
export const SOLO_MODES = ['in-place', 'pfl', 'afl'] as const;

const subgroupSchema = z.strictObject({
  id: slug,
  label,
  takes: z
    ._default(z.enum(SUBGROUP_SIDES), 'both')
    .check(
      z.describe(
        'Which sides of the strips come to it: both make it stereo; with left or right it is mono, and pans choose between two such.',
      ),
    ),
  main: z
    ._default(z.boolean(), true)
    .check(
      z.describe(
        'Whether it can be assigned to the main bus: a mono one to its left, its right or both. One that cannot leaves by its jacks alone.',
      ),
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
        inline: z
          .optional(slug)
          .check(
            z.describe(
              'Id of another strip, whose second path this one is, as on an in-line desk. It is fed from its own jack or by what a send after the fader of the first path takes, and the two can swap their faders.',
            ),
          ),
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
    ._default(z.array(subgroupSchema).check(z.maxLength(32)), [])
    .check(z.describe('Each has an insert, a fader, a mute, output jacks, and mostly an assign.')),
  solo: z
    .optional(z.array(z.enum(SOLO_MODES)).check(z.minLength(1), z.maxLength(SOLO_MODES.length)))
    .check(
      z.describe(
        'What its solo switches can do: in-place closes the mutes of all strips that are neither soloed nor solo-safe; pfl and afl listen in the control room, where a send before the fader is taken or after all stages. Where one of these is there, auxes and subgroups have solo switches too: in every mode one listens to them after all their stages, and they cut nothing. With more than one of them there is a switch between them; the first is the default. Left out, it has no solo.',
      ),
    ),
  controlRoom: z
    .optional(
      z.strictObject({
        inputs: z
          ._default(z.array(z.strictObject({ id: slug, label })).check(z.maxLength(8)), [])
          .check(z.describe('Stereo inputs that one can listen to in place of the main bus.')),
      }),
    )
    .check(
      z.describe(
        'What one listens with at the desk: all that is soloed to be listened to, else the main bus after its fader or an input; a mono switch, which gives half of each side to both; and a level.',
      ),
    ),
});
