import {
  type Device,
  deviceIns,
  feedOf,
  ownerOf,
  part,
  rackOwner,
  type Setup,
} from '../../simulator/index.ts';
import type { Drawing, Rail, WireLine } from './drawing.ts';
import type { DeviceMark } from './room-drawing.ts';

/** Width of a device with room beside it. */
const DEVICE = 96;
/** Height of the top and the bottom of a device. */
export const DEVICE_TOP = 6;
export const DEVICE_BOTTOM = 46;
/** How far the wires of two jacks stand apart. */
const JACKS = 14;

/** What is drawn of the rack: its devices, and the auxes whose rails go on to one of them. */
export interface RackDrawing {
  readonly devices: readonly DeviceMark[];
  readonly rails: readonly Rail[];
  readonly width: number;
}

/**
 * Lays the rack right of the desk. From the end of the rail of an aux its wire goes on to the device that it
 * feeds; what feeds a device otherwise is written below it.
 */
export function layRack(setup: Setup, desk: Drawing): RackDrawing {
  const devices = setup.rig.rack.map((device, index) =>
    layDevice(setup, desk.rails, device, desk.width + DEVICE * (index + 0.5)),
  );
  const fed = new Set(devices.flatMap(({ wires }) => wires.map(({ place }) => ownerOf(place))));
  return {
    devices,
    rails: desk.rails.map((rail) => (fed.has(rail.owner) ? { ...rail, end: undefined } : rail)),
    width: desk.width + DEVICE * devices.length,
  };
}

function layDevice(setup: Setup, rails: readonly Rail[], device: Device, x: number): DeviceMark {
  const owner = rackOwner(device.id);
  const ins = deviceIns(device);
  const wires = ins.flatMap((jack, index): WireLine[] => {
    const feed = feedOf(setup, jack);
    // A subgroup has a rail too, but leaves by the foot of its column.
    const rail = rails.find((one) => one.end && part(one.owner, 'out') === feed?.output);
    const from = rail?.wires.at(-1)?.points.at(-1);
    if (!feed || !from) return [];
    const at = x + (index - (ins.length - 1) / 2) * JACKS;
    return [
      {
        place: feed.output,
        role: 'aux',
        points: [from, { x: at, y: from.y }, { x: at, y: DEVICE_BOTTOM }],
        isNormal: feed.by === 'normal',
      },
    ];
  });
  return { owner, label: device.label, x, wires, input: wires.length > 0 ? undefined : ins[0] };
}
