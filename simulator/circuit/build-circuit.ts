import { pickAt, type Setup } from '../board/board.ts';
import { outputPlace } from '../rig/address.ts';
import { jacks } from '../rig/jacks.ts';
import { outputStage } from './active-stages.ts';
import { addBox } from './box.ts';
import type { Circuit } from './circuit.ts';
import { addDesk } from './desk.ts';
import { addRack } from './rack.ts';
import { Wiring } from './wiring.ts';

/** The stages and wires of a setup. The rig and the board must have been checked. */
export function buildCircuit(setup: Setup): Circuit {
  const wiring = new Wiring();
  addBox(wiring, setup);
  addDesk(wiring, setup);
  addRack(wiring, setup);
  for (const output of setup.rig.outputs) {
    const place = wiring.place(outputPlace(output.id), output.stereo ? 2 : 1);
    wiring.activate(place, outputStage(setup.rig, output));
  }
  for (const input of jacks(setup.rig).inputs) {
    const output = pickAt(setup, input);
    if (output) wiring.wire(wiring.jack(output), wiring.jack(input), 1);
  }
  return wiring.circuit();
}
