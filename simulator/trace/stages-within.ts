import type { Circuit } from '../circuit/circuit.ts';
import type { Address } from '../rig/address.ts';
import { isWithin } from './path.ts';

/** Stages by place or owner. Which stages there are is up to the rig, so that all its circuits share the list of their places. */
const known = new WeakMap<Circuit['stagesAt'], Map<Address, readonly number[]>>();

/** The stages of a place or of an owner, in signal order; of one leg of a place that one alone. */
export function stagesWithin(
  { stages, stagesAt }: Circuit,
  placeOrOwner: Address,
): readonly number[] {
  const ofRig = known.get(stagesAt) ?? new Map<Address, readonly number[]>();
  known.set(stagesAt, ofRig);
  const before = ofRig.get(placeOrOwner);
  if (before) return before;
  const found = stages.flatMap(({ id }, stage) => (isWithin(id, placeOrOwner) ? [stage] : []));
  ofRig.set(placeOrOwner, found);
  return found;
}
