import type { Setup } from '../board/board.ts';
import type { Address } from '../rig/address.ts';
import type { Circuit } from './circuit.ts';
import type { InputWires } from './input-wires.ts';

/**
 * A part of a circuit that was built in one go: the stages of one owner, and all wires into them. Which stages
 * there are is up to the rig alone, so that sections follow one another in the same way on every board.
 */
export interface Section {
  /**
   * The controls that it was built from, and the input jacks that it asked for a wire into. While none of them
   * moves, it stays as it is.
   */
  readonly reads: ReadonlySet<Address>;
  /** The stage after its last one. */
  readonly end: number;
}

/** A circuit that remembers how it was built, so that the next one can take over what stays. */
export interface BuiltCircuit extends Circuit {
  readonly setup: Setup;
  readonly inputWires: InputWires;
  readonly sections: readonly Section[];
}

/** A setup that notes which controls are read from it. */
export const noting = ({ rig, board }: Setup, reads: Set<Address>): Setup => ({
  rig,
  board: new Proxy(board, {
    get(target, address) {
      if (typeof address === 'string') reads.add(address);
      return Reflect.get(target, address);
    },
  }),
});
