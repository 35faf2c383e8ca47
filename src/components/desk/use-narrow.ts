import type { RefObject } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** Below this width, in CSS pixels, a desk shows one strip at a time. */
const NARROW = 620;

/** Whether an element is too narrow for several strips. It starts as wide, as the page was rendered. */
export function useNarrow(element: RefObject<HTMLElement>): boolean {
  const [isNarrow, setNarrow] = useState(false);
  useEffect(() => {
    if (!element.current) return;
    const observer = new ResizeObserver(([entry]) => {
      if (entry) setNarrow(entry.contentRect.width < NARROW);
    });
    observer.observe(element.current);
    return () => observer.disconnect();
  }, [element]);
  return isNarrow;
}
