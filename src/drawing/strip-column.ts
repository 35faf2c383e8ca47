import {
  deskOwner,
  type Owner,
  part,
  type Rig,
  type Strip,
  stripTypeOf,
} from '../../simulator/index.ts';
import type { AssignCrossing, Column, SendCrossing, WireLine } from './drawing.ts';
import { type Row, type Rows, rowsOf } from './rows.ts';
import { runDown } from './run.ts';

/** How far left of its strip the wire after the fader runs. */
const AFTER_SIDE = 24;
/** How far above the end of its row the wire after the fader leaves the strip: past the slot of a fader. */
const ABOVE_NEXT_ROW = 2;

/** What a column needs to know of the rest. */
export interface Shown {
  readonly rig: Rig;
  readonly rows: Rows;
  readonly auxes: Rig['desk']['auxes'];
  readonly subgroups: Rig['desk']['subgroups'];
  readonly showsMain: boolean;
}

/** A strip: its wire in signal order, its sends on either side of the fader, its assigns. */
export function stripColumn(
  { rig, rows, auxes, subgroups, showsMain }: Shown,
  strip: Strip,
  x: number,
): Column {
  const owner = deskOwner(strip.id);
  const type = stripTypeOf(rig, strip);
  const own = rowsOf(rows, type);
  const input = part(owner, 'in');
  const run = runDown(owner, 'strip', own, { place: input, y: rows.top }, rows.main, x);
  const tapped = own.find(({ stage }) => stage === type.taps.post);
  const after = afterWire(part(owner, type.taps.post), x, tapped, rows);
  return {
    ...run,
    owner,
    kind: 'strip',
    x,
    mark: strip.mark,
    label: strip.label,
    input,
    foot: undefined,
    wires: auxes.length > 0 ? [after, ...run.wires] : run.wires,
    sends: auxes.map(({ id, tap }, index): SendCrossing => {
      const address = part(owner, id);
      const y = rows.auxes[index] ?? 0;
      const isSwitchable = tap === 'switchable';
      return {
        address,
        tapSwitch: isSwitchable ? part(address, 'tap') : undefined,
        fixedTap: isSwitchable ? undefined : tap,
        before: { x, y },
        after: { x: x - AFTER_SIDE, y },
      };
    }),
    assigns: [
      ...subgroups.map(({ id }, index) => ({
        address: part(owner, id),
        bus: 'subgroup' as const,
        at: { x, y: rows.subgroups[index] ?? 0 },
      })),
      ...(showsMain ? [mainAssign(owner, x, rows)] : []),
    ],
  };
}

/** The crossing with the main rail, where a strip or subgroup ends. */
export const mainAssign = (owner: Owner, x: number, { main }: Rows): AssignCrossing => ({
  address: part(owner, 'main'),
  bus: 'main',
  at: { x, y: main },
});

/**
 * The thin wire that comes back up from below the fader into the band of the aux rails; or down into it,
 * on a desk that takes such a send above the band.
 */
function afterWire(
  place: string,
  x: number,
  tapped: Row | undefined,
  { top, band }: Rows,
): WireLine {
  const from = (tapped?.bottom ?? top) - ABOVE_NEXT_ROW;
  const to = from > band.top ? band.top : band.bottom;
  return {
    place,
    role: 'after',
    points: [
      { x, y: from },
      { x: x - AFTER_SIDE, y: from },
      { x: x - AFTER_SIDE, y: to },
    ],
  };
}
