import type { Address } from './address.ts';
import { bayPoints } from './bay.ts';
import { insertSendOf, jacks } from './jacks.ts';
import { onceARig } from './once-a-rig.ts';

/** What feeds an input jack without a cord. */
export interface Normal {
  readonly output: Address;
  /** What breaks it: `full`, a plug in either jack; `half`, one in the input jack. */
  readonly kind: 'full' | 'half';
}

/** The normals of a rig. */
export interface Normals {
  readonly into: ReadonlyMap<Address, Normal>;
  /** The input jacks that an output jack feeds by normals. */
  readonly from: ReadonlyMap<Address, readonly Address[]>;
}

/**
 * The normals of a rig: those of the patchbay, and the half-normal of each insert from its send to its return.
 * Where a return is on the bay, the bay decides instead.
 */
export const normals = onceARig((rig): Normals => {
  const points = bayPoints(rig);
  const into = new Map<Address, Normal>();
  const from = new Map<Address, Address[]>();
  for (const input of jacks(rig).inputs) {
    const normal = normalAt(input, points);
    if (!normal) continue;
    into.set(input, normal);
    from.set(normal.output, [...(from.get(normal.output) ?? []), input]);
  }
  return { into, from };
});

function normalAt(input: Address, points: ReturnType<typeof bayPoints>): Normal | undefined {
  const point = points.get(input);
  if (point) {
    const { kind, top } = point;
    return kind === 'open' || top === undefined ? undefined : { output: top, kind };
  }
  const output = insertSendOf(input);
  return output === undefined ? undefined : { output, kind: 'half' };
}
