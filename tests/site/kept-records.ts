import type { Page } from '@playwright/test';

/** A record of a task or a room, as far as tests look at it. */
interface StoredRecord {
  readonly drafts: readonly { readonly text: string; readonly isFinished: boolean }[];
  readonly attempts?: Readonly<Record<string, number>>;
  readonly hints?: Readonly<Record<string, number>>;
  /** When it was first passed, in milliseconds. */
  readonly passedAt?: number;
}

/** What lies in a store of the browser under a key; nothing when there is none. */
export const stored = (page: Page, store: string, key: string): Promise<StoredRecord | undefined> =>
  page.evaluate(
    ([from, at]) =>
      new Promise<StoredRecord | undefined>((resolve, reject) => {
        const opening = indexedDB.open('tap-and-sum');
        // Where there is none yet, this must not be what makes one.
        opening.onupgradeneeded = () => opening.transaction?.abort();
        opening.onerror = () => resolve(undefined);
        opening.onsuccess = () => {
          const database = opening.result;
          const reading = database.transaction(from).objectStore(from).get(at);
          reading.onerror = () => reject(reading.error);
          reading.onsuccess = () => {
            database.close();
            resolve(reading.result);
          };
        };
      }),
    [store, key] as const,
  );

/** Puts something into the browser as a page that is broken, or newer, might have. */
export const store = (page: Page, into: string, key: string, value: unknown): Promise<void> =>
  page.evaluate(
    ([name, at, data]) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('tap-and-sum');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const database = opening.result;
          const transaction = database.transaction(name, 'readwrite');
          transaction.objectStore(name).put(data, at);
          transaction.onerror = () => reject(transaction.error);
          transaction.oncomplete = () => {
            database.close();
            resolve();
          };
        };
      }),
    [into, key, value] as const,
  );

/** Makes the browser keep nothing, as some do in private windows. Before the page is opened. */
export async function keepNothing(page: Page): Promise<void> {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', {
      get: () => {
        throw new DOMException('Refused.', 'SecurityError');
      },
    });
  });
}
