import { type Circuit, stagesOf } from '../circuit/circuit.ts';
import type { Address } from '../rig/address.ts';
import { isWithin } from './path.ts';

/**
 * Whether an open way leads from some stages to others, without a stage that is barred. It decides, where
 * a list of paths could be cut short.
 */
function leads(
  { wires }: Circuit,
  from: readonly number[],
  to: readonly number[],
  isBarred: (stage: number) => boolean,
): boolean {
  const sought = new Set(from.filter((stage) => !isBarred(stage)));
  const seen = new Set(to.filter((stage) => !isBarred(stage)));
  const waiting = [...seen];
  for (let stage = waiting.pop(); stage !== undefined; stage = waiting.pop()) {
    if (sought.has(stage)) return true;
    for (const wire of wires[stage] ?? []) {
      if (wire.ratio === 0 || seen.has(wire.from) || isBarred(wire.from)) continue;
      seen.add(wire.from);
      waiting.push(wire.from);
    }
  }
  return false;
}

/** Stages by place or owner, of each circuit that was asked for them. */
const within = new WeakMap<Circuit, Map<Address, readonly number[]>>();

function stagesWithin(circuit: Circuit, placeOrOwner: Address): readonly number[] {
  const ofCircuit = within.get(circuit) ?? new Map<Address, readonly number[]>();
  within.set(circuit, ofCircuit);
  const known = ofCircuit.get(placeOrOwner);
  if (known) return known;
  const stages = circuit.stages.flatMap(({ id }, stage) =>
    isWithin(id, placeOrOwner) ? [stage] : [],
  );
  ofCircuit.set(placeOrOwner, stages);
  return stages;
}

/** Whether some open way of a signal to an output passes a place, or a place of an owner. */
export function leadsThrough(
  circuit: Circuit,
  start: number,
  placeOrOwner: Address,
  output: Address,
): boolean {
  const free = () => false;
  return stagesWithin(circuit, placeOrOwner).some(
    (stage) =>
      leads(circuit, [start], [stage], free) &&
      leads(circuit, [stage], stagesOf(circuit, output), free),
  );
}

/** Whether some open way of a signal to an output passes no place of an owner, or not this place. */
export function leadsPast(
  circuit: Circuit,
  start: number,
  placeOrOwner: Address,
  output: Address,
): boolean {
  const barred = new Set(stagesWithin(circuit, placeOrOwner));
  return leads(circuit, [start], stagesOf(circuit, output), (stage) => barred.has(stage));
}

/**
 * Whether every open way of a signal to an output passes all these stops in this order, and there is one.
 *
 * An owner may be passed more than once, a strip before and after its insert: it is enough that the stops
 * come one after the other somewhere on the way.
 */
export function alwaysPasses(
  circuit: Circuit,
  start: number,
  stops: readonly Address[],
  output: Address,
): boolean {
  const atStop = stops.map((stop) => new Set(stagesWithin(circuit, stop)));
  /** How many stops are left to pass, from the first on, once a stage was passed against the signal. */
  const leftAfter = (stage: number, left: number): number =>
    left > 0 && atStop[left - 1]?.has(stage) ? leftAfter(stage, left - 1) : left;

  // Walks against the signal from the output. What stands at a stage is seen once for each count of stops left.
  const seen = new Set<number>();
  const waiting: { stage: number; left: number }[] = [];
  const reach = (stage: number, before: number) => {
    const left = leftAfter(stage, before);
    const key = stage * (stops.length + 1) + left;
    if (seen.has(key)) return;
    seen.add(key);
    waiting.push({ stage, left });
  };
  for (const stage of stagesOf(circuit, output)) reach(stage, stops.length);
  let arrives = false;
  for (let here = waiting.pop(); here; here = waiting.pop()) {
    if (here.stage === start) {
      if (here.left > 0) return false;
      arrives = true;
    }
    for (const { from, ratio } of circuit.wires[here.stage] ?? []) {
      if (ratio !== 0) reach(from, here.left);
    }
  }
  return arrives;
}
