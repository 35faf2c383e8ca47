import { type Address, type Owner, part } from '../../simulator/index.ts';
import type { FaderSlot, InsertMark, StageMark, WireLine, WireRole } from './drawing.ts';
import type { Row } from './rows.ts';

/** Half the height that an insert takes out of its wire. */
const INSERT_REACH = 18;
/** How far right of its wire a device stands: the wire after the fader and the risers of buses run at the left. */
const DEVICE_SIDE = 14;

/** The way down of a strip or bus: its wire, with its stages on it. */
export interface Run {
  readonly wires: readonly WireLine[];
  readonly stages: readonly StageMark[];
  readonly inserts: readonly InsertMark[];
  readonly faders: readonly FaderSlot[];
}

/** Where a row's mark stands. */
const middleOf = ({ top, bottom }: Row): number => (top + bottom) / 2;

/** How far inside its row the slot of a fader begins and ends. */
const SLOT_INSET = { top: 18, bottom: 12 };

/** What a row takes out of the wire: the reach of an insert, the slot of a fader, of other stages nothing. */
function gapIn(row: Row): { readonly top: number; readonly bottom: number } {
  const y = middleOf(row);
  switch (row.stage) {
    case 'insert':
      return { top: y - INSERT_REACH, bottom: y + INSERT_REACH };
    case 'fader':
      return { top: row.top + SLOT_INSET.top, bottom: row.bottom - SLOT_INSET.bottom };
    default:
      return { top: y, bottom: y };
  }
}

/**
 * Draws a way down through the rows of some stages, from one height to another.
 *
 * Each piece of wire carries what stands at the stage above it. Inserts and faders leave a gap, since
 * how the wire runs through them depends on where they stand.
 */
export function runDown(
  owner: Owner,
  role: WireRole,
  rows: readonly Row[],
  from: { readonly place: Address; readonly y: number },
  to: number,
  x: number,
): Run {
  const marks = rows.map(
    (row): StageMark => ({
      stage: row.stage,
      place: part(owner, row.stage),
      at: { x, y: middleOf(row) },
    }),
  );
  const gaps = rows.map((row) => ({ place: part(owner, row.stage), ...gapIn(row) }));
  const starts = [{ place: from.place, bottom: from.y }, ...gaps];
  const wires = starts.map(
    ({ place, bottom }, index): WireLine => ({
      place,
      role,
      points: [
        { x, y: bottom },
        { x, y: gaps[index]?.top ?? to },
      ],
    }),
  );
  return {
    wires,
    stages: marks,
    inserts: marks
      .filter(({ stage }) => stage === 'insert')
      .map(({ at: { y } }) => ({
        owner,
        top: { x, y: y - INSERT_REACH },
        bottom: { x, y: y + INSERT_REACH },
        device: { x: x + DEVICE_SIDE, y },
      })),
    faders: rows.flatMap((row, index) =>
      row.stage === 'fader'
        ? [
            {
              address: part(owner, row.stage),
              before: starts[index]?.place ?? from.place,
              x,
              top: gapIn(row).top + row.lead,
              bottom: gapIn(row).bottom - row.lead,
              from: gapIn(row).top,
              to: gapIn(row).bottom,
              partner: undefined,
            },
          ]
        : [],
    ),
  };
}
