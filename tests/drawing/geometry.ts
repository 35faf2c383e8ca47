import type { Column, Drawing, Point, WireLine } from '../../src/drawing/drawing.ts';

/** A control as a hand finds it in the drawing: at a point, or all along a slot. */
export interface Handle {
  readonly address: string;
  readonly from: Point;
  readonly to: Point;
}

const at = (address: string, point: Point): Handle => ({ address, from: point, to: point });

/** Stages whose mark is a control; inserts and faders are drawn by themselves. */
const MARKED = ['trim', 'polarity', 'mute', 'pan'];

/** Every control in a drawing, at each place where a hand can take it. */
export function handlesOf({ columns, rails }: Drawing): Handle[] {
  return [
    ...columns.flatMap(
      ({ kind, stages, inserts, faders, sends, assigns, toggles, choices, pathSwitch }) => [
        ...stages
          .filter(({ stage }) => MARKED.includes(stage))
          // A subgroup has a mute, and no other of these.
          .filter(({ stage }) => kind === 'strip' || stage === 'mute')
          .map(({ place, at: point }) => at(place, point)),
        ...inserts.map(({ owner, top, bottom }) =>
          at(`${owner}.insert`, { x: top.x, y: (top.y + bottom.y) / 2 }),
        ),
        ...faders.map(({ address, x, top, bottom }) => ({
          address,
          from: { x, y: top },
          to: { x, y: bottom },
        })),
        ...sends.flatMap(({ address, before, after }) => [at(address, before), at(address, after)]),
        ...[...assigns, ...toggles, ...choices].map(({ address, at: point }) => at(address, point)),
        ...(pathSwitch ? [at(pathSwitch.address, pathSwitch.first)] : []),
      ],
    ),
    ...rails.flatMap(({ master, solo }) =>
      [master, solo].flatMap((one) => (one ? [at(one.address, one.at)] : [])),
    ),
  ];
}

/** Addresses of the controls in a drawing, each as often as it is drawn; both places of a send count as one. */
export function addressesOf({ columns, rails }: Drawing): string[] {
  return [
    ...columns.flatMap(({ stages, faders, sends, assigns, toggles, choices, pathSwitch }) => [
      ...stages.filter(({ stage }) => MARKED.includes(stage)).map(({ place }) => place),
      ...faders.map(({ address }) => address),
      ...sends.flatMap(({ address, tapSwitch }) => [address, ...(tapSwitch ? [tapSwitch] : [])]),
      ...[...assigns, ...toggles, ...choices].map(({ address }) => address),
      ...(pathSwitch ? [pathSwitch.address] : []),
    ]),
    ...rails.flatMap(({ master, solo }) =>
      [master, solo].flatMap((one) => (one ? [one.address] : [])),
    ),
  ];
}

/** Shortest way between two upright slots, points among them. */
export function distanceBetween(one: Handle, other: Handle): number {
  const gap = Math.max(0, other.from.y - one.to.y, one.from.y - other.to.y);
  return Math.hypot(one.from.x - other.from.x, gap);
}

/** Pairs of different controls that are nearer to one another than a finger is wide. */
export function crowdedPairs(handles: readonly Handle[], least: number): string[] {
  return handles.flatMap((one, index) =>
    handles
      .slice(index + 1)
      .filter((other) => one.address !== other.address && distanceBetween(one, other) < least)
      .map((other) => `${one.address} and ${other.address}`),
  );
}

/** Every point of a drawing, with what it is of. */
export function pointsOf(drawing: Drawing): { readonly of: string; readonly point: Point }[] {
  const { columns, rails, rows, pairs, tapNames } = drawing;
  const ofWires = (wires: readonly WireLine[]) =>
    wires.flatMap(({ place, points }) => points.map((point) => ({ of: place, point })));
  return [
    ...columns.flatMap(({ owner, wires, foot, x, inserts, sideJacks }) => [
      ...ofWires(wires),
      ...inserts.map(({ device }) => ({ of: `${owner}.insert`, point: device })),
      ...(foot ? [{ of: owner, point: foot }] : []),
      ...sideJacks.map(({ jack, end }) => ({ of: jack, point: end })),
      { of: owner, point: { x, y: 0 } },
    ]),
    ...rails.flatMap(({ owner, wires, end }) => [
      ...ofWires(wires),
      ...(end ? [{ of: owner, point: end }] : []),
    ]),
    ...rows.map(({ text, y }) => ({ of: text, point: { x: 0, y } })),
    ...pairs.flatMap(({ x, y, width, height }) => [
      { of: 'pair', point: { x, y } },
      { of: 'pair', point: { x: x + width, y: y + height } },
    ]),
    ...(tapNames ? Object.values(tapNames).map((point) => ({ of: 'tap name', point })) : []),
    ...handlesOf(drawing).flatMap(({ address, from, to }) =>
      [from, to].map((point) => ({ of: address, point })),
    ),
  ];
}

/** The pieces of a column's own wire from top to bottom; the feed of a second path comes before them. */
export const ownWires = ({ kind, wires }: Column): WireLine[] =>
  wires.filter(({ role }) => role === kind);

/** Gaps in a column's own wire, which inserts, faders and the switch of a second path fill, from top to bottom. */
export const gapsOf = ({ inserts, faders, pathSwitch }: Column) =>
  [
    ...inserts.map(({ owner, top, bottom }) => ({
      place: `${owner}.insert`,
      top: top.y,
      bottom: bottom.y,
    })),
    ...faders.map(({ address, from, to }) => ({ place: address, top: from, bottom: to })),
    ...(pathSwitch
      ? [{ place: pathSwitch.address, top: pathSwitch.input.y, bottom: pathSwitch.end.y }]
      : []),
  ].sort((a, b) => a.top - b.top);

/** Whether a point lies on a wire of upright and level pieces. */
export const liesOn = ({ x, y }: Point, { points }: WireLine): boolean =>
  points.some((from, index) => {
    const to = points[index + 1];
    if (!to) return false;
    const isWithin = (one: number, a: number, b: number) =>
      one >= Math.min(a, b) && one <= Math.max(a, b);
    return isWithin(x, from.x, to.x) && isWithin(y, from.y, to.y);
  });

/** The box of a device in an insert, as it is drawn: half its width and height. */
const DEVICE = { x: 29, y: 10 };

/** Whether a piece of a wire passes behind the box of a device. */
export function passesBehind({ points }: WireLine, { x, y }: Point): boolean {
  return points.some((from, index) => {
    const to = points[index + 1];
    if (!to) return false;
    const reaches = (a: number, b: number, middle: number, half: number) =>
      Math.min(a, b) < middle + half && Math.max(a, b) > middle - half;
    return reaches(from.x, to.x, x, DEVICE.x) && reaches(from.y, to.y, y, DEVICE.y);
  });
}
