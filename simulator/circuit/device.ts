import { numberAt, pickAt, type Setup, valueAt } from '../board/board.ts';
import { type Address, part } from '../rig/address.ts';
import type { Device } from '../rig/schema.ts';
import { type Biquad, biquad } from '../units/biquad.ts';
import type { CompressionCurve } from '../units/compression.ts';
import type { Hz, Seconds } from '../units/frequency.ts';
import { db, dbu } from '../units/level.ts';
import type { Legs } from './circuit.ts';
import { gainRatio } from './ratios.ts';
import type { Wiring } from './wiring.ts';

/**
 * What a device does between its inputs and its outputs.
 *
 * @param owner the device; its controls and its places are its parts.
 * @param outputs how many legs leave it; only a reverb may have more than come in.
 * @returns the last place before its outputs.
 */
export function addDeviceStages(
  wiring: Wiring,
  setup: Setup,
  owner: Address,
  kind: Device['kind'],
  input: Legs,
  outputs: 1 | 2,
): Legs {
  const at = (name: string) => part(owner, name);
  switch (kind) {
    case 'gain':
      return wiring.through(at('gain'), input, gainRatio(setup, at('gain')));
    case 'compressor': {
      // Both legs listen to both: a stereo compressor must not move the image.
      const law = { kind: 'compressor', listensTo: input, curve: curveOf(setup, owner) } as const;
      const compressed = wiring.through(at('compress'), input, 1, law);
      return wiring.through(at('makeup'), compressed, gainRatio(setup, at('makeup')));
    }
    case 'equaliser': {
      const sections = sectionsOf(setup, owner);
      return wiring.through(at('equalise'), input, 1, { kind: 'filter', sections });
    }
    case 'delay': {
      const time = (Number(valueAt(setup, at('time'))) / 1000) as Seconds;
      const sum = wiring.through(at('sum'), input, 1);
      const late = wiring.through(at('delay'), sum, 1, { kind: 'delay', time });
      const back = wiring.through(at('feedback'), late, gainRatio(setup, at('feedback')));
      wiring.join(back, sum, 1);
      return wiring.through(at('level'), late, gainRatio(setup, at('level')));
    }
    case 'reverb': {
      const reverb = wiring.place(at('reverb'), outputs, { kind: 'decorrelator' });
      wiring.join(input, reverb, 1);
      return wiring.through(at('level'), reverb, gainRatio(setup, at('level')));
    }
  }
}

const curveOf = (setup: Setup, owner: Address): CompressionCurve => ({
  threshold: dbu(numberAt(setup, part(owner, 'threshold'))),
  ratio: ratioNumber(String(valueAt(setup, part(owner, 'ratio')))),
  knee: db(numberAt(setup, part(owner, 'knee'))),
});

const ratioNumber = (ratio: string): number => (ratio === 'inf' ? Infinity : Number(ratio));

/** Corners of the shelves of an equaliser. */
const LOW_SHELF = 120 as Hz;
const HIGH_SHELF = 8000 as Hz;
/** Quality of its middle band, and of its high-pass in dB: 0 dB would lift the corner, −3.01 is the flattest. */
const MID_QUALITY = 0.9;
const FLATTEST_DB = -3.0103;

/** The sections of an equaliser that do something: bands at 0 dB and a high-pass that is off are left out. */
function sectionsOf(setup: Setup, owner: Address): Biquad[] {
  const gain = (band: string) => db(numberAt(setup, part(owner, band)));
  const corner = String(pickAt(setup, part(owner, 'highpass')));
  const middle = Number(pickAt(setup, part(owner, 'mid-frequency'))) as Hz;
  const [low, mid, high] = [gain('low'), gain('mid'), gain('high')];
  return [
    corner === 'off'
      ? undefined
      : biquad({ kind: 'highpass', frequency: Number(corner) as Hz, q: FLATTEST_DB }),
    low === 0 ? undefined : biquad({ kind: 'lowshelf', frequency: LOW_SHELF, gain: low }),
    mid === 0
      ? undefined
      : biquad({ kind: 'peaking', frequency: middle, q: MID_QUALITY, gain: mid }),
    high === 0 ? undefined : biquad({ kind: 'highshelf', frequency: HIGH_SHELF, gain: high }),
  ].filter((one) => one !== undefined);
}
