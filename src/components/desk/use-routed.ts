import { useRef } from 'preact/hooks';
import type { Setup } from '../../../simulator/index.ts';
import { isRoutedAlike } from './still.ts';

/** A setup that stays the same while levels and pans alone are turned, for what goes by cords and switches. */
export function useRouted(setup: Setup): Setup {
  const routed = useRef(setup);
  const isRouted = routed.current.rig === setup.rig && isRoutedAlike(routed.current, setup);
  if (!isRouted) routed.current = setup;
  return routed.current;
}
