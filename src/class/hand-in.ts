import * as z from 'zod/mini';
import { checkDocument, InputError, readJson } from '../../simulator/index.ts';
import { count, digest, line, moment, revision, seed, share, slug, span } from './fields.ts';
import { type FileFormat, refuseOtherFormat } from './file-format.ts';
import {
  interactionSchema,
  logEventSchema,
  MOST_EVENTS,
  MOST_INTERACTIONS,
} from './interaction.ts';
import { learnerCodeSchema } from './learner-code.ts';

/** How a hand-in begins. */
export const HAND_IN = {
  format: 'tap-and-sum/hand-in',
  version: 1,
  name: 'a hand-in',
} as const satisfies FileFormat;

const handedItemSchema = z.strictObject({
  id: slug,
  /** Revision of the task that was worked on; nothing for a drill. */
  revision: z.optional(revision),
  /** Seed of the drill that was worked on. */
  seed: z.optional(seed),
  /**
   * The last answer, by `answerSchema` of the simulator; left out when there is none. It is read when it is
   * marked, so that one that cannot be read costs its item and not the whole hand-in.
   */
  answer: z.optional(z.unknown()),
  /** What the learner's page made of it. */
  claimed: z.optional(share),
  attempts: count,
  hints: count,
  /** How long the item was open, in milliseconds. */
  spentMs: span,
  interactions: z._default(z.array(interactionSchema).check(z.maxLength(MOST_INTERACTIONS)), []),
});

/** The format of a hand-in. No number in it counts: everything is simulated and marked again. */
export const handInSchema = z.strictObject({
  format: z.literal(HAND_IN.format),
  version: z.literal(HAND_IN.version),
  /** The assignment that was done, and what it said. */
  assignment: z.strictObject({ id: slug, digest }),
  /** Version of the course, and of the simulator, that it was done with. */
  course: digest,
  simulator: revision,
  learner: learnerCodeSchema,
  name: z.optional(line(120)),
  startedAt: moment,
  handedInAt: moment,
  items: z.array(handedItemSchema).check(z.maxLength(60)),
  events: z._default(z.array(logEventSchema).check(z.maxLength(MOST_EVENTS)), []),
});

/** What a learner gives back. */
export type HandIn = z.output<typeof handInSchema>;
export type HandedItem = HandIn['items'][number];

/**
 * Reads a hand-in, as a file from a stranger.
 *
 * @param file its name, for messages. @throws InputError when it is none, or has an item twice.
 */
export function parseHandIn(file: string, text: string): HandIn {
  const document = readJson(file, text);
  refuseOtherFormat(document, HAND_IN);
  const handIn = checkDocument(document, handInSchema);
  const ids = handIn.items.map(({ id }) => id);
  const twice = ids.findIndex((id, index) => ids.indexOf(id) < index);
  if (twice < 0) return handIn;
  throw new InputError(file, [
    { place: `items[${twice}].id`, expected: 'each item once', found: `"${ids[twice]}" twice` },
  ]);
}

/** A hand-in as the text of a file; {@link parseHandIn} gives the same back. */
export const handInText = (handIn: HandIn): string => `${JSON.stringify(handIn, null, 1)}\n`;
