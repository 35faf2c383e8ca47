import type { Address } from '../../simulator/index.ts';
import type { Column, Drawing, Point } from './drawing.ts';

/** Where the controls of a desk are drawn, by address: those that have a symbol of their own. */
export function controlSpots({ columns, rails }: Drawing): ReadonlyMap<Address, Point> {
  const spots = new Map<Address, Point>();
  for (const column of columns) {
    for (const [address, at] of spotsOf(column)) spots.set(address, at);
  }
  for (const { master, solo } of rails) {
    if (master) spots.set(master.address, master.at);
    if (solo) spots.set(solo.address, solo.at);
  }
  return spots;
}

function spotsOf(column: Column): (readonly [Address, Point])[] {
  return [
    ...column.stages.map(({ place, at }) => [place, at] as const),
    ...column.faders.map(
      ({ address, x, top, bottom }) => [address, { x, y: (top + bottom) / 2 }] as const,
    ),
    ...column.sends.flatMap(({ address, tapSwitch, before, after }) => [
      [address, before] as const,
      ...(tapSwitch ? [[tapSwitch, after] as const] : []),
    ]),
    ...column.assigns.map(({ address, at }) => [address, at] as const),
    ...column.toggles.map(({ address, at }) => [address, at] as const),
    ...column.choices.map(({ address, at }) => [address, at] as const),
    ...column.inserts.flatMap(({ owner, device }) =>
      ['', '.l', '.r'].map((leg) => [`${owner}.insert.return${leg}`, device] as const),
    ),
    ...(column.input === undefined
      ? []
      : [[column.input, { x: column.x, y: column.top + 60 }] as const]),
  ];
}
