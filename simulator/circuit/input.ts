import type { Setup } from '../board/board.ts';
import { driverOf, feedOf } from '../board/feeds.ts';
import { type Address, legsOf } from '../rig/address.ts';
import type { Law, Legs } from './circuit.ts';
import { loadRatio } from './loading.ts';
import type { Wiring } from './wiring.ts';

/**
 * Adds a place with input jacks, one for each leg, and wires each to the output jack that feeds it. Mults that are
 * only plugged into one another get no wire: a ring of them is no loop, since nothing in it drives it.
 */
export function addInput(
  wiring: Wiring,
  setup: Setup,
  place: Address,
  width: 1 | 2,
  law?: Law,
): Legs {
  const legs = wiring.place(place, width, law);
  legsOf(place, width === 2).forEach((jack, side) => {
    const [feed, leg] = [feedOf(setup, jack, wiring.cords), legs[side]];
    if (!feed || leg === undefined || !driverOf(setup, jack, wiring.cords)) return;
    wiring.wireFrom(feed.output, leg, loadRatio(setup, feed.output, wiring.cords));
  });
  return legs;
}
