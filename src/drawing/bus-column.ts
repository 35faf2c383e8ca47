import {
  DESK_MAIN,
  deskOwner,
  listens,
  type Owner,
  part,
  type StripType,
  type Subgroup,
} from '../../simulator/index.ts';
import { bareColumn } from './bare-column.ts';
import type { Column, WireLine, WireRole } from './drawing.ts';
import { type Rows, rowsOf } from './rows.ts';
import { runDown } from './run.ts';
import { sideJackAt } from './side-jack.ts';
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

/** A subgroup: its rail rises at its left, and it runs down to the main bus, or to what its jacks feed. */
export function subgroupColumn(
  { rig, rows, showsMain }: Shown,
  { id, label, main }: Subgroup,
  railY: number,
  x: number,
): Column {
  const owner = deskOwner(id);
  const end = main ? rows.main : (rows.feet ?? rows.end);
  const column = busColumn(rows, owner, 'subgroup', SUBGROUP, railY, x, end);
  const mute = rowsOf(rows, SUBGROUP).at(-1);
  const solo = listens(rig) ? rows.solo : undefined;
  return {
    ...column,
    ...headOf(label),
    assigns: main && showsMain ? [mainAssign(owner, x, rows)] : [],
    foot: main ? undefined : { x, y: end },
    sideJacks: main && mute ? [sideJackAt(part(owner, 'out'), x, mute)] : [],
    toggles:
      solo === undefined
        ? []
        : [{ address: part(owner, 'solo'), word: 'solo', at: { x, y: solo } }],
  };
}

/** The head of a subgroup: a short word that its name begins with stands above the rest, `Sub` where there is none. */
function headOf(label: string): Pick<Column, 'mark' | 'label'> {
  const [, mark, rest] = /^(\S{1,4})\s+(.+)$/.exec(label) ?? [];
  return mark && rest
    ? { mark, label: rest }
    : { mark: 'Sub', label: label.replace(/^Subgroup\s+/, '') };
}

/** The main bus: its rail rises at its left, and it runs down to what is patched to it. */
export const mainColumn = ({ rows }: Shown, x: number): Column => ({
  ...busColumn(rows, DESK_MAIN, 'main', MAIN, rows.main, x, rows.main - MAIN_FOOT),
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
  const start = rows.top + 2;
  const from = { place: part(owner, 'sum'), y: start };
  const run = runDown(owner, kind, rowsOf(rows, stages), from, end, x);
  const rising = riser(owner, kind, x, railY, start);
  return { ...bareColumn(owner, kind, x), ...run, wires: [rising, ...run.wires] };
}

/** How far a riser is drawn into the wires that it comes from and goes on in, in units of the drawing. */
const INTO = 4;

/**
 * A wire from the rail of a bus up at the left of its column, and over to its top.
 *
 * @param x of the column, as the two heights in units of the drawing.
 */
export function riser(
  owner: Owner,
  role: WireRole,
  x: number,
  railY: number,
  top: number,
): WireLine {
  const side = x - RISER_SIDE;
  return {
    place: part(owner, 'sum'),
    role,
    points: [
      { x: side, y: railY },
      { x: side, y: top },
      { x, y: top },
    ],
    corners: [
      { x: side - INTO, y: railY },
      { x, y: top + INTO },
    ],
  };
}
