import type { Circuit, Stage, Wire } from '../circuit/circuit.ts';
import type { Solution } from './solution.ts';

/** What a solution of the same rig still tells about a circuit. */
export interface Kept {
  readonly before: Solution;
  /** 1 by stage that does something else than before, or that something else comes into. */
  readonly changed: Uint8Array;
  /** Whether stages can be taken in the order of before: no wire was opened, and none closed where there were rings. */
  readonly isInOrder: boolean;
}

/** Holds a circuit against one that was solved before. @returns nothing where they have not the same stages. */
export function keptFrom(circuit: Circuit, before: Solution): Kept | undefined {
  const { stages, wires, signals } = before.circuit;
  if (signals !== circuit.signals || stages.length !== circuit.stages.length) return undefined;
  const changed = new Uint8Array(stages.length);
  // Where a wire of a ring is closed, stages that were taken together may no longer have to be.
  const isApart = before.order.length === stages.length;
  let isInOrder = true;
  circuit.stages.forEach((stage, index) => {
    const known = stages[index];
    const into = circuit.wires[index];
    const intoBefore = wires[index];
    if (stage === known && into === intoBefore) return;
    if (!known || !into || !intoBefore) return;
    if (stage === known && alike(into, intoBefore, sameWire)) return;
    changed[index] = 1;
    isInOrder &&=
      alike(heardBy(stage), heardBy(known)) &&
      !leadsMore(into, intoBefore) &&
      (isApart || !leadsMore(intoBefore, into));
  });
  return { before, changed, isInOrder };
}

/**
 * Whether a change reaches stages that are solved together: one of them has changed, or depends on one that a
 * change has reached.
 *
 * @param reached 1 by stage that was reached so far.
 */
export function isReached(
  { changed, isInOrder }: Kept,
  { stages, wires }: Circuit,
  component: readonly number[],
  reached: Uint8Array,
): boolean {
  // Where other wires are open, a ring may have lost or won members, even if those left look alike.
  if (component.length > 1 && !isInOrder) return true;
  for (const stage of component) {
    if (changed[stage] === 1) return true;
    for (const { from, ratio } of wires[stage] ?? []) {
      if (ratio !== 0 && reached[from] === 1) return true;
    }
    for (const heard of heardBy(stages[stage])) if (reached[heard] === 1) return true;
  }
  return false;
}

const sameWire = (one: Wire, other: Wire): boolean =>
  one.from === other.from && one.ratio === other.ratio;

/** Whether one of some wires is open from where none of others is. */
const leadsMore = (some: readonly Wire[], others: readonly Wire[]): boolean =>
  some.some(
    ({ from, ratio }) =>
      ratio !== 0 && !others.some((other) => other.from === from && other.ratio !== 0),
  );

/** The stages that a compressor listens to. */
const heardBy = (stage: Stage | undefined): readonly number[] =>
  stage?.law.kind === 'compressor' ? stage.law.listensTo : NOBODY;

const NOBODY: readonly number[] = [];

function alike<One>(
  some: readonly One[],
  others: readonly One[],
  same = (one: One, other: One) => one === other,
): boolean {
  return (
    some.length === others.length && some.every((one, index) => same(one, others[index] as One))
  );
}
