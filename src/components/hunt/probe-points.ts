import type { Address } from '../../../simulator/index.ts';
import type { Point, WireLine } from '../../drawing/drawing.ts';
import { DEVICE_BOTTOM, DEVICE_TOP } from '../../drawing/rack.ts';
import type { RoomDrawing } from '../../drawing/room-drawing.ts';

/** Where each place lies in a drawing: at the symbol of its stage, else on its wire. What is not drawn has no point. */
export function pointsOf({ desk, box, cords, devices }: RoomDrawing): ReadonlyMap<Address, Point> {
  const points = new Map<Address, Point>();
  const columns = [...desk.columns, ...box.map(({ column }) => column)];
  const wires = [
    ...columns.flatMap((column) => column.wires),
    ...desk.rails.flatMap((rail) => rail.wires),
    ...cords.map(({ wire }) => wire),
    ...devices.flatMap((device) => device.wires),
  ];
  for (const wire of wires) {
    const at = onWire(wire);
    if (at && !points.has(wire.place)) points.set(wire.place, at);
  }
  for (const { stages, faders, inserts, sends, assigns } of columns) {
    for (const { place, at } of stages) points.set(place, at);
    for (const { address, x, top, bottom } of faders) {
      points.set(address, { x, y: (top + bottom) / 2 });
    }
    for (const { owner, top, bottom, device } of inserts) {
      points.set(`${owner}.insert.send`, top);
      points.set(`${owner}.insert.return`, device);
      points.set(`${owner}.insert`, bottom);
    }
    for (const { address, before } of sends) points.set(address, before);
    for (const { address, at } of assigns) points.set(address, at);
  }
  const middle = (DEVICE_TOP + DEVICE_BOTTOM) / 2;
  for (const { owner, x } of devices) {
    points.set(`${owner}.in`, { x, y: middle });
    points.set(`${owner}.out`, { x, y: middle });
  }
  return points;
}

function onWire({ points }: WireLine): Point | undefined {
  const [first, second] = points;
  if (!first || !second) return first;
  return { x: (first.x + second.x) / 2, y: (first.y + second.y) / 2 };
}
