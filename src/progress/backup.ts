import * as z from 'zod/mini';
import { checkDocument, InputError, readDocument } from '../../simulator/index.ts';
import { type Records, STORE_NAMES, type StoreName, storedRecord } from './stored-record.ts';
import { type Moment, moment } from './task-record.ts';

export const BACKUP_FORMAT = 'tap-and-sum/progress';
const BACKUP_VERSION = 1;
/** The most characters of a backup: far more than all tasks of the course come to, each with a full board as its draft. */
export const LONGEST_BACKUP = 4 * 1024 * 1024;
const MOST_RECORDS = 5000;

const records = z.array(z.unknown()).check(z.maxLength(MOST_RECORDS));

/** The format of a backup. Records are checked one by one, each by its own version. */
const backupSchema = z.strictObject({
  format: z.literal(BACKUP_FORMAT),
  version: z.literal(BACKUP_VERSION),
  savedAt: moment,
  tasks: records,
  reviews: records,
  benches: records,
});

/** Records of every store. */
export type Everything = { readonly [S in StoreName]: readonly Records[S][] };

/** A record that could not be used, as it was found. */
export interface Unusable {
  readonly store: StoreName;
  readonly data: unknown;
  readonly error: InputError;
}

/** What a backup holds: the records that can be used, and those that cannot. */
export interface OpenedBackup {
  readonly savedAt: Moment;
  readonly records: Everything;
  readonly unusable: readonly Unusable[];
}

/** Everything as the text of a backup; {@link openBackup} gives the same back. */
export const backupText = (all: Everything, savedAt: Moment): string =>
  `${JSON.stringify({ format: BACKUP_FORMAT, version: BACKUP_VERSION, savedAt, ...all }, null, 1)}\n`;

/**
 * Reads the text of a backup, as a file from a stranger. A record in it that does not fit is handed back
 * with the reason, and the rest is opened.
 *
 * @param file its name, for messages. @throws InputError when it is no backup at all, or too long.
 */
export function openBackup(file: string, text: string): OpenedBackup {
  const backup = checkDocument(readDocument(file, text, LONGEST_BACKUP), backupSchema);
  const unusable: Unusable[] = [];
  const read = <S extends StoreName>(store: S): Records[S][] =>
    backup[store].flatMap((data) => {
      try {
        return [storedRecord(store, data)];
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
        unusable.push({ store, data, error });
        return [];
      }
    });
  return {
    savedAt: backup.savedAt,
    records: { tasks: read('tasks'), reviews: read('reviews'), benches: read('benches') },
    unusable,
  };
}

/** How many records there are in all. */
export const countAll = (all: Everything): number =>
  STORE_NAMES.reduce((sum, store) => sum + all[store].length, 0);
