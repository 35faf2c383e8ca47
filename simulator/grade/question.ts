import * as z from 'zod/mini';
import type { Board } from '../board/board.ts';
import { fileBoardSchema, type Rig } from '../rig/schema.ts';
import { FINDING_CODES } from '../trace/findings/finding.ts';
import { MOST_OPTIONS } from './answer.ts';
import { claimSchema, probeSchema } from './check.ts';
import { shortWords, taskId, words } from './task-file.ts';

/** The kinds of question. No key is written in any of them: it is what the simulator says. */

/** A number that the simulator can compute: a level in dBu, or by how many dB it moves with a probe. */
const quantitySchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('level'), source: shortWords, output: shortWords }),
  z.strictObject({
    kind: z.literal('move'),
    source: shortWords,
    output: shortWords,
    probe: probeSchema,
  }),
]);
export type Quantity = z.output<typeof quantitySchema>;

const questionHead = {
  id: taskId,
  concept: taskId,
  ask: words,
  /** The source that it is about. */
  follow: taskId,
  /** Where the desk stands. */
  start: z._default(fileBoardSchema, {}),
  /** Said after the right answer. */
  explain: words,
};

/** What every option begins and ends with: a name of its own, and what is said to who takes it. */
const option = { id: taskId, reason: words };

/** Options of these many. */
const few = <T extends z.ZodMiniType>(one: T, least: number) =>
  z.array(one).check(z.minLength(least), z.maxLength(MOST_OPTIONS));

/** Choose a statement: the key is the one that holds. */
const statementsSchema = z.strictObject({
  kind: z.literal('statements'),
  ...questionHead,
  options: few(z.strictObject({ ...option, text: shortWords, claim: claimSchema }), 2),
});

/**
 * A number with the changes that a mistaken idea of it would amount to; the right one is without changes.
 * What stands in the option is what the simulator computes then.
 */
const idea = z.strictObject({ ...option, asIf: z.optional(fileBoardSchema) });

/** Choose a number. */
const numberSchema = z.strictObject({
  kind: z.literal('number'),
  ...questionHead,
  quantity: quantitySchema,
  options: few(idea, 2),
});

/** Say a number before it is shown. Options are not seen: they are what is said to a number like theirs. */
const predictSchema = z.strictObject({
  kind: z.literal('predict'),
  ...questionHead,
  quantity: quantitySchema,
  /** How far the number may be off, in dB: by default one step of a fader. */
  toleranceDb: z._default(z.number().check(z.gte(0.1), z.lte(3)), 0.5),
  options: few(idea, 1),
});

/** Say to which of these places the followed source comes. */
const outputsSchema = z.strictObject({
  kind: z.literal('outputs'),
  ...questionHead,
  options: few(z.strictObject({ ...option, output: shortWords }), 2),
});

/** Put these stops in the order in which the followed source meets them on its way. They are first shown as they stand in the file. */
const orderSchema = z.strictObject({
  kind: z.literal('order'),
  ...questionHead,
  /** Where the way leads. */
  output: shortWords,
  options: few(z.strictObject({ ...option, stop: shortWords }), 3),
});

/** Explain a fault: `ask` tells a symptom, and the key is the option whose finding the desk has. */
const explainSchema = z.strictObject({
  kind: z.literal('explain'),
  ...questionHead,
  options: few(
    z.strictObject({
      ...option,
      text: shortWords,
      finding: z.enum(FINDING_CODES),
      /** A place or an owner where one begins to mend it, when the kind alone does not tell the options apart. */
      at: z.optional(shortWords),
    }),
    2,
  ),
});

export const questionSchema = z.discriminatedUnion('kind', [
  statementsSchema,
  numberSchema,
  predictSchema,
  outputsSchema,
  orderSchema,
  explainSchema,
]);

export type QuestionData = z.output<typeof questionSchema>;
export type QuestionKind = QuestionData['kind'];

/** A question whose boards and names have been checked. */
export type Question = QuestionData & { readonly rig: Rig; readonly board: Board };
export type QuestionOf<Kind extends QuestionKind> = Extract<Question, { kind: Kind }>;
