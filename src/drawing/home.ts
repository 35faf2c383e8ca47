import {
  converterPlace,
  type Feed,
  feedOf,
  lineInsOf,
  type Owner,
  ownerOf,
  part,
  pickAt,
  type Setup,
} from '../../simulator/index.ts';
import { HOME_END } from './box-column.ts';
import type { Column, Drawing, Point, WireLine } from './drawing.ts';
import type { BoxColumn } from './room-drawing.ts';

/** How far right of its foot a wire goes down: past the name of what it feeds. */
const PAST_NAME = 48;
/** How far right of a capture track a wire comes down to it, past its name. */
const PAST_TRACK = 42;
/** How far wires beside one another are apart. */
const LANE = 10;

/** What comes home from the desk, and the frame that has room for it. */
export interface WaysHome {
  readonly wires: readonly WireLine[];
  readonly frame: Pick<Drawing, 'width' | 'top' | 'height'>;
}

/**
 * Wires from the foot of a bus to the capture tracks that record it: below the desk, past all that is right of it, and
 * over the box. What is not drawn, or comes from elsewhere, keeps its name alone.
 */
export function waysHome(
  setup: Setup,
  columns: readonly Column[],
  box: readonly BoxColumn[],
  { width, top, height }: WaysHome['frame'],
): WaysHome {
  const pairs = box.flatMap(({ column }) =>
    feedsInto(setup, column).flatMap(({ owner, feeds }, index) => {
      const foot = columns.find((one) => one.owner === owner)?.foot;
      return foot ? [{ column, owner, feeds, index, foot }] : [];
    }),
  );
  const wires = pairs.map(({ column, owner, feeds, index, foot }, lane): WireLine => {
    const aside = LANE * (lane + 1);
    const down = { x: foot.x + PAST_NAME, y: foot.y + 5 };
    const home = {
      x: column.x + PAST_TRACK + LANE * index,
      y: column.top + HOME_END + LANE * index,
    };
    return {
      place: feeds.length === 2 ? part(owner, 'out') : (feeds[0]?.output ?? owner),
      role: 'line',
      isNormal: feeds.every(({ by }) => by === 'normal'),
      points: [
        { x: foot.x + 7, y: down.y },
        ...around(down, home, {
          right: width + aside,
          below: height + aside,
          above: top - aside,
        }),
        { x: column.x, y: home.y },
      ],
    };
  });
  const room = wires.length > 0 ? LANE * (wires.length + 1) : 0;
  return { wires, frame: { width: width + room, top: top - room, height: height + room } };
}

/** What records comes from: each bus that feeds an input where it stands, with the jacks by which it does. */
function feedsInto(
  setup: Setup,
  { kind, input }: Column,
): readonly { readonly owner: Owner; readonly feeds: readonly Feed[] }[] {
  if (kind !== 'capture' || input === undefined) return [];
  const feeds = lineInsOf(pickAt(setup, input) ?? '').flatMap(
    (line) => feedOf(setup, converterPlace(line)) ?? [],
  );
  const owners = [...new Set(feeds.map(({ output }) => ownerOf(output)))];
  return owners.map((owner) => ({
    owner,
    feeds: feeds.filter(({ output }) => ownerOf(output) === owner),
  }));
}

const around = (
  from: Point,
  to: Point,
  { right, below, above }: { right: number; below: number; above: number },
): Point[] => [
  from,
  { x: from.x, y: below },
  { x: right, y: below },
  { x: right, y: above },
  { x: to.x, y: above },
  to,
];
