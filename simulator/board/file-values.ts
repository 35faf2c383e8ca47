import { controls } from '../rig/controls.ts';
import type { FileBoard, Rig } from '../rig/schema.ts';
import type { Board } from './board.ts';

/** Values of a file as values of controls: `-inf` becomes `-Infinity` where a gain can be closed. */
export function fromFile(rig: Rig, values: FileBoard): Board {
  const known = controls(rig);
  return Object.fromEntries(
    Object.entries(values).map(([address, value]) => [
      address,
      value === '-inf' && known.get(address)?.kind === 'gain' ? -Infinity : value,
    ]),
  );
}
