import { useEffect, useRef } from 'preact/hooks';

/** Calls back with the fragment of the page's address, its `#` included: at first, and whenever it changes. */
export function useFragment(onFragment: (fragment: string) => void): void {
  const latest = useRef(onFragment);
  latest.current = onFragment;
  useEffect(() => {
    const tell = () => latest.current(window.location.hash);
    tell();
    window.addEventListener('hashchange', tell);
    return () => window.removeEventListener('hashchange', tell);
  }, []);
}
