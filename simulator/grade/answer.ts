import * as z from 'zod/mini';
import { fileBoardSchema } from '../rig/schema.ts';
import { taskId } from './task-file.ts';

/** The most options of a question. */
export const MOST_OPTIONS = 8;

const options = z.array(taskId).check(z.maxLength(MOST_OPTIONS));

/** What somebody gives to a task, as files and drafts write it. Each kind of task takes one kind of answer. */
export const answerSchema = z.discriminatedUnion('kind', [
  /** To a scenario or a drill: where the controls stand that are off their defaults. */
  z.strictObject({ kind: z.literal('board'), board: fileBoardSchema }),
  /** To a question with options: the id of the one that was chosen. */
  z.strictObject({ kind: z.literal('option'), option: taskId }),
  /** To a question that asks for a number: a level in dBu or a change in dB; silence is `-inf`. */
  z.strictObject({
    kind: z.literal('number'),
    value: z.union([z.number(), z.literal('-inf')]),
  }),
  /** To a question about outputs: ids of those that are reached. */
  z.strictObject({ kind: z.literal('outputs'), outputs: options }),
  /** To a question about an order: ids of all stops, the one that is met first first. */
  z.strictObject({ kind: z.literal('order'), order: options }),
]);
export type Answer = z.output<typeof answerSchema>;
export type AnswerOf<Kind extends Answer['kind']> = Extract<Answer, { kind: Kind }>;
