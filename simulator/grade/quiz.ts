import * as z from 'zod/mini';
import type { Board } from '../board/board.ts';
import { fileBoardSchema, type Rig } from '../rig/schema.ts';
import { claimSchema, probeSchema } from './check.ts';
import { type RigFinder, shortWords, TaskReader, taskHead, taskId, words } from './task-file.ts';

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
  /** The source that is lit in the drawing. */
  follow: taskId,
  /** Where the desk stands. */
  start: z._default(fileBoardSchema, {}),
  /** Said after the answer, whichever it was. */
  explain: words,
};

/** Options are statements; the key is the one that holds. */
const statementsSchema = z.strictObject({
  kind: z.literal('statements'),
  ...questionHead,
  options: z
    .array(z.strictObject({ id: taskId, text: shortWords, claim: claimSchema, reason: words }))
    .check(z.minLength(2), z.maxLength(6)),
});

/**
 * Options are numbers. Each is what the simulator computes, with the changes that a mistaken idea would
 * amount to; the key is the option without changes.
 */
const numberSchema = z.strictObject({
  kind: z.literal('number'),
  ...questionHead,
  quantity: quantitySchema,
  options: z
    .array(z.strictObject({ id: taskId, asIf: z.optional(fileBoardSchema), reason: words }))
    .check(z.minLength(2), z.maxLength(6)),
});

/** The format of a quiz. No key is written down: it is what the simulator says. */
export const quizSchema = z.strictObject({
  ...taskHead,
  questions: z
    .array(z.discriminatedUnion('kind', [statementsSchema, numberSchema]))
    .check(z.minLength(1), z.maxLength(12)),
});

type QuestionData = z.output<typeof quizSchema>['questions'][number];

/** A question whose boards have been checked. */
export type Question = QuestionData & { readonly rig: Rig; readonly board: Board };

export interface Quiz {
  readonly id: string;
  readonly revision: number;
  readonly title: string;
  readonly rig: Rig;
  readonly questions: readonly Question[];
}

/** Reads a quiz. @throws InputError with every problem. */
export function parseQuiz(file: string, text: string, findRig: RigFinder): Quiz {
  const reader = new TaskReader(file, text, quizSchema, findRig);
  const { data, rig } = reader;
  reader.shown(data.show);
  reader.uniqueIds(['questions'], data.questions);
  const questions = data.questions.map((question, index): Question => {
    const at = ['questions', index];
    const board = reader.board([...at, 'start'], {}, question.start);
    reader.source([...at, 'follow'], question.follow);
    reader.uniqueIds([...at, 'options'], question.options);
    if (question.kind === 'statements') {
      question.options.forEach(({ claim }, option) => {
        reader.claim([...at, 'options', option, 'claim'], claim);
      });
    } else {
      const { quantity } = question;
      reader.claim(
        [...at, 'quantity'],
        quantity.kind === 'level'
          ? { ...quantity, kind: 'absent' }
          : { ...quantity, kind: 'follows', toleranceDb: 0.1 },
      );
      question.options.forEach(({ asIf }, option) => {
        if (asIf) reader.board([...at, 'options', option, 'asIf'], board, asIf);
      });
    }
    return { ...question, rig, board };
  });
  reader.finish();
  return { ...data, rig, questions };
}
