import { numberAt, type Setup, valueAt } from '../board/board.ts';
import { part, rackOwner } from '../rig/address.ts';
import type { Device } from '../rig/schema.ts';
import { db, dbu } from '../units/level.ts';
import { gainRatio } from './ratios.ts';
import type { Wiring } from './wiring.ts';

/** The devices of the rack, each from its inputs to its outputs. */
export function addRack(wiring: Wiring, setup: Setup): void {
  for (const device of setup.rig.rack) addDevice(wiring, setup, device);
}

function addDevice(wiring: Wiring, setup: Setup, device: Device): void {
  const at = (name: string) => part(rackOwner(device.id), name);
  const input = wiring.place(at('in'), device.inputs);
  switch (device.kind) {
    case 'gain': {
      const amplified = wiring.through(at('gain'), input, gainRatio(setup, at('gain')));
      wiring.through(at('out'), amplified, 1);
      return;
    }
    case 'compressor': {
      // Both legs listen to both: a stereo compressor must not move the image.
      const compressed = wiring.through(at('compress'), input, 1, {
        kind: 'compressor',
        listensTo: input,
        curve: {
          threshold: dbu(numberAt(setup, at('threshold'))),
          ratio: ratioNumber(String(valueAt(setup, at('ratio')))),
          knee: db(numberAt(setup, at('knee'))),
        },
      });
      const made = wiring.through(at('makeup'), compressed, gainRatio(setup, at('makeup')));
      wiring.through(at('out'), made, 1);
      return;
    }
    case 'reverb': {
      const reverb = wiring.place(at('reverb'), device.outputs, { kind: 'decorrelator' });
      wiring.join(input, reverb, 1);
      const level = wiring.through(at('level'), reverb, gainRatio(setup, at('level')));
      wiring.through(at('out'), level, 1);
    }
  }
}

const ratioNumber = (ratio: string): number => (ratio === 'inf' ? Infinity : Number(ratio));
