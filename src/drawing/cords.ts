import {
  type Address,
  controls,
  feedOf,
  LEGS,
  ownerOf,
  part,
  type Setup,
} from '../../simulator/index.ts';
import type { Column } from './drawing.ts';
import type { BoxColumn, CordMark, GoalMark, RailDot } from './room-drawing.ts';
import { CORDS } from './room-rows.ts';
import { HEAD } from './rows.ts';

/** How far beside its strip a cord may hang: straight above it, unless something else runs down there. */
const LANES = [0, 16, -16, 32];
/** How far wires that run down beside one another are apart at least. */
const APART = 10;

/**
 * What each strip hangs by: cords from the rails that feed its line input, straight down into its wire. Where a
 * column of the box runs down at the same place to another rail past that one, the cord hangs beside it.
 *
 * @param lines heights of the rails, by place.
 */
export const cordsOf = (
  setup: Setup,
  lines: ReadonlyMap<Address, number>,
  strips: readonly Column[],
  above: readonly BoxColumn[],
): CordMark[] => strips.flatMap((column) => cordOf(setup, lines, column, above) ?? []);

function cordOf(
  setup: Setup,
  lines: ReadonlyMap<Address, number>,
  { input, x }: Column,
  above: readonly BoxColumn[],
): CordMark | undefined {
  if (input === undefined) return undefined;
  const isMono = controls(setup.rig).has(input);
  const fed = (isMono ? [undefined] : LEGS).flatMap((side) => {
    const feed = feedOf(setup, side ? part(input, side) : input);
    const y = feed && railHeight(lines, feed.output);
    return y === undefined ? [] : [{ y, side, by: feed?.by }];
  });
  if (fed.length === 0) return undefined;
  const top = Math.min(...fed.map(({ y }) => y));
  const isAlike = ({ dots: others }: GoalMark) =>
    others.length === fed.length && fed.every(({ y }) => others.some(({ at }) => at.y === y));
  const isFree = (at: number) =>
    above.every(
      ({ column, goal }) => Math.abs(column.x - at) >= APART || goal.end.y <= top || isAlike(goal),
    );
  const hang = LANES.map((aside) => x + aside).find(isFree) ?? x;
  // Both sides of a device come from one rail.
  const isOneRail = fed.length === 2 && fed.every(({ y }) => y === top);
  const dots = (isOneRail ? [{ y: top, side: undefined }] : fed).map(
    ({ y, side }): RailDot => ({ at: { x: hang, y }, side }),
  );
  const isNormal = fed.every(({ by }) => by === 'normal');
  const over = -CORDS / 2;
  const points = [
    { x: hang, y: top },
    ...(hang === x
      ? []
      : [
          { x: hang, y: over },
          { x, y: over },
        ]),
    { x, y: HEAD },
  ];
  return { input, x, dots, wire: { place: input, role: 'line', points, isNormal } };
}

/** The rail of an output jack: its own, or that of the device whose side it is. */
export const railHeight = (
  lines: ReadonlyMap<Address, number>,
  output: Address,
): number | undefined => lines.get(output) ?? lines.get(part(ownerOf(output), 'out'));
