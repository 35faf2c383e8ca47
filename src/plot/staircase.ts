import { type LevelAxis, shareAlong } from './level-axis.ts';

/** A point of a drawing, in its own units: across from the left, down from the top. */
export type Point = readonly [across: number, down: number];

/** The measure of a drawing: its width, and the height of one row. */
export interface RowSize {
  readonly width: number;
  readonly row: number;
}

/**
 * Levels as a staircase that runs down: one row for each, with a tread between them. Silence stands at the
 * left edge. Where there is no level the stairs break off.
 *
 * @returns the unbroken pieces, from top to bottom; each point with a level has both ends of its row.
 */
export function staircase(
  levels: readonly (number | undefined)[],
  axis: LevelAxis,
  { width, row }: RowSize,
): Point[][] {
  const pieces: Point[][] = [];
  let piece: Point[] | undefined;
  levels.forEach((level, index) => {
    if (level === undefined) {
      piece = undefined;
      return;
    }
    if (!piece) {
      piece = [];
      pieces.push(piece);
    }
    const across = width * shareAlong(axis, level);
    piece.push([across, index * row], [across, (index + 1) * row]);
  });
  return pieces;
}
