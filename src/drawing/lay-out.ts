import {
  type Address,
  CONTROL_ROOM,
  DESK_MAIN,
  deskOwner,
  listens,
  type Owner,
  part,
  type Rig,
} from '../../simulator/index.ts';
import { BUS_STAGES, mainColumn, RISER_SIDE, subgroupColumn } from './bus-column.ts';
import { controlRoomColumn, controlRoomHeight } from './control-room-column.ts';
import type { Drawing, Rail, RowName, WireLine } from './drawing.ts';
import { BETWEEN_PATHS, framesOfPairs, joinPaths, sideBySide, withBothPaths } from './in-line.ts';
import { layRows, type Rows, typesInUse } from './rows.ts';
import { stripColumn } from './strip-column.ts';

/** Room at the left for the names of rows and rails. */
export const GUTTER = 66;
/** Room for the name of the wire after the fader, left of the first strip. */
const AFTER_NAME = 16;
const STRIP = 78;
const BUS = 92;
/** Room at the right for the names of what the buses feed. */
const ENDS = 130;
/** Room for the solo of an aux between its master and the name of what it feeds. */
const AUX_SOLO = 40;
/** Room for the control room, and for the names below it. */
const CONTROL = 90;

/**
 * Lays out a desk, or the part of it whose owners are listed: strips run down, buses run across.
 * It depends on the rig alone; where the controls stand changes nothing about it.
 *
 * @param listed owners to be drawn. Without a strip, an aux or a subgroup in it, none of that kind is drawn;
 *   when it is left out, all are. An in-line strip is drawn whole.
 */
export function layOut(rig: Rig, listed?: readonly Owner[]): Drawing {
  const show = listed && withBothPaths(rig, listed);
  const isShown = ({ id }: { readonly id: string }) => !show || show.includes(deskOwner(id));
  const strips = sideBySide(rig, rig.desk.strips.filter(isShown));
  const auxes = rig.desk.auxes.filter(isShown);
  const subgroups = rig.desk.subgroups.filter(isShown);
  const types = [...typesInUse(rig), ...BUS_STAGES];
  const rows = layRows(rig, types, auxes.length, subgroups.length);
  const showsMain = !show || show.includes(DESK_MAIN);
  const showsControl = rig.desk.controlRoom && (!show || show.includes(CONTROL_ROOM));
  const shown = { rig, rows, auxes, subgroups, showsMain };

  let x = GUTTER + AFTER_NAME;
  const next = (width: number) => {
    x += width;
    return x - width / 2;
  };
  const runs = strips.map((strip) => {
    if (strip.inline) x += BETWEEN_PATHS;
    return stripColumn(shown, strip, next(STRIP));
  });
  const stripColumns = joinPaths(rig, rows, runs);
  const stripsEnd = x;
  x += 10;
  const subgroupColumns = subgroups.map((subgroup, index) =>
    subgroupColumn(shown, subgroup, rows.subgroups[index] ?? 0, next(BUS)),
  );
  const mainColumns = showsMain ? [mainColumn(shown, next(BUS))] : [];
  const columnsEnd = x;
  const soloRoom = listens(rig) && auxes.length > 0 ? AUX_SOLO : 0;
  x += ENDS + soloRoom;
  const controlColumns = showsControl ? [controlRoomColumn(rig, next(CONTROL))] : [];
  const width = x + (showsControl ? CONTROL / 2 : 0);

  const riserOf = (owner: Owner) => {
    const column = [...subgroupColumns, ...mainColumns].find((one) => one.owner === owner);
    return (column?.x ?? stripsEnd + RISER_SIDE) - RISER_SIDE;
  };
  const rails = [
    ...auxes.map(({ id, label }, index): Rail => {
      const owner = deskOwner(id);
      const y = rows.auxes[index] ?? 0;
      const master = { address: part(owner, 'level'), at: { x: columnsEnd - 4, y } };
      return {
        owner,
        role: 'aux',
        label,
        y,
        master,
        wires: [
          across(part(owner, 'sum'), 'aux', GUTTER, master.at.x, y),
          across(part(owner, 'level'), 'aux', master.at.x, columnsEnd + 22, y),
        ],
        end: { x: columnsEnd + 30 + soloRoom, y },
        solo: listens(rig)
          ? { address: part(owner, 'solo'), word: 'solo', at: { x: columnsEnd + 40, y } }
          : undefined,
      };
    }),
    ...subgroups.map(({ id, label }, index): Rail => {
      const owner = deskOwner(id);
      const y = rows.subgroups[index] ?? 0;
      return bus(owner, 'subgroup', label.replace(/^Subgroup/, 'Sub'), y, riserOf(owner));
    }),
    ...(showsMain ? [bus(DESK_MAIN, 'main', 'Main', rows.main, riserOf(DESK_MAIN))] : []),
  ];
  const [firstStrip] = stripColumns;
  return {
    width,
    top: 0,
    height: Math.max(rows.height, showsControl ? controlRoomHeight(rig) : 0),
    columns: [...stripColumns, ...subgroupColumns, ...mainColumns, ...controlColumns],
    rails,
    rows: rowNames(rows),
    pairs: framesOfPairs(rig, rows, stripColumns),
    tapNames:
      auxes.length > 0 && firstStrip
        ? {
            before: { x: firstStrip.x + 6, y: rows.band.top + 10 },
            after: { x: firstStrip.x - 28, y: rows.band.top + 10 },
          }
        : undefined,
  };
}

export const across = (
  place: Address,
  role: WireLine['role'],
  from: number,
  to: number,
  y: number,
): WireLine => ({
  place,
  role,
  points: [
    { x: from, y },
    { x: to, y },
  ],
});

const bus = (
  owner: Owner,
  role: 'subgroup' | 'main',
  label: string,
  y: number,
  riser: number,
): Rail => ({
  owner,
  role,
  label,
  y,
  wires: [across(part(owner, 'sum'), role, GUTTER, riser, y)],
  end: undefined,
  master: undefined,
  solo: undefined,
});

const rowNames = (rows: Rows): RowName[] => [
  { text: 'from', y: rows.top - 16 },
  ...(rows.paths === undefined ? [] : [{ text: 'path', y: rows.paths }]),
  ...[...rows.above, ...rows.below].map(({ stage, top, bottom }) => ({
    text: stage,
    y: (top + bottom) / 2,
  })),
  ...(rows.solo === undefined ? [] : [{ text: 'solo', y: rows.solo }]),
];
