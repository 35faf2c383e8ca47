import { DESK_MAIN, deskOwner, type Owner, part, type StripStage } from '../../simulator/index.ts';
import type { Column } from './drawing.ts';
import type { Rows } from './rows.ts';
import { runDown } from './run.ts';
import type { Shown } from './strip-column.ts';

/** How far left of its column a bus rises from its rail. */
export const RISER_SIDE = 30;

/** How far above its own rail the main bus ends. */
const MAIN_FOOT = 40;

/** A subgroup: its rail rises at its left, and it runs down to the main bus. */
export function subgroupColumn(
  { rows }: Shown,
  { id, label }: { readonly id: string; readonly label: string },
  railY: number,
  x: number,
): Column {
  const owner = deskOwner(id);
  const stages: StripStage[] = ['insert', 'fader', 'mute'];
  return {
    ...busColumn(rows, owner, 'subgroup', stages, railY, x, rows.main),
    mark: 'Sub',
    label: label.replace(/^Subgroup\s+/, ''),
    assigns: [{ address: part(owner, 'main'), bus: 'main', at: { x, y: rows.main } }],
  };
}

/** The main bus: its rail rises at its left, and it runs down to what is patched to it. */
export const mainColumn = ({ rows }: Shown, x: number): Column => ({
  ...busColumn(rows, DESK_MAIN, 'main', ['insert', 'fader'], rows.main, x, rows.main - 30),
  mark: 'Main',
  label: 'bus',
  foot: { x, y: rows.main - MAIN_FOOT },
});

function busColumn(
  rows: Rows,
  owner: Owner,
  kind: 'subgroup' | 'main',
  stages: readonly StripStage[],
  railY: number,
  x: number,
  end: number,
): Column {
  const riser = x - RISER_SIDE;
  const start = rows.top + 6;
  const place = part(owner, 'sum');
  const run = runDown(owner, kind, rows, stages, { place, y: start }, end, x);
  const rising = {
    place,
    role: kind,
    points: [
      { x: riser, y: railY },
      { x: riser, y: start },
      { x, y: start },
    ],
  };
  return {
    ...run,
    owner,
    kind,
    x,
    mark: '',
    label: '',
    input: undefined,
    foot: undefined,
    wires: [rising, ...run.wires],
    sends: [],
    assigns: [],
  };
}
