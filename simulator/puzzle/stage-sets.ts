import type { Circuit } from '../circuit/circuit.ts';
import type { WireEnds } from './reach.ts';

/** A set of stages of a circuit: 1 for each that is in it. */
export type StageSet = Uint8Array;

/** Wires by the stage that they start from. */
export type Onwards = readonly (readonly number[])[];
/** Wires by the stage that they lead into. */
export type Backwards = readonly (readonly number[])[];

/** The open wires of a circuit, by where they start. */
function onwardsIn({ wires }: Circuit): Onwards {
  const onwards: number[][] = wires.map(() => []);
  wires.forEach((into, to) => {
    for (const { from, ratio } of into) if (ratio !== 0) onwards[from]?.push(to);
  });
  return onwards;
}

/** The open wires of a circuit, by where they end. */
const backwardsIn = ({ wires }: Circuit): Backwards =>
  wires.map((into) => into.flatMap(({ from, ratio }) => (ratio === 0 ? [] : [from])));

/** The open wires of a circuit, sorted when they are first asked for. */
export class OpenWires {
  readonly circuit: Circuit;
  #onwards: Onwards | undefined;
  #backwards: Backwards | undefined;

  constructor(circuit: Circuit) {
    this.circuit = circuit;
  }

  get onwards(): Onwards {
    this.#onwards ??= onwardsIn(this.circuit);
    return this.#onwards;
  }

  get backwards(): Backwards {
    this.#backwards ??= backwardsIn(this.circuit);
    return this.#backwards;
  }
}

/** The open wires of a circuit together with others, by where they start and by where they end. */
export function withWires(
  circuit: Circuit,
  more: Iterable<WireEnds>,
): { readonly onwards: Onwards; readonly backwards: Backwards } {
  const onwards = onwardsIn(circuit).map((list) => [...list]);
  const backwards = backwardsIn(circuit).map((list) => [...list]);
  for (const [from, to] of more) {
    onwards[from]?.push(to);
    backwards[to]?.push(from);
  }
  return { onwards, backwards };
}

/** Where wires lead from some stages, these included, without stages that are barred. */
export function spread(
  from: Iterable<number>,
  wires: readonly (readonly number[])[],
  isBarred?: (stage: number) => boolean,
): StageSet {
  const set = new Uint8Array(wires.length);
  const waiting: number[] = [];
  const add = (stage: number) => {
    if (set[stage] === 1 || isBarred?.(stage)) return;
    set[stage] = 1;
    waiting.push(stage);
  };
  for (const stage of from) add(stage);
  for (let stage = waiting.pop(); stage !== undefined; stage = waiting.pop()) {
    for (const next of wires[stage] ?? []) add(next);
  }
  return set;
}
