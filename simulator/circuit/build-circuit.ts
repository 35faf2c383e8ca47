import type { Setup } from '../board/board.ts';
import { outputPlace } from '../rig/address.ts';
import { outputStage } from './active-stages.ts';
import { addBay } from './bay.ts';
import { addBox } from './box.ts';
import { addDesk } from './desk.ts';
import { addInput } from './input.ts';
import { addRack } from './rack.ts';
import type { BuiltCircuit } from './section.ts';
import { Wiring } from './wiring.ts';

/**
 * The stages and wires of a setup. The rig and the board must have been checked.
 *
 * @param before a circuit of the same rig: what no control has changed since is taken over from it.
 */
export function buildCircuit(setup: Setup, before?: BuiltCircuit): BuiltCircuit {
  const wiring = new Wiring(setup, before);
  addBox(wiring);
  addDesk(wiring);
  addRack(wiring);
  addBay(wiring);
  for (const output of setup.rig.outputs) {
    wiring.section(() => {
      const place = addInput(wiring, outputPlace(output.id), output.stereo ? 2 : 1);
      wiring.activate(place, outputStage(setup.rig, output));
    });
  }
  return wiring.circuit();
}
