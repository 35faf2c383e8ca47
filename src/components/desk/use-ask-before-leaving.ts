import { useEffect } from 'preact/hooks';

/** Has the browser ask before the page is left, as long as something on it would be lost. */
export function useAskBeforeLeaving(wouldLose: boolean): void {
  useEffect(() => {
    if (!wouldLose) return;
    const ask = (event: BeforeUnloadEvent) => event.preventDefault();
    window.addEventListener('beforeunload', ask);
    return () => window.removeEventListener('beforeunload', ask);
  }, [wouldLose]);
}
