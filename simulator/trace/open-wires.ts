import type { Circuit } from '../circuit/circuit.ts';

/** Where wires lead to, by the stage that they start from. */
export type Onwards = readonly (readonly number[])[];
/** Where wires start from, by the stage that they lead into. */
export type Backwards = readonly (readonly number[])[];

/** The open wires of a circuit. */
export interface OpenWires {
  readonly circuit: Circuit;
  readonly backwards: Backwards;
  readonly onwards: Onwards;
}

const known = new WeakMap<Circuit, OpenWires>();

/**
 * The open wires of a circuit, sorted once.
 *
 * @param before a circuit of the same rig, whose wires may already be sorted: what they have in common is taken over.
 */
export function openWiresOf(circuit: Circuit, before?: Circuit): OpenWires {
  const sorted = known.get(circuit);
  if (sorted) return sorted;
  const found = new SortedWires(circuit, before && known.get(before));
  known.set(circuit, found);
  return found;
}

class SortedWires implements OpenWires {
  readonly circuit: Circuit;
  readonly backwards: Backwards;
  #onwards: Onwards | undefined;

  constructor(circuit: Circuit, before: OpenWires | undefined) {
    this.circuit = circuit;
    this.backwards = circuit.wires.map((into, to) => {
      const same = before && before.circuit.wires[to] === into ? before.backwards[to] : undefined;
      return same ?? into.flatMap(({ from, ratio }) => (ratio === 0 ? [] : [from]));
    });
  }

  get onwards(): Onwards {
    this.#onwards ??= turnedRound(this.backwards);
    return this.#onwards;
  }
}

/** Wires by where they start, of wires by where they end. */
export function turnedRound(backwards: Backwards): Onwards {
  const onwards: number[][] = backwards.map(() => []);
  backwards.forEach((into, to) => {
    for (const from of into) onwards[from]?.push(to);
  });
  return onwards;
}
