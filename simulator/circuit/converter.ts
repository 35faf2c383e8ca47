import type { Setup } from '../board/board.ts';
import { converterPlace, lineIn, lineOut } from '../rig/address.ts';
import type { Seconds } from '../units/frequency.ts';
import { dbfs, dbu, dbuOfDbfs } from '../units/level.ts';
import type { Law } from './circuit.ts';
import type { Wiring } from './wiring.ts';

/** The stages of the converter by name: `out3`, `in1`. */
export type Lines = ReadonlyMap<string, number>;

/** The outputs and inputs of the converter: each adds its noise, clips at full scale, and is as late as its latency. */
export function addConverter(wiring: Wiring, { rig: { converter } }: Setup): Lines {
  const fullScale = dbu(converter.fullScaleDbu);
  const active = { noise: dbuOfDbfs(dbfs(converter.noiseDbfs), fullScale), clip: fullScale };
  const law: Law = { kind: 'delay', time: (converter.latencyMs / 1000) as Seconds };
  const names = [
    ...Array.from({ length: converter.outputs }, (_, index) => lineOut(index + 1)),
    ...Array.from({ length: converter.inputs }, (_, index) => lineIn(index + 1)),
  ];
  return new Map(
    names.map((name) => {
      const line = wiring.place(converterPlace(name), 1, law);
      wiring.activate(line, active);
      return [name, line[0]];
    }),
  );
}
