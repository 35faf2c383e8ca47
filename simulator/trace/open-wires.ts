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

/** What was sorted last: one circuit is asked for many times, and the next one mostly has most wires in common with it. */
let latest: OpenWires | undefined;

/** The open wires of a circuit. Of what was sorted last, the wires that both circuits have are taken over. */
export function openWiresOf(circuit: Circuit): OpenWires {
  if (latest?.circuit === circuit) return latest;
  const sorted = new SortedWires(circuit, latest);
  latest = sorted;
  return sorted;
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
