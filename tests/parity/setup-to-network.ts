import { cordsAndNormals, multOuts } from './cords.ts';
import { readDevice } from './device-parts.ts';
import type { Network } from './network.ts';
import { readBox } from './read-box.ts';
import { readDesk } from './read-desk.ts';
import { Reading } from './reading.ts';
import type { SetupData } from './setup-file.ts';

/** What a setup file describes, read by the documentation of its format alone. */
export function setupToNetwork(setup: SetupData): Network {
  const reading = new Reading(setup);
  readBox(reading, setup);
  readDesk(reading, setup);
  for (const device of setup.rig.rack) readDevice(reading, device);
  for (const { id, stereo, noiseDbu } of setup.rig.outputs) {
    const nodes = reading.place(`out.${id}`, stereo);
    if (noiseDbu !== undefined) reading.hiss(nodes, noiseDbu);
  }
  for (const mult of setup.rig.bay?.mults ?? []) {
    const input = reading.place(`bay.${mult.id}.in`, false);
    for (const out of multOuts(mult)) reading.chain(input, out, 1);
  }
  const inputs = [...reading.places.values()].flat().filter((node) => isInputJack(setup, node));
  for (const { input, output, ratio } of cordsAndNormals(setup, inputs)) {
    reading.join([output], [input], ratio);
  }
  const { sources, noises, parts, places } = reading;
  return { sources, noises, parts, places };
}

const isInputJack = ({ rig }: SetupData, address: string): boolean => {
  const place = address.replace(/\.[lr]$/, '');
  return (
    /^out\.|^converter\.in|^(desk|rack|bay)\.[^.]+\.in$|\.insert\.return$/.test(place) ||
    (rig.desk.controlRoom?.inputs ?? []).some(({ id }) => place === `desk.control.${id}`)
  );
};
