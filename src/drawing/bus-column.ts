import { DESK_MAIN, deskOwner, type Owner, part, type StripType } from '../../simulator/index.ts';
import type { Column } from './drawing.ts';
import { type Rows, rowsOf } from './rows.ts';
import { runDown } from './run.ts';
import { mainAssign, type Shown } from './strip-column.ts';

type Stages = Pick<StripType, 'stages' | 'taps'>;

/** The stages of a subgroup, and of the main bus. They stand in the rows of the strips. */
const SUBGROUP: Stages = {
  stages: ['insert', 'fader', 'mute'],
  taps: { pre: 'insert', post: 'mute' },
};
const MAIN: Stages = { stages: ['insert', 'fader'], taps: { pre: 'insert', post: 'fader' } };
export const BUS_STAGES: readonly Stages[] = [SUBGROUP, MAIN];

/** How far left of its column a bus rises from its rail. */
export const RISER_SIDE = 30;

/** How far above its own rail the main bus ends. */
const MAIN_FOOT = 40;

/** A subgroup: its rail rises at its left, and it runs down to the main bus. */
export function subgroupColumn(
  { rows, showsMain }: Shown,
  { id, label }: { readonly id: string; readonly label: string },
  railY: number,
  x: number,
): Column {
  const owner = deskOwner(id);
  return {
    ...busColumn(rows, owner, 'subgroup', SUBGROUP, railY, x, rows.main),
    mark: 'Sub',
    label: label.replace(/^Subgroup\s+/, ''),
    assigns: showsMain ? [mainAssign(owner, x, rows)] : [],
  };
}

/** The main bus: its rail rises at its left, and it runs down to what is patched to it. */
export const mainColumn = ({ rows }: Shown, x: number): Column => ({
  ...busColumn(rows, DESK_MAIN, 'main', MAIN, rows.main, x, rows.main - 30),
  mark: 'Main',
  label: 'bus',
  foot: { x, y: rows.main - MAIN_FOOT },
});

function busColumn(
  rows: Rows,
  owner: Owner,
  kind: 'subgroup' | 'main',
  stages: Stages,
  railY: number,
  x: number,
  end: number,
): Column {
  const riser = x - RISER_SIDE;
  const start = rows.top + 2;
  const place = part(owner, 'sum');
  const run = runDown(owner, kind, rowsOf(rows, stages), { place, y: start }, end, x);
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
