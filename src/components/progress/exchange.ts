import { InputError } from '../../../simulator/index.ts';
import {
  backupText,
  countAll,
  LONGEST_BACKUP,
  type OpenedBackup,
  openBackup,
} from '../../progress/backup.ts';
import type { Memory } from '../../progress/memory.ts';
import type { NumberedAside } from '../../progress/take-in.ts';
import { counted } from '../../text/index.ts';
import { handOverFile } from '../hand-over-file.ts';

/** What came of an import or another step: a word for the learner, and what is wrong, a line each. */
export interface Word {
  readonly said: string;
  readonly problems?: readonly string[];
}

/** Hands everything to the person as a file, and notes that it was. */
export async function exportAll(memory: Memory): Promise<Word> {
  const { records } = await memory.contents();
  const now = Date.now();
  const day = new Date(now).toISOString().slice(0, 10);
  handOverFile(`tap-and-sum.progress.${day}.json`, backupText(records, now));
  await memory.noteBackup();
  return { said: `Exported: ${counted(countAll(records), 'record')}.` };
}

/** Merges a backup into what is kept. A file that cannot be used changes nothing. */
export async function importFile(memory: Memory, file: File): Promise<Word> {
  try {
    const backup = await opened(file);
    await memory.take(backup);
    const count = counted(countAll(backup.records), 'record');
    const left = backup.unusable.length;
    return {
      said: `Imported: ${count}.${left > 0 ? ` ${counted(left, 'record')} could not be read and ${left === 1 ? 'is' : 'are'} put aside below.` : ''}`,
    };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const said = 'That file cannot be used. Everything stays as it was.';
    return { said, problems: error.message.split('\n') };
  }
}

/** @throws InputError for a file that is too long, before it is read. */
async function opened(file: File): Promise<OpenedBackup> {
  if (file.size > LONGEST_BACKUP) {
    const expected = `at most ${LONGEST_BACKUP} bytes`;
    throw new InputError(file.name, [
      { place: '', expected, found: `${file.size}`, hint: 'Is this the right file?' },
    ]);
  }
  return openBackup(file.name, await file.text());
}

/** Hands something that was set aside to the person as it was found. */
export function exportAside({ name, store, data, problems }: NumberedAside): void {
  const text = JSON.stringify({ name, store, problems, data }, withoutCycles(), 1);
  handOverFile(`tap-and-sum.aside.${name.replaceAll(/[^a-z0-9-]+/gi, '-')}.json`, `${text}\n`);
}

/** Writes what JSON cannot hold as words: a broken record can be anything. */
function withoutCycles(): (key: string, value: unknown) => unknown {
  const seen = new WeakSet<object>();
  return (_, value) => {
    if (typeof value === 'bigint' || typeof value === 'symbol') return String(value);
    if (typeof value !== 'object' || value === null) return value;
    if (seen.has(value)) return '(written above)';
    seen.add(value);
    return value instanceof Map || value instanceof Set ? [...value] : value;
  };
}
