import { deskOwner, part, type Rig, type Strip, stripTypeOf } from '../../simulator/index.ts';
import type { Column, SendCrossing, WireLine } from './drawing.ts';
import type { Rows } from './rows.ts';
import { heightOf, runDown } from './run.ts';

/** How far left of its strip the wire after the fader runs. */
const AFTER_SIDE = 24;

/** What a column needs to know of the rest. */
export interface Shown {
  readonly rig: Rig;
  readonly rows: Rows;
  readonly auxes: Rig['desk']['auxes'];
  readonly subgroups: Rig['desk']['subgroups'];
}

/** A strip: its wire in signal order, its sends on either side of the fader, its assigns. */
export function stripColumn(
  { rig, rows, auxes, subgroups }: Shown,
  strip: Strip,
  x: number,
): Column {
  const owner = deskOwner(strip.id);
  const { stages, taps } = stripTypeOf(rig, strip);
  const input = part(owner, 'in');
  const run = runDown(owner, 'strip', rows, stages, { place: input, y: rows.top }, rows.main, x);
  const after = afterWire(part(owner, taps.post), x, heightOf(rows, taps.post) + 20, rows);
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
      { address: part(owner, 'main'), bus: 'main', at: { x, y: rows.main } },
    ],
  };
}

/** The thin wire that comes back up from below the fader into the band of the aux rails. */
const afterWire = (place: string, x: number, from: number, { band }: Rows): WireLine => ({
  place,
  role: 'after',
  points: [
    { x, y: from },
    { x: x - AFTER_SIDE, y: from },
    { x: x - AFTER_SIDE, y: band.top },
  ],
});
