import * as z from 'zod/mini';
import { draftSchema, MOST_DRAFTS, RECORD_VERSION, slug } from './task-record.ts';

/** What is kept of a room of the bench: how it was left. */
export const benchRecordSchema = z.strictObject({
  version: z.literal(RECORD_VERSION),
  /** Id of its rig. */
  room: slug,
  /** The setup as `share` writes it, newest first. On the bench nothing is ever finished. */
  drafts: z.array(draftSchema).check(z.maxLength(MOST_DRAFTS)),
});
export type BenchRecord = z.output<typeof benchRecordSchema>;
