import { multIn, multOuts } from '../rig/bay.ts';
import { addInput } from './input.ts';
import type { Wiring } from './wiring.ts';

/** The mults of the patchbay. Its points are no stages: they decide on what feeds the jacks that they stand for. */
export function addBay(wiring: Wiring): void {
  for (const mult of wiring.rig.bay?.mults ?? []) {
    wiring.section(() => {
      const input = addInput(wiring, multIn(mult), 1);
      for (const out of multOuts(mult)) wiring.through(out, input, 1);
    });
  }
}
