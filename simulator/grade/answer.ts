import * as z from 'zod/mini';
import { fileBoardSchema } from '../rig/schema.ts';
import { taskId } from './task-file.ts';

/** What somebody gives to a task, as files and drafts write it. Each kind of task takes one kind of answer. */
export const answerSchema = z.discriminatedUnion('kind', [
  /** To a scenario or a drill: where the controls stand that are off their defaults. */
  z.strictObject({ kind: z.literal('board'), board: fileBoardSchema }),
  /** To a question with options: the id of the one that was chosen. */
  z.strictObject({ kind: z.literal('option'), option: taskId }),
]);
export type Answer = z.output<typeof answerSchema>;
export type AnswerOf<Kind extends Answer['kind']> = Extract<Answer, { kind: Kind }>;
