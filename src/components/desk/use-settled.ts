import { useEffect, useState } from 'preact/hooks';

/** How long something has to stay as it is, in milliseconds, before it counts as settled. */
const PAUSE = 250;

/** A value as it last stood still for a moment. What is slow to draw goes by it, and does not hold up a hand at a fader. */
export function useSettled<T>(value: T): T {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    if (settled === value) return;
    const timer = setTimeout(() => setSettled(value), PAUSE);
    return () => clearTimeout(timer);
  }, [settled, value]);
  return settled;
}
