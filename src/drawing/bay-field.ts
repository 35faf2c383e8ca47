import { type Address, bayPoints, jacks, type Rig } from '../../simulator/index.ts';
import type { Point } from './drawing.ts';

/** Width of a point of the bay in pixels, as in the style sheet. */
export const CELL = 104;
/** Heights within a row, likewise: its name, the names of jacks, a socket, and what is between the two sockets. */
export const NAME = 48;
export const LABEL = 46;
export const SOCKET = 32;
export const GAP = 28;
export const ROW = NAME + 2 * LABEL + 2 * SOCKET + GAP;

/** Two jacks above one another: one that comes out, and one that goes in. */
export interface FieldCell {
  /** What is written between them: the number of the point. Nothing off the bay. */
  readonly number: number | undefined;
  readonly top: Address | undefined;
  readonly bottom: Address | undefined;
}

/** A row of jacks. */
export interface FieldRow {
  readonly label: string;
  /** What the normals of its points are; nothing off the bay. */
  readonly kind: 'full' | 'half' | 'open' | undefined;
  readonly cells: readonly FieldCell[];
}

/** A patchbay as it is drawn: its rows, below them the jacks that are not on it, and where each jack is. */
export interface BayField {
  readonly rows: readonly FieldRow[];
  /** The middle of its socket, by jack. */
  readonly sockets: ReadonlyMap<Address, Point>;
  readonly width: number;
  readonly height: number;
}

/** Lays out the patchbay of a rig. It depends on the rig alone. Without a bay all jacks stand in the last row. */
export function layBay(rig: Rig): BayField {
  const points = bayPoints(rig);
  const isOff = (jack: Address) => !points.has(jack);
  const { outputs, inputs } = jacks(rig);
  const [tops, bottoms] = [outputs.filter(isOff), inputs.filter(isOff)];
  const others = Array.from(
    { length: Math.max(tops.length, bottoms.length) },
    (_, index): FieldCell => ({ number: undefined, top: tops[index], bottom: bottoms[index] }),
  );
  const rows: FieldRow[] = (rig.bay?.rows ?? []).map(({ label, kind, points: cells }) => ({
    label,
    kind,
    cells: cells.map(({ top, bottom }, index) => ({ number: index + 1, top, bottom })),
  }));
  if (others.length > 0) rows.push({ label: 'Not on the bay', kind: undefined, cells: others });
  const upper = NAME + LABEL + SOCKET / 2;
  const sockets = new Map(
    rows.flatMap(({ cells }, row) =>
      cells.flatMap(({ top, bottom }, cell) => {
        const x = (cell + 0.5) * CELL;
        const y = row * ROW + upper;
        return [
          ...(top === undefined ? [] : [[top, { x, y }] as const]),
          ...(bottom === undefined ? [] : [[bottom, { x, y: y + SOCKET + GAP }] as const]),
        ];
      }),
    ),
  );
  const width = CELL * Math.max(...rows.map(({ cells }) => cells.length));
  return { rows, sockets, width, height: ROW * rows.length };
}
