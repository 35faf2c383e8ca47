import { type Address, part } from './address.ts';
import { onceARig } from './once-a-rig.ts';
import type { BayRow, Mult, Rig } from './schema.ts';

/** A point of the patchbay, by either of its jacks. */
export interface BayPoint {
  /** What is written beside it: `Row A 3`. */
  readonly label: string;
  readonly kind: BayRow['kind'];
  /** The output jack above, and the input jack below. */
  readonly top: Address | undefined;
  readonly bottom: Address | undefined;
}

/** The points of the bay, each by its top jack and by its bottom jack. None where there is no bay. */
export const bayPoints = onceARig((rig): ReadonlyMap<Address, BayPoint> => {
  const points = new Map<Address, BayPoint>();
  for (const { label, kind, points: ofRow } of rig.bay?.rows ?? []) {
    ofRow.forEach(({ top, bottom }, index) => {
      const point = { label: `${label} ${index + 1}`, kind, top, bottom };
      if (top !== undefined) points.set(top, point);
      if (bottom !== undefined) points.set(bottom, point);
    });
  }
  return points;
});

const BAY = 'bay';

/** The input jack of a mult. */
export const multIn = ({ id }: Mult): Address => part(part(BAY, id), 'in');

/** The output jacks of a mult, which all carry what comes in. */
export const multOuts = ({ id, outputs }: Mult): readonly Address[] =>
  Array.from({ length: outputs }, (_, index) => part(part(BAY, id), `out${index + 1}`));

/** The mult that a jack belongs to; nothing where it is a jack of something else. */
export function multAt(rig: Rig, jack: Address): Mult | undefined {
  if (!jack.startsWith(BAY)) return undefined;
  return rig.bay?.mults.find(({ id }) => jack.startsWith(`${part(BAY, id)}.`));
}
