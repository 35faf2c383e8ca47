import { Memory } from './memory.ts';

/** Bytes in a name that nobody had before. */
const NAME_BYTES = 8;

const newName = (): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(NAME_BYTES)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('');

/** The memory of this browser; nothing where the browser keeps nothing, as in some private windows. */
export async function openMemory(): Promise<Memory | undefined> {
  try {
    const channel = new BroadcastChannel('tap-and-sum.progress');
    return await Memory.open({ clock: Date.now, newName, channel });
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
