import { Memory } from './memory.ts';
import { NotedAttempts } from './noted-attempts.ts';

/** Bytes in a name that nobody had before. */
const NAME_BYTES = 8;

const newName = (): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(NAME_BYTES)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('');

/** What this tab noted; nothing is where the browser keeps nothing. */
export const noted = new NotedAttempts(storageOfTab());

/**
 * The memory of this browser; nothing where the browser keeps nothing, as in some private windows. Attempts that
 * a page before this one could not have kept any more are taken in.
 */
export async function openMemory(): Promise<Memory | undefined> {
  const left = noted.all();
  try {
    const channel = new BroadcastChannel('tap-and-sum.progress');
    const memory = await Memory.open({ clock: Date.now, newName, channel });
    for (const attempt of left) {
      // One that is refused would be refused by every page.
      await memory.attempted(attempt.name, attempt.made, attempt.made.at).catch(() => undefined);
      noted.remove(attempt);
    }
    return memory;
  } catch {
    return undefined;
  }
}

function storageOfTab(): Storage | undefined {
  try {
    return sessionStorage;
  } catch {
    return undefined;
  }
}

/**
 * Asks the browser not to drop what is kept. Some browsers drop it after a week without a visit.
 *
 * @returns whether it will stay; nothing where it cannot be asked.
 */
export async function askToStay(): Promise<boolean | undefined> {
  try {
    return await navigator.storage?.persist?.();
  } catch {
    return undefined;
  }
}

/** Whether the browser has promised to keep it; nothing where it does not say. */
export async function willStay(): Promise<boolean | undefined> {
  try {
    return await navigator.storage?.persisted?.();
  } catch {
    return undefined;
  }
}
