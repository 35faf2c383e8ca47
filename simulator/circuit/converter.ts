import { pickAt, type Setup } from '../board/board.ts';
import {
  BOX_MAIN,
  boxOwner,
  converterPlace,
  lineIn,
  lineInsOf,
  lineOut,
  lineOutsOf,
  part,
} from '../rig/address.ts';
import { boxChannels } from '../rig/box-channels.ts';
import type { Capture } from '../rig/schema.ts';
import type { Seconds } from '../units/frequency.ts';
import { dbfs, dbu, dbuOfDbfs } from '../units/level.ts';
import { assignedLegs } from './assignment.ts';
import type { Law, Legs } from './circuit.ts';
import { addInput } from './input.ts';
import type { Wiring } from './wiring.ts';

/**
 * The outputs and inputs of the converter, and the capture tracks between them. Each line adds its noise, clips at
 * full scale, and is as late as the latency of the converter; what is assigned to the same output adds up.
 */
export function addConverter(wiring: Wiring): void {
  const { converter, box } = wiring.rig;
  const fullScale = dbu(converter.fullScaleDbu);
  const active = { noise: dbuOfDbfs(dbfs(converter.noiseDbfs), fullScale), clip: fullScale };
  const law: Law = { kind: 'delay', time: (converter.latencyMs / 1000) as Seconds };
  wiring.section(() => {
    for (let number = 1; number <= converter.inputs; number += 1) {
      wiring.activate(addInput(wiring, converterPlace(lineIn(number)), 1, law), active);
    }
  });
  for (const capture of box.captures) wiring.section((setup) => addCapture(wiring, setup, capture));
  wiring.section((setup) => {
    for (let number = 1; number <= converter.outputs; number += 1) {
      wiring.activate(wiring.place(converterPlace(lineOut(number)), 1, law), active);
    }
    for (const owner of [...boxChannels(wiring.rig).map((channel) => channel.owner), BOX_MAIN]) {
      const to = pickAt(setup, part(owner, 'to'));
      if (to === undefined || lineOutsOf(to).length === 0) continue;
      joinLines(wiring, assignedLegs(wiring, owner, to), to);
    }
    for (const { id } of box.captures) {
      const owner = boxOwner(id);
      joinLines(wiring, wiring.legsAt(part(owner, 'in')), pickAt(setup, part(owner, 'to')) ?? '');
    }
  });
}

/** Wires legs to the output or pair of outputs that a name stands for; to none where it is neither. */
function joinLines(wiring: Wiring, from: Legs, name: string): void {
  const [first, second] = lineOutsOf(name).map((line) => wiring.legsAt(converterPlace(line))[0]);
  if (first === undefined) return;
  wiring.join(from, second === undefined ? [first] : [first, second], 1);
}

/**
 * A capture track: it records what comes in at the converter, and plays it back at once where it is assigned.
 * What plays back is not held back by the box: it is late already.
 */
function addCapture(wiring: Wiring, setup: Setup, { id, stereo }: Capture): void {
  const place = part(boxOwner(id), 'in');
  const legs = wiring.place(place, stereo ? 2 : 1);
  lineInsOf(pickAt(setup, place) ?? '').forEach((line, side) => {
    const leg = legs[side];
    if (leg !== undefined) wiring.join(wiring.legsAt(converterPlace(line)), [leg], 1);
  });
}
