import type { Filter } from './network.ts';
import type { Reading } from './reading.ts';
import { type DeviceData, type DeviceKind, legs } from './setup-file.ts';

/** Documented constants of an equaliser. */
const LOW_SHELF_HZ = 120;
const HIGH_SHELF_HZ = 8000;
const MIDDLE_Q = 0.9;
/** −3.0103 dB at the corner: the flattest high-pass. */
const HIGHPASS_Q_DB = -3.0103;

/** +4 dBu over −10 dBV, in dB: 0 dBu is the root of 0.6 V. */
const LEVEL_GAP = 4 - (-10 - 20 * Math.log10(Math.sqrt(0.6)));
const PLUS4_NOISE_DBU = -92;
const MINUS10_NOISE_DBU = -98;

/** Reads a device of the rack, from its input jacks to its output jacks. */
export function readDevice(reading: Reading, device: DeviceData): void {
  const at = `rack.${device.id}`;
  const input = reading.place(`${at}.in`, device.inputs === 2);
  const isWide = device.outputs === 2;
  if (device.level === 'plus4') {
    const out = reading.chain(deviceParts(reading, at, device.kind, input, isWide), `${at}.out`, 1);
    reading.hiss(out, device.noiseDbu ?? PLUS4_NOISE_DBU);
    return;
  }
  const padded = reading.chain(input, `${at}.pad`, 10 ** (-LEVEL_GAP / 20));
  const treated = deviceParts(reading, at, device.kind, padded, isWide);
  const end = reading.chain(treated, `${at}.end`, 1);
  reading.hiss(end, device.noiseDbu ?? MINUS10_NOISE_DBU);
  reading.chain(end, `${at}.out`, 10 ** (LEVEL_GAP / 20));
}

/** Adds what a device does. @returns the nodes before its output jacks. */
export function deviceParts(
  reading: Reading,
  at: string,
  kind: DeviceKind,
  input: readonly string[],
  stereoOut: boolean,
): readonly string[] {
  switch (kind) {
    case 'gain':
      return reading.chain(input, `${at}.gain`, reading.ratio(`${at}.gain`));
    case 'reverb': {
      const wet = reading.place(`${at}.reverb`, stereoOut);
      const dry = legs(`${at}.dry`, stereoOut);
      reading.join(input, dry, 1);
      dry.forEach((from, leg) => {
        reading.parts.push({ kind: 'reverb', from, to: wet[leg] ?? '' });
      });
      return reading.chain(wet, `${at}.level`, reading.ratio(`${at}.level`));
    }
    case 'compressor': {
      const to = reading.place(`${at}.compress`, input.length === 2);
      const ratio = reading.value<string>(`${at}.ratio`, '4');
      reading.parts.push({
        kind: 'compressor',
        from: input,
        to,
        threshold: reading.value(`${at}.threshold`, 0),
        ratio: ratio === 'inf' ? Infinity : Number(ratio),
        knee: reading.value(`${at}.knee`, 0),
      });
      return reading.chain(to, `${at}.makeup`, reading.ratio(`${at}.makeup`));
    }
    case 'equaliser': {
      const to = reading.place(`${at}.equalise`, input.length === 2);
      const filters = equaliserFilters(reading, at);
      input.forEach((from, leg) => {
        reading.parts.push({ kind: 'filters', from, to: to[leg] ?? '', filters });
      });
      return to;
    }
    case 'delay': {
      const sum = reading.chain(input, `${at}.sum`, 1);
      const late = reading.place(`${at}.delay`, input.length === 2);
      const seconds = Number(reading.value(`${at}.time`, '120')) / 1000;
      sum.forEach((from, leg) => {
        reading.parts.push({ kind: 'delay', from, to: late[leg] ?? '', seconds });
      });
      const back = reading.chain(late, `${at}.feedback`, reading.ratio(`${at}.feedback`, '-inf'));
      reading.join(back, sum, 1);
      return reading.chain(late, `${at}.level`, reading.ratio(`${at}.level`));
    }
  }
}

function equaliserFilters(reading: Reading, at: string): Filter[] {
  const corner = reading.value<string>(`${at}.highpass`, 'off');
  const gain = (band: string) => reading.value(`${at}.${band}`, 0);
  const middle = Number(reading.value(`${at}.mid-frequency`, '1250'));
  const filters: Filter[] = [
    { type: 'lowshelf', frequency: LOW_SHELF_HZ, q: 1, gain: gain('low') },
    { type: 'peaking', frequency: middle, q: MIDDLE_Q, gain: gain('mid') },
    { type: 'highshelf', frequency: HIGH_SHELF_HZ, q: 1, gain: gain('high') },
  ];
  if (corner === 'off') return filters;
  return [{ type: 'highpass', frequency: Number(corner), q: HIGHPASS_Q_DB, gain: 0 }, ...filters];
}
