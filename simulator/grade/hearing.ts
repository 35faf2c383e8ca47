import type { Setup } from '../board/board.ts';
import { type Address, outputPlace } from '../rig/address.ts';
import type { Rig } from '../rig/schema.ts';
import type { Solution } from '../solve/solution.ts';

/** What a claim is judged by: a setup, and what stands in it. */
export interface Hearing {
  readonly setup: Setup;
  readonly solution: Solution;
}

/** The place that a task names: an output by its id, or a place by its address. */
export const placeNamed = (rig: Rig, name: string): Address =>
  rig.outputs.some(({ id }) => id === name) ? outputPlace(name) : name;
