import { useEffect, useRef } from 'preact/hooks';

/** Tells how long the component stood on a page that was in sight, in milliseconds, when it goes or the page does. */
export function useTimeSpent(onSpent: (ms: number) => void): void {
  const latest = useRef(onSpent);
  latest.current = onSpent;
  useEffect(() => {
    let from = document.hidden ? undefined : performance.now();
    const tell = () => {
      if (from !== undefined) latest.current(Math.round(performance.now() - from));
      from = document.hidden ? undefined : performance.now();
    };
    document.addEventListener('visibilitychange', tell);
    window.addEventListener('pagehide', tell);
    return () => {
      tell();
      document.removeEventListener('visibilitychange', tell);
      window.removeEventListener('pagehide', tell);
    };
  }, []);
}
