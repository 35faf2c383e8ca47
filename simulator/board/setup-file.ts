import * as z from 'zod/mini';
import { checkDocument } from '../file/check-document.ts';
import { readDocument } from '../file/read-document.ts';
import { contradictionsIn } from '../rig/check-rig.ts';
import { fileBoardSchema, type Rig, rigSchema } from '../rig/schema.ts';
import type { Setup } from './board.ts';
import { boardData } from './board-data.ts';
import { boardFrom, refuse } from './file-board.ts';

export const SETUP_FORMAT = 'tap-and-sum/setup';
export const SETUP_VERSION = 1;

/** The format of a setup file: a rig, and where its controls stand. */
export const setupSchema = z.strictObject({
  format: z.literal(SETUP_FORMAT).check(z.describe('What kind of file this is.')),
  version: z.literal(SETUP_VERSION).check(z.describe('Version of the format.')),
  title: z.optional(z.string().check(z.maxLength(120), z.describe('A name for the setup.'))),
  rig: rigSchema.check(z.describe('What exists.')),
  board: z
    ._default(fileBoardSchema, {})
    .check(z.describe('Where the controls stand that are off their defaults: value by address.')),
});

/** A setup as it was read from a file. */
export interface SetupFile extends Setup {
  readonly title?: string;
}

/** Reads a rig. @throws InputError with every problem. */
export function parseRig(file: string, text: string): Rig {
  const document = readDocument(file, text);
  const rig = checkDocument(document, rigSchema);
  refuse(document, [], contradictionsIn(rig));
  return rig;
}

/** Reads a setup file, YAML or JSON. @throws InputError with every problem. */
export function parseSetup(file: string, text: string): SetupFile {
  const document = readDocument(file, text);
  const { rig, board, title } = checkDocument(document, setupSchema);
  refuse(document, ['rig'], contradictionsIn(rig));
  return { rig, board: boardFrom(document, ['board'], rig, board), ...(title ? { title } : {}) };
}

/** A setup as the data of a setup file; {@link parseSetup} reads its JSON back as the same setup. */
export function setupData({ rig, board, title }: SetupFile): z.input<typeof setupSchema> {
  return {
    format: SETUP_FORMAT,
    version: SETUP_VERSION,
    ...(title ? { title } : {}),
    rig,
    board: boardData(board),
  };
}
