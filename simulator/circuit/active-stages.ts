import type { Device, Output, Rig } from '../rig/schema.ts';
import { amplify, type Dbu, dbu, SILENCE } from '../units/level.ts';
import { summingNoiseGain } from '../units/noise.ts';
import type { ActiveStage } from './circuit.ts';

/** Noise and clip level of a device at its own level, where its rig says neither. */
const DEVICE_STAGES = {
  plus4: { noise: dbu(-92), clip: dbu(22) },
  minus10: { noise: dbu(-98), clip: dbu(12) },
} as const satisfies Record<Device['level'], ActiveStage>;

/** What one leg of a device adds and passes, at its own nominal level. */
export const deviceStage = ({ level, noiseDbu, clipDbu }: Device): ActiveStage => ({
  noise: noiseDbu === undefined ? DEVICE_STAGES[level].noise : dbu(noiseDbu),
  clip: clipDbu === undefined ? DEVICE_STAGES[level].clip : dbu(clipDbu),
});

/** What a desk has behind each fader, at each line input, and where something comes back from an insert. */
export function deskStages({ desk: { noise, clipDbu } }: Rig) {
  const clip = dbu(clipDbu);
  return {
    line: { noise: dbu(noise.line), clip },
    fader: { noise: dbu(noise.fader), clip },
    insert: noiseless(clip),
    /** The summing amplifier of a bus that so many are assigned to. */
    sum: (assigned: number): ActiveStage => ({
      noise: amplify(dbu(noise.bus), summingNoiseGain(assigned)),
      clip,
    }),
  };
}

/** What stands at an output of the room: by default it clips where the converter does, and adds nothing. */
export const outputStage = (rig: Rig, { noiseDbu, clipDbu }: Output): ActiveStage => ({
  noise: noiseDbu === undefined ? SILENCE : dbu(noiseDbu),
  clip: dbu(clipDbu ?? rig.converter.fullScaleDbu),
});

/** A stage that only has a limit. */
export const noiseless = (clip: Dbu): ActiveStage => ({ noise: SILENCE, clip });
