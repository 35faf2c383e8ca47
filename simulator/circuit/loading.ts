import type { Setup } from '../board/board.ts';
import { type Cords, loadsOn } from '../board/feeds.ts';
import type { Address } from '../rig/address.ts';
import { multAt } from '../rig/bay.ts';
import { inParallel, loadedRatio, type Ohms } from '../units/loading.ts';

/**
 * Ratio of each wire out of an output jack: what is left of its level when all inputs that it drives load it.
 * Levels in a rig are those into one input, so that with one it is 1. The wires behind a mult lose nothing more.
 * A room without a bay says nothing about impedances, and nothing is lost there.
 */
export function loadRatio({ rig, board }: Setup, output: Address, cords: () => Cords): number {
  if (!rig.bay || multAt(rig, output)) return 1;
  const loads = loadsOn({ rig, board }, output, cords);
  if (loads <= 1) return 1;
  const source = rig.bay.outputOhms as Ohms;
  const load = rig.bay.inputOhms as Ohms;
  return loadedRatio(source, inParallel(load, loads)) / loadedRatio(source, load);
}
