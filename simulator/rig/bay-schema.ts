import * as z from 'zod/mini';
import { label, slug } from './schema-fields.ts';

/** The format of a patchbay: rows of points, each a jack that comes out above one that goes in. */

/** What a row does while nothing is plugged: a plug in either jack breaks it, one in the bottom jack alone, or nothing passes. */
export const ROW_KINDS = ['full', 'half', 'open'] as const;

const jack = z.optional(z.string().check(z.minLength(1), z.maxLength(160)));

const pointSchema = z.strictObject({
  top: jack.check(z.describe('The output jack that comes out at the top jack of the point.')),
  bottom: jack.check(z.describe('The input jack that the bottom jack of the point goes into.')),
});

const rowSchema = z.strictObject({
  id: slug,
  label,
  kind: z
    .enum(ROW_KINDS)
    .check(
      z.describe(
        'full: the top feeds the bottom until a plug is in either. half: until one is in the bottom; one in the top splits the signal. open: only by cords.',
      ),
    ),
  points: z
    .array(pointSchema)
    .check(
      z.minLength(1),
      z.maxLength(96),
      z.describe('Its points from left to right: 1, 2 and so on. In an open row one jack will do.'),
    ),
});

const multSchema = z.strictObject({
  id: slug,
  label,
  outputs: z
    .int()
    .check(z.gte(2), z.lte(8), z.describe('How many output jacks it has: out1, out2 and so on.')),
});

const ohms = (usual: number, least: number, what: string) =>
  z._default(z.number().check(z.gte(least), z.lte(1e6), z.describe(`${what}, in ohms.`)), usual);

export const baySchema = z.strictObject({
  rows: z
    ._default(z.array(rowSchema).check(z.maxLength(32)), [])
    .check(z.describe('Rows of points. Each jack of the room stands at one point at most.')),
  mults: z
    ._default(z.array(multSchema).check(z.maxLength(32)), [])
    .check(
      z.describe(
        'Passive splitters: what goes in at bay.ID.in comes out at bay.ID.out1 and so on.',
      ),
    ),
  outputOhms: ohms(100, 0, 'Impedance of the output jacks of the room'),
  inputOhms: ohms(
    10_000,
    1,
    'Impedance of the input jacks. What feeds several of them is loaded by all; levels are those into one',
  ),
});
