import { type Address, legsOf } from '../rig/address.ts';
import type { Law, Legs } from './circuit.ts';
import type { Wiring } from './wiring.ts';

/** Adds a place with input jacks, one for each leg, and wires each to the output jack that feeds it. */
export function addInput(wiring: Wiring, place: Address, width: 1 | 2, law?: Law): Legs {
  const legs = wiring.place(place, width, law);
  legsOf(place, width === 2).forEach((jack, side) => {
    const [wire, leg] = [wiring.wireInto(jack), legs[side]];
    if (wire && leg !== undefined) wiring.wireFrom(wire.output, leg, wire.ratio);
  });
  return legs;
}
