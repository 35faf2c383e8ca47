import { readFile, stat } from 'node:fs/promises';
import type { DroppedFile, SetAside } from '../class/gradebook.ts';
import { MOST_IN_ARCHIVE } from '../class/open-files.ts';
import { FOUND, isSystemError, pathOf } from './read-input.ts';

/** Reads files of any kind, as bytes. One that cannot be read, or is larger than any archive may be, is set aside. */
export async function readDropped(
  names: readonly string[],
): Promise<{ readonly files: DroppedFile[]; readonly aside: SetAside[] }> {
  const files: DroppedFile[] = [];
  const aside: SetAside[] = [];
  for (const name of names) {
    const setAside = (expected: string, found: string) =>
      aside.push({ name, reason: `${name}: expected ${expected}, but found ${found}.` });
    try {
      const { size } = await stat(pathOf(name));
      if (size > MOST_IN_ARCHIVE) setAside(`at most ${MOST_IN_ARCHIVE} bytes`, `${size}`);
      else files.push({ name, bytes: await readFile(pathOf(name)) });
    } catch (error) {
      if (!isSystemError(error)) throw error;
      setAside('a file that can be read', FOUND[error.code] ?? error.code);
    }
  }
  return { files, aside };
}
