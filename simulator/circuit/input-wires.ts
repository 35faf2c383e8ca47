import type { Setup } from '../board/board.ts';
import { driverOf, feedOf, loadsOn } from '../board/feeds.ts';
import type { Address } from '../rig/address.ts';
import { multAt } from '../rig/bay.ts';
import { jacks } from '../rig/jacks.ts';
import { inParallel, loadedRatio, type Ohms } from '../units/loading.ts';

/** The wire that leads into an input jack, from an output jack. */
export interface InputWire {
  readonly output: Address;
  readonly ratio: number;
}

/** The wire into each input jack that something comes into. */
export type InputWires = ReadonlyMap<Address, InputWire>;

/**
 * The wires that cords and normals are. Mults that are only plugged into one another get none: a ring of them is
 * no loop, since nothing in it drives it.
 */
export function inputWires(setup: Setup): InputWires {
  const wires = new Map<Address, InputWire>();
  for (const input of jacks(setup.rig).inputs) {
    const output = feedOf(setup, input)?.output;
    if (output === undefined || driverOf(setup, input) === undefined) continue;
    wires.set(input, { output, ratio: loadRatio(setup, output) });
  }
  return wires;
}

/** The input jacks that other wires lead into than before. */
export function rewiredBetween(before: InputWires, after: InputWires): Address[] {
  if (before === after) return [];
  return [...new Set([...before.keys(), ...after.keys()])].filter((input) => {
    const [known, wire] = [before.get(input), after.get(input)];
    return known?.output !== wire?.output || known?.ratio !== wire?.ratio;
  });
}

/**
 * Ratio of each wire out of an output jack: what is left of its level when all inputs that it drives load it.
 * Levels in a rig are those into one input, so that with one it is 1. The wires behind a mult lose nothing more.
 * A room without a bay says nothing about impedances, and nothing is lost there.
 */
function loadRatio(setup: Setup, output: Address): number {
  const { bay } = setup.rig;
  if (!bay || multAt(setup.rig, output)) return 1;
  const loads = loadsOn(setup, output);
  if (loads <= 1) return 1;
  const source = bay.outputOhms as Ohms;
  const load = bay.inputOhms as Ohms;
  return loadedRatio(source, inParallel(load, loads)) / loadedRatio(source, load);
}
