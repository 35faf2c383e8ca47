import type { Setup } from '../board/board.ts';
import { type Address, part, rackOwner } from '../rig/address.ts';
import type { Device } from '../rig/schema.ts';
import { type Dbu, dbu, dbuOfDbv, gainBetween, ratioOf } from '../units/level.ts';
import { deviceStage, noiseless } from './active-stages.ts';
import type { Legs } from './circuit.ts';
import { addDeviceStages } from './device.ts';
import { addInput } from './input.ts';
import type { Wiring } from './wiring.ts';

/** The devices of the rack, each from its inputs to its outputs. */
export function addRack(wiring: Wiring): void {
  for (const device of wiring.rig.rack) {
    wiring.section((setup) => {
      const owner = rackOwner(device.id);
      const input = addInput(wiring, part(owner, 'in'), device.inputs);
      if (device.level === 'minus10') addPadded(wiring, setup, owner, device, input);
      else addPlain(wiring, setup, owner, device, input);
    });
  }
}

function addPlain(wiring: Wiring, setup: Setup, owner: Address, device: Device, input: Legs) {
  const { noise, clip } = deviceStage(device);
  wiring.activate(input, noiseless(clip));
  const treated = addCore(wiring, setup, owner, device, input);
  wiring.activate(wiring.through(part(owner, 'out'), treated, 1), { noise, clip });
}

/** Nominal levels of a room and of a device for less. Their gap is 11.78 dB. */
const ROOM_LEVEL: Dbu = dbu(4);
const LOW_LEVEL: Dbu = dbuOfDbv(-10);

/**
 * A −10 dBV device in a +4 dBu room: a pad before it and as much gain behind it, so that it hears what it is
 * made for and gives back what the room is. Its noise and clip level are those between the two.
 */
function addPadded(wiring: Wiring, setup: Setup, owner: Address, device: Device, input: Legs) {
  const { noise, clip } = deviceStage(device);
  const down = ratioOf(gainBetween(ROOM_LEVEL, LOW_LEVEL));
  const padded = wiring.through(part(owner, 'pad'), input, down);
  wiring.activate(padded, noiseless(clip));
  const treated = addCore(wiring, setup, owner, device, padded);
  const end = wiring.through(part(owner, 'end'), treated, 1);
  wiring.activate(end, { noise, clip });
  wiring.through(part(owner, 'out'), end, 1 / down);
}

const addCore = (wiring: Wiring, setup: Setup, owner: Address, device: Device, from: Legs): Legs =>
  addDeviceStages(wiring, setup, owner, device.kind, from, device.outputs);
