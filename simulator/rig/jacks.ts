import {
  type Address,
  CONTROL_ROOM,
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
import { multIn, multOuts } from './bay.ts';
import { onceARig } from './once-a-rig.ts';
import type { Rig } from './schema.ts';
import { isStereoAfter, isStereoSubgroup } from './strip-routes.ts';

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

/** The send of the insert that a return belongs to; nothing where an input jack is no return. */
export const insertSendOf = (input: Address): Address | undefined =>
  /\.insert\.return(\.[lr])?$/.test(input)
    ? input.replace('.insert.return', '.insert.send')
    : undefined;

/** All jacks of a rig. A strip without an insert stage has no insert jacks. The same rig gives the same list. */
export const jacks = onceARig(list);

function list(rig: Rig): Jacks {
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
    const type = stripTypeOf(rig, strip);
    const owner = deskOwner(strip.id);
    add({ inputs: legsOf(part(owner, 'in'), type.stereo) });
    if (type.stages.includes('insert')) add(insertJacks(owner, type.stereo));
    const { directOut } = type;
    if (directOut) {
      add({ outputs: legsOf(part(owner, 'direct'), isStereoAfter(type, directOut)) });
    }
  }
  for (const aux of rig.desk.auxes) add({ outputs: [part(deskOwner(aux.id), 'out')] });
  const addBus = (owner: Owner, isStereo: boolean) => {
    add(insertJacks(owner, isStereo));
    add({ outputs: legsOf(part(owner, 'out'), isStereo) });
  };
  for (const one of rig.desk.subgroups) addBus(deskOwner(one.id), isStereoSubgroup(one));
  addBus(DESK_MAIN, true);
  if (rig.desk.controlRoom) {
    for (const { id } of rig.desk.controlRoom.inputs) {
      add({ inputs: legsOf(part(CONTROL_ROOM, id), true) });
    }
    add({ outputs: legsOf(part(CONTROL_ROOM, 'out'), true) });
  }
  for (const device of rig.rack) add({ inputs: deviceIns(device), outputs: deviceOuts(device) });
  for (const mult of rig.bay?.mults ?? []) add({ inputs: [multIn(mult)], outputs: multOuts(mult) });
  for (const output of rig.outputs) add({ inputs: outputJacks(output) });
  return { outputs, inputs };
}
