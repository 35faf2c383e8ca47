import { pickAt, type Setup } from '../board/board.ts';
import { type Address, legsOf } from '../rig/address.ts';
import type { Law, Legs } from './circuit.ts';
import type { Wiring } from './wiring.ts';

/** Adds a place with input jacks, one for each leg, and wires each to the output jack that feeds it. */
export function addInput(
  wiring: Wiring,
  setup: Setup,
  place: Address,
  width: 1 | 2,
  law?: Law,
): Legs {
  const legs = wiring.place(place, width, law);
  legsOf(place, width === 2).forEach((jack, side) => {
    const [output, leg] = [pickAt(setup, jack), legs[side]];
    if (output !== undefined && leg !== undefined) wiring.wireFrom(output, leg, 1);
  });
  return legs;
}
