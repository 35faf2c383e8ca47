import {
  auxesOf,
  busesOf,
  deskOwner,
  type Owner,
  part,
  type Rig,
  type Strip,
  stripTypeOf,
} from '../../simulator/index.ts';
import { bareColumn } from './bare-column.ts';
import type { AssignCrossing, Column, SendCrossing, ToggleMark, WireLine } from './drawing.ts';
import { startOfSecondPath } from './in-line.ts';
import { endOfRow, type Row, type Rows, rowsOf } from './rows.ts';
import { runDown } from './run.ts';
import { sideJackAt } from './side-jack.ts';

/** How far left of its strip the wire after the fader runs. */
export const AFTER_SIDE = 24;
/** How far solo and solo-safe stand from the middle of their strip. */
const SOLO_SIDE = 18;

/** What a column needs to know of the rest. */
export interface Shown {
  readonly rig: Rig;
  readonly rows: Rows;
  readonly auxes: Rig['desk']['auxes'];
  readonly subgroups: Rig['desk']['subgroups'];
  readonly showsMain: boolean;
}

/** A strip: its wire in signal order, the sends and assigns that it has, its solo and its direct output. */
export function stripColumn(shown: Shown, strip: Strip, x: number): Column {
  const { rig, rows } = shown;
  const owner = deskOwner(strip.id);
  const type = stripTypeOf(rig, strip);
  const own = rowsOf(rows, type);
  const input = part(owner, 'in');
  const start = startOfSecondPath(rows, strip) ?? { place: input, y: rows.top };
  const assigns = assignsOf(shown, strip, x);
  const run = runDown(owner, 'strip', own, start, endOf(shown, strip, assigns), x);
  const rowOf = (stage: Row['stage'] | undefined) => own.find((row) => row.stage === stage);
  const sends = sendsOf(shown, strip, x);
  const post = type.taps.post;
  const after = { ...afterWire(part(owner, post), x, rowOf(post), rows), sends };
  const direct = rowOf(type.directOut);
  return {
    ...bareColumn(owner, 'strip', x),
    ...run,
    mark: strip.mark,
    label: strip.label,
    input,
    wires: sends.length > 0 ? [after, ...run.wires] : run.wires,
    sends,
    assigns,
    toggles: soloToggles(rig, rows, owner, x),
    sideJacks: direct ? [sideJackAt(part(owner, 'direct'), x, direct)] : [],
  };
}

function sendsOf({ rig, rows, auxes }: Shown, strip: Strip, x: number): SendCrossing[] {
  const own = auxesOf(rig, strip);
  return auxes.flatMap((aux, index): SendCrossing[] => {
    if (!own.includes(aux)) return [];
    const address = part(deskOwner(strip.id), aux.id);
    const y = rows.auxes[index] ?? 0;
    const isSwitchable = aux.tap === 'switchable';
    return [
      {
        address,
        tapSwitch: isSwitchable ? part(address, 'tap') : undefined,
        fixedTap: aux.tap === 'switchable' ? undefined : aux.tap,
        before: { x, y },
        after: { x: x - AFTER_SIDE, y },
      },
    ];
  });
}

function assignsOf(
  { rig, rows, subgroups, showsMain }: Shown,
  strip: Strip,
  x: number,
): AssignCrossing[] {
  const owner = deskOwner(strip.id);
  const buses = busesOf(rig, strip);
  const toSubgroups = subgroups.map(({ id }, index) => ({
    id,
    assign: {
      address: part(owner, id),
      bus: 'subgroup' as const,
      at: { x, y: rows.subgroups[index] ?? 0 },
    },
  }));
  return [
    ...toSubgroups.filter(({ id }) => buses.includes(id)).map(({ assign }) => assign),
    ...(showsMain && buses.includes('main') ? [mainAssign(owner, x, rows)] : []),
  ];
}

/** Where a strip ends: on the main rail, or where it cannot be assigned to that on the last rail that it meets. */
function endOf({ rig, rows }: Shown, strip: Strip, assigns: readonly AssignCrossing[]): number {
  return busesOf(rig, strip).includes('main') ? rows.main : (assigns.at(-1)?.at.y ?? rows.end);
}

/** The crossing with the main rail, where a strip or subgroup ends. */
export const mainAssign = (owner: Owner, x: number, { main }: Rows): AssignCrossing => ({
  address: part(owner, 'main'),
  bus: 'main',
  at: { x, y: main },
});

/** The solo of a strip, and its solo-safe where a solo can cut others. */
function soloToggles({ desk }: Rig, { solo: y }: Rows, owner: Owner, x: number): ToggleMark[] {
  if (y === undefined) return [];
  const mark = (word: 'solo' | 'safe', at: number): ToggleMark => ({
    address: part(owner, word),
    word,
    at: { x: at, y },
  });
  return desk.solo?.includes('in-place')
    ? [mark('solo', x - SOLO_SIDE), mark('safe', x + SOLO_SIDE)]
    : [mark('solo', x)];
}

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
  const from = tapped ? endOfRow(tapped) : top;
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
