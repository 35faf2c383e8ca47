import { useCallback, useEffect, useState } from 'preact/hooks';

/** All code of the page that comes later, as far as it is known what there is. */
export const ALL_LATER = new Set<Later<unknown>>();

/**
 * Code that the page fetches after it stands. All who ask share one fetch; one that failed is tried
 * again by the next who asks.
 */
export class Later<T> {
  /** The code, as soon as it is there. */
  there: T | undefined;
  readonly #load: () => Promise<T>;
  #coming: Promise<T> | undefined;

  /** @param load a dynamic import, so that the code comes in a file of its own. */
  constructor(load: () => Promise<T>) {
    this.#load = load;
    ALL_LATER.add(this);
  }

  /** Rejects when the code cannot be fetched. */
  fetch(): Promise<T> {
    // Some browsers remember for good that an import failed. So without a connection none is tried.
    if (!this.there && navigator.onLine === false) return Promise.reject(new Error('Offline.'));
    this.#coming ??= this.#load().then(
      (code) => {
        this.there = code;
        return code;
      },
      (error: unknown) => {
        this.#coming = undefined;
        throw error;
      },
    );
    return this.#coming;
  }
}

/** How it stands with some code that comes later, for a component. */
export interface LaterState<T> {
  readonly there: T | undefined;
  /** Whether the last fetch failed. */
  readonly hasFailed: boolean;
  /** Fetches it, unless it is there. Resolves to nothing when that fails. */
  readonly fetch: () => Promise<T | undefined>;
}

/**
 * Follows code that comes later. It is fetched as soon as the component has come to life, so that it is
 * there before anybody needs it, or only when asked.
 */
export function useLater<T>(
  later: Later<T>,
  when: 'at once' | 'when asked' = 'at once',
): LaterState<T> {
  const [state, setState] = useState({ there: later.there, hasFailed: false });
  const fetch = useCallback(async () => {
    setState({ there: later.there, hasFailed: false });
    const there = await later.fetch().catch(() => undefined);
    setState({ there, hasFailed: !there });
    return there;
  }, [later]);
  const { there } = state;
  useEffect(() => {
    if (when === 'at once' && !there) void fetch();
  }, [there, fetch, when]);
  return { ...state, fetch };
}
