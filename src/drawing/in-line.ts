import {
  type Address,
  deskOwner,
  firstPathOf,
  type Owner,
  part,
  type Rig,
  type Strip,
  type StripType,
  secondPathOf,
  stripTypeOf,
} from '../../simulator/index.ts';
import type { Column, FaderPartner, Frame, ToggleMark, WireLine } from './drawing.ts';
import { endOfRow, type Rows, rowsOf } from './rows.ts';

/** The two paths of an in-line strip, side by side: the switch between them, and the swap of their faders. */

/** Room between the two paths, for the wire that rises from the first to the second, and for the swap. */
export const BETWEEN_PATHS = 40;
/** How far right of the first path the wire to the second one rises. */
const RISE_SIDE = 84;
/** How far the frame around both paths reaches to either side of their wires. */
const FRAME_SIDE = 37;
/** Half the height of the switch that feeds the second path. */
const SWITCH_REACH = 12;
/** How far left of the second path the contact of the first one stands. */
const CONTACT_SIDE = 16;

/** Owners to be drawn, with both paths of an in-line strip where one is among them. */
export function withBothPaths(rig: Rig, show: readonly Owner[]): readonly Owner[] {
  const others = rig.desk.strips.flatMap((strip) => {
    const other = firstPathOf(rig, strip) ?? secondPathOf(rig, strip);
    const isMissing =
      other && show.includes(deskOwner(strip.id)) && !show.includes(deskOwner(other.id));
    return isMissing ? [deskOwner(other.id)] : [];
  });
  return others.length === 0 ? show : [...show, ...others];
}

/** Strips in the order in which they are drawn: a second path beside its first one. */
export const sideBySide = (rig: Rig, strips: readonly Strip[]): Strip[] =>
  strips
    .filter(({ inline }) => inline === undefined)
    .flatMap((strip) => {
      const second = secondPathOf(rig, strip);
      return second && strips.includes(second) ? [strip, second] : [strip];
    });

/** Where the wire of a second path starts: below the switch that feeds it. Nothing for any other strip. */
export function startOfSecondPath(
  { paths }: Rows,
  { id, inline }: Strip,
): { readonly place: Address; readonly y: number } | undefined {
  if (paths === undefined || inline === undefined) return undefined;
  return { place: part(deskOwner(id), 'path'), y: paths + SWITCH_REACH };
}

/** Joins the columns of each in-line strip: the wire to its second path, the switch at its end, and the swap. */
export function joinPaths(rig: Rig, rows: Rows, columns: readonly Column[]): Column[] {
  const columnOf = (strip: Strip | undefined) =>
    strip && columns.find(({ owner }) => owner === deskOwner(strip.id));
  return columns.map((column) => {
    const strip = rig.desk.strips.find(({ id }) => deskOwner(id) === column.owner);
    if (!strip) return column;
    const above = firstPathOf(rig, strip);
    const first = columnOf(above);
    if (above && first) return secondPath(rows, stripTypeOf(rig, above), first, column);
    const second = columnOf(secondPathOf(rig, strip));
    return second ? withPartner(column, second, part(column.owner, 'swap')) : column;
  });
}

/** Frames around the two paths of each in-line strip, from their names down to their solos. */
export function framesOfPairs(rig: Rig, rows: Rows, columns: readonly Column[]): Frame[] {
  return columns.flatMap((second, index) => {
    const strip = rig.desk.strips.find(({ id }) => deskOwner(id) === second.owner);
    const first = columns[index - 1];
    if (!first || strip?.inline === undefined) return [];
    const x = first.x - FRAME_SIDE;
    return [{ x, y: 1, width: second.x + FRAME_SIDE - x, height: rows.end }];
  });
}

/**
 * The second path: its input ends at the switch, to which what the first one has after its fader rises. The swap of
 * the faders stands between the two, and is drawn with this one, over the wires of both.
 */
function secondPath(rows: Rows, type: StripType, first: Column, second: Column): Column {
  const { x } = second;
  const y = rows.paths ?? rows.top;
  const { post } = type.taps;
  const tapped = rowsOf(rows, type).find(({ stage }) => stage === post);
  const leaves = tapped ? endOfRow(tapped) : y;
  const rise = first.x + RISE_SIDE;
  const pathSwitch = {
    address: part(second.owner, 'path'),
    input: { x, y: y - SWITCH_REACH },
    first: { x: x - CONTACT_SIDE, y },
    end: { x, y: y + SWITCH_REACH },
  };
  const input: WireLine = {
    place: part(second.owner, 'in'),
    role: 'strip',
    points: [{ x, y: rows.top }, pathSwitch.input],
  };
  const toSecond: WireLine = {
    place: part(first.owner, post),
    role: 'after',
    points: [{ x: first.x, y: leaves }, { x: rise, y: leaves }, { x: rise, y }, pathSwitch.first],
  };
  const swap = part(first.owner, 'swap');
  const toggles = second.faders.map(
    ({ from, top }): ToggleMark => ({
      address: swap,
      word: 'swap',
      at: { x: (first.x + x) / 2, y: (from + top) / 2 },
    }),
  );
  return {
    ...withPartner(second, first, swap),
    toggles: [...second.toggles, ...toggles],
    wires: [toSecond, input, ...second.wires],
    pathSwitch,
  };
}

/** A column whose fader can be swapped with that of another. */
function withPartner(column: Column, other: Column, swap: Address): Column {
  const [fader] = other.faders;
  if (!fader) return column;
  const partner: FaderPartner = { swap, x: fader.x, address: fader.address, before: fader.before };
  return { ...column, faders: column.faders.map((slot) => ({ ...slot, partner })) };
}
