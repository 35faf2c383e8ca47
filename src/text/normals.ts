import {
  type Address,
  bayPoints,
  cordFrom,
  feedOf,
  fullLabel,
  NONE,
  OPEN,
  type Rig,
  type Setup,
  valueAt,
} from '../../simulator/index.ts';

/**
 * Where a jack stands on the bay, and what its normal does: `Row A 3, normalled: Output 3`. Nothing where it is not
 * on the bay.
 */
export function normalText(setup: Setup, jack: Address): string | undefined {
  const { rig } = setup;
  const point = bayPoints(rig).get(jack);
  if (!point) return undefined;
  const { label, kind, top, bottom } = point;
  if (kind === 'open' || top === undefined || bottom === undefined) return `${label}, no normal`;
  const other = fullLabel(rig, jack === bottom ? top : bottom);
  if (feedOf(setup, bottom)?.by === 'normal') return `${label}, normalled: ${other}`;
  return `${label}, not normalled to ${other}: broken by ${breakerText(rig, setup, top, bottom)}`;
}

/** What breaks the normal of a point. */
function breakerText(rig: Rig, setup: Setup, top: Address, bottom: Address): string {
  const plug = String(valueAt(setup, bottom));
  if (plug === OPEN) return 'an open plug';
  if (plug !== NONE) return `the cord from ${fullLabel(rig, plug)}`;
  return `the cord to ${fullLabel(rig, cordFrom(setup, top) ?? '')}`;
}
