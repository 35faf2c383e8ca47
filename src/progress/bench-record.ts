import * as z from 'zod/mini';
import { moment, RECORD_VERSION, slug } from './task-record.ts';

/** The most characters of a setup that is kept: what a setup file may have. */
export const LONGEST_SETUP = 256 * 1024;

/** What is kept of a room of the bench: how it was left. */
export const benchRecordSchema = z.strictObject({
  version: z.literal(RECORD_VERSION),
  room: slug,
  at: moment,
  /** The setup, as `share` writes it. */
  text: z.string().check(z.maxLength(LONGEST_SETUP)),
});
export type BenchRecord = z.output<typeof benchRecordSchema>;
