import {
  type Address,
  converterPlace,
  DESK_MAIN,
  deskOwner,
  deviceIns,
  deviceOuts,
  legsOf,
  lineIn,
  lineOut,
  type Owner,
  outputJacks,
  part,
  stripTypeOf,
} from './address.ts';
import type { Rig } from './schema.ts';

/** The sockets of a room, in the order in which a signal meets their owners. */
export interface Jacks {
  /** Jacks that a signal comes out of. */
  readonly outputs: readonly Address[];
  /** Jacks that a signal goes into; each takes one cord. */
  readonly inputs: readonly Address[];
}

const insertJacks = (owner: Owner, stereo: boolean): Jacks => ({
  outputs: legsOf(part(owner, 'insert.send'), stereo),
  inputs: legsOf(part(owner, 'insert.return'), stereo),
});

/** All jacks of a rig. A strip without an insert stage has no insert jacks. */
export function jacks(rig: Rig): Jacks {
  const outputs: Address[] = [];
  const inputs: Address[] = [];
  const add = (more: Partial<Jacks>) => {
    outputs.push(...(more.outputs ?? []));
    inputs.push(...(more.inputs ?? []));
  };

  for (let number = 1; number <= rig.converter.outputs; number += 1) {
    add({ outputs: [converterPlace(lineOut(number))] });
  }
  for (let number = 1; number <= rig.converter.inputs; number += 1) {
    add({ inputs: [converterPlace(lineIn(number))] });
  }
  for (const strip of rig.desk.strips) {
    const { stereo, stages } = stripTypeOf(rig, strip);
    const owner = deskOwner(strip.id);
    add({ inputs: legsOf(part(owner, 'in'), stereo) });
    if (stages.includes('insert')) add(insertJacks(owner, stereo));
  }
  for (const aux of rig.desk.auxes) add({ outputs: [part(deskOwner(aux.id), 'out')] });
  for (const owner of [...rig.desk.subgroups.map(({ id }) => deskOwner(id)), DESK_MAIN]) {
    add(insertJacks(owner, true));
    add({ outputs: legsOf(part(owner, 'out'), true) });
  }
  for (const device of rig.rack) add({ inputs: deviceIns(device), outputs: deviceOuts(device) });
  for (const output of rig.outputs) add({ inputs: outputJacks(output) });
  return { outputs, inputs };
}
