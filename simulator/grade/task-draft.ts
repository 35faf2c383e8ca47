import * as z from 'zod/mini';
import { checkDocument } from '../file/check-document.ts';
import { fileBoardSchema } from '../rig/schema.ts';
import { type Answer, answerSchema } from './answer.ts';

const hintsShown = z.int().check(z.gte(0), z.lte(20));
const isAided = z._default(z.boolean(), false);
const hasPassed = z._default(z.boolean(), false);

/** How far a task is, as it is kept: what somebody goes on from. */
export interface TaskDraft {
  readonly answer: Answer | undefined;
  readonly hintsShown: number;
  /** Whether a solution was shown since it last stood as at the start. */
  readonly isAided: boolean;
  /** Whether it was passed since then. */
  readonly hasPassed: boolean;
}

const draftSchema = z.strictObject({
  answer: z.optional(answerSchema),
  hintsShown,
  isAided,
  hasPassed,
});

/** What was written of a scenario before there was one form for all kinds of task. */
const boardSchema = z.strictObject({ board: fileBoardSchema, hintsShown, isAided, hasPassed });
/** What was written of a question then. */
const chosenSchema = z.strictObject({
  chosen: z.optional(z.string().check(z.maxLength(60))),
  hasPassed,
});

/** The draft of a task as text. */
export const taskDraftText = ({ answer, hintsShown, isAided, hasPassed }: TaskDraft): string =>
  JSON.stringify({ answer, hintsShown, isAided, hasPassed });

/** Reads a draft, of whatever form it was once written in. @throws InputError for one that no form fits. */
export function readTaskDraft(where: string, data: unknown): TaskDraft {
  const document = { file: where, data, lineOf: () => undefined };
  const keys = Object.keys(Object(data));
  if (keys.includes('board')) {
    const { board, ...draft } = checkDocument(document, boardSchema);
    return { ...draft, answer: { kind: 'board', board } };
  }
  if (keys.includes('hintsShown')) {
    const { answer, ...draft } = checkDocument(document, draftSchema);
    return { ...draft, answer };
  }
  const { chosen, ...draft } = checkDocument(document, chosenSchema);
  const answer = chosen === undefined ? undefined : ({ kind: 'option', option: chosen } as const);
  return { ...draft, answer, hintsShown: 0, isAided: false };
}
