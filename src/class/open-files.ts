import { Unzip, UnzipInflate } from 'fflate';
import { InputError } from '../../simulator/index.ts';

/** A file as it was dropped, or came out of an archive: a name to speak of it by, and its text. */
export interface OpenedFile {
  readonly name: string;
  readonly text: string;
}

/** A file that could not be used, and why. */
export interface AsideFile {
  readonly name: string;
  readonly error: InputError;
}

export interface OpenedFiles {
  readonly files: readonly OpenedFile[];
  readonly aside: readonly AsideFile[];
}

/** The most bytes of one hand-in. */
export const MOST_BYTES = 256 * 1024;
/** The most bytes of an archive, and of all that comes out of it. */
export const MOST_IN_ARCHIVE = 64 * 1024 * 1024;
/** The most files of one archive. */
export const MOST_FILES = 5000;

const LONGEST_NAME = 120;
const STEP = 64 * 1024;
const ZIP = [0x50, 0x4b, 0x03, 0x04] as const;

/**
 * Opens what was dropped: texts as they are, archives file by file. Names are only spoken, never used as a
 * path. Whatever cannot be used is set aside with the reason, and the rest is opened.
 */
export function openFiles(
  dropped: readonly { readonly name: string; readonly bytes: Uint8Array }[],
): OpenedFiles {
  const files: OpenedFile[] = [];
  const aside: AsideFile[] = [];
  const open = (name: string, bytes: Uint8Array): void => {
    try {
      files.push({ name, text: textOf(name, bytes) });
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      aside.push({ name, error });
    }
  };
  for (const { name, bytes } of dropped) {
    const spoken = spokenName(name);
    if (!isArchive(bytes)) open(spoken, bytes);
    else unzip(spoken, bytes, open, (inner, error) => aside.push({ name: inner, error }));
  }
  return { files, aside };
}

const isArchive = (bytes: Uint8Array): boolean => ZIP.every((byte, at) => bytes[at] === byte);

/** The last part of a path, without characters that do not show; at most {@link LONGEST_NAME} of them. */
export function spokenName(path: string): string {
  const last = path.split(/[/\\]/).filter(Boolean).at(-1) ?? '';
  const shown = last.replaceAll(/[\p{Cc}\p{Cf}]/gu, '').trim();
  if (shown === '') return 'a file without a name';
  return shown.length > LONGEST_NAME ? `${shown.slice(0, LONGEST_NAME)}…` : shown;
}

/** @throws InputError when it is too long, or no text in UTF-8. */
function textOf(name: string, bytes: Uint8Array): string {
  if (bytes.length > MOST_BYTES) throw tooLong(name, bytes.length);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw problem(name, 'a text', 'bytes that are none', 'Is this the right file?');
  }
}

/**
 * Unpacks an archive, and stops as soon as it turns out to hold more than it may. What it says that it
 * holds and does not give is told as well.
 */
function unzip(
  name: string,
  bytes: Uint8Array,
  open: (name: string, bytes: Uint8Array) => void,
  setAside: (name: string, error: InputError) => void,
): void {
  if (bytes.length > MOST_IN_ARCHIVE) {
    setAside(name, problem(name, `at most ${MOST_IN_ARCHIVE} bytes`, `${bytes.length}`));
    return;
  }
  let entries = 0;
  let total = 0;
  let broken: InputError | undefined;
  const unfinished = new Set<string>();
  const stop = (error: InputError) => {
    broken ??= error;
  };
  const archive = new Unzip((file) => {
    entries += 1;
    if (file.name.endsWith('/')) return;
    if (entries > MOST_FILES) stop(problem(name, `at most ${MOST_FILES} files`, 'more'));
    if (broken) return;
    const inner = spokenName(file.name);
    const end = (error?: InputError) => {
      unfinished.delete(inner);
      if (error) setAside(inner, error);
    };
    const parts: Uint8Array[] = [];
    let length = 0;
    unfinished.add(inner);
    file.ondata = (error, part, isLast) => {
      // What is too long goes on coming; it counts, so that the archive is stopped.
      total += part?.length ?? 0;
      length += part?.length ?? 0;
      if (total > MOST_IN_ARCHIVE) {
        stop(problem(name, `at most ${MOST_IN_ARCHIVE} bytes when it is unpacked`, 'more'));
      }
      if (!unfinished.has(inner)) return;
      if (error) {
        end(damaged(inner));
      } else if (length > MOST_BYTES) {
        end(tooLong(inner, length));
      } else {
        parts.push(part);
        if (!isLast) return;
        open(inner, joined(parts, length));
        end();
      }
    };
    file.start();
  });
  archive.register(UnzipInflate);
  try {
    for (let at = 0; at < bytes.length && !broken; at += STEP) {
      archive.push(bytes.subarray(at, at + STEP), at + STEP >= bytes.length);
    }
  } catch {
    stop(problem(name, 'an archive that can be unpacked', 'one that is damaged or locked'));
  }
  for (const inner of unfinished) setAside(inner, damaged(inner));
  const stated = statedEntries(bytes);
  if (!broken && (stated === undefined || stated > entries || entries === 0)) {
    const expected = `an archive of ${stated === undefined ? 'files' : `${stated} files`}`;
    stop(problem(name, expected, `${entries} in one that is damaged`, 'Pack it anew.'));
  }
  if (broken) setAside(name, broken);
}

/** The last record of an archive, which says how many entries it has (PKWARE APPNOTE, 4.3.16). */
const LAST_RECORD = [0x50, 0x4b, 0x05, 0x06] as const;
const LAST_RECORD_LENGTH = 22;

/** How many entries an archive says that it has; nothing when its end is missing. */
function statedEntries(bytes: Uint8Array): number | undefined {
  for (let at = bytes.length - LAST_RECORD_LENGTH; at >= 0; at -= 1) {
    if (LAST_RECORD.every((byte, offset) => bytes[at + offset] === byte)) {
      return (bytes[at + 10] ?? 0) + 256 * (bytes[at + 11] ?? 0);
    }
  }
  return undefined;
}

function joined(parts: readonly Uint8Array[], length: number): Uint8Array {
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

const damaged = (name: string): InputError =>
  problem(name, 'a whole file in the archive', 'one that is damaged');

const tooLong = (name: string, length: number): InputError =>
  problem(name, `at most ${MOST_BYTES} bytes`, `${length} or more`, 'Is this the right file?');

function problem(name: string, expected: string, found: string, hint?: string): InputError {
  return new InputError(name, [{ place: '', expected, found, ...(hint ? { hint } : {}) }]);
}
