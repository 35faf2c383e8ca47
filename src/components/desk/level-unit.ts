import { useEffect, useState } from 'preact/hooks';
import type { LevelUnit } from '../../text/index.ts';

/** As a page is rendered. */
const AT_FIRST: LevelUnit = 'dBu';

let chosen: LevelUnit = AT_FIRST;
const followers = new Set<(unit: LevelUnit) => void>();

/** Has every desk on the page read its levels in a unit. */
export function chooseLevelUnit(unit: LevelUnit): void {
  chosen = unit;
  for (const follower of followers) follower(unit);
}

/** The unit that levels are read in. A desk that comes to life later follows the choice then. */
export function useLevelUnit(): LevelUnit {
  const [unit, setUnit] = useState<LevelUnit>(AT_FIRST);
  useEffect(() => {
    setUnit(chosen);
    followers.add(setUnit);
    return () => {
      followers.delete(setUnit);
    };
  }, []);
  return unit;
}
