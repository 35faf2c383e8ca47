import {
  db,
  dbfs,
  dbfsOf,
  dbu,
  dbuOfDbfs,
  dbuOfDbv,
  dbvOf,
  faderGain,
  gainOf,
  ratioOf,
} from '../../simulator/index.ts';
import { gainText, inUnit, type LevelScale, signed } from '../text/index.ts';
import type { ReferenceTable } from './reference-table.ts';

const IN_VOLTS: LevelScale = { unit: 'V', fullScale: dbu(0) };

/** Levels that are worth knowing, in dBu, each with what it is. −10 dBV stands among them as what it is in dBu. */
const LEVELS: readonly (readonly [level: number, what: string])[] = [
  [24, 'full scale where −20 dBFS is +4 dBu'],
  [22, 'full scale of this course'],
  [20, ''],
  [18, 'full scale where −18 dBFS is 0 dBu'],
  [9, 'permitted maximum of a programme line'],
  [4, 'line level'],
  [0, 'alignment level'],
  [dbuOfDbv(-10), '−10 dBV'],
  [-20, ''],
  [-40, ''],
  [-60, ''],
];

export const levels: ReferenceTable = {
  id: 'levels',
  title: 'dBu, dBV and volts',
  about:
    'Three ways to say the same voltage. 0 dBu is the square root of 0.6 V, 0 dBV is 1 V; volts are RMS.',
  columns: ['dBu', 'dBV', 'Volts', 'What stands there'],
  rows: LEVELS.map(([level, what]) => [
    signed(level, 2),
    signed(dbvOf(dbu(level)), 2),
    inUnit(level, IN_VOLTS),
    what,
  ]),
  sources: ['itu-r-bs-645'],
};

/** How converters are aligned: which level is full scale, and where that is in use. */
const ALIGNMENTS: readonly (readonly [fullScaleDbu: number, where: string])[] = [
  [18, 'EBU R 68: −18 dBFS is 0 dBu'],
  [22, 'this course: −18 dBFS is +4 dBu'],
  [24, 'SMPTE RP 155: −20 dBFS is +4 dBu'],
];

export const alignment: ReferenceTable = {
  id: 'alignment',
  title: 'Alignment of a converter',
  about:
    'A converter says which level on the wire is full scale in the box. Everything else follows by adding and taking away.',
  columns: ['0 dBFS is', 'in volts', '0 dBu is', '+4 dBu is', '−20 dBFS is', 'Where'],
  rows: ALIGNMENTS.map(([fullScale, where]) => [
    `${signed(fullScale, 0)} dBu`,
    inUnit(fullScale, IN_VOLTS),
    `${signed(dbfsOf(dbu(0), dbu(fullScale)), 0)} dBFS`,
    `${signed(dbfsOf(dbu(4), dbu(fullScale)), 0)} dBFS`,
    `${signed(dbuOfDbfs(dbfs(-20), dbu(fullScale)), 0)} dBu`,
    where,
  ]),
  sources: ['ebu-r68', 'smpte-rp155'],
};

const GAINS = [0.1, 0.5, 1, 3, 6, 10, 12, 20, 40, 60];

export const ratios: ReferenceTable = {
  id: 'ratios',
  title: 'Decibels and ratios',
  about:
    'A gain in dB says by which ratio a voltage grows, and by which its power. A loss is one over these.',
  columns: ['Gain', 'Voltage', 'Power', 'The same as a loss, voltage'],
  rows: GAINS.map((gain) => [
    gainText(gain),
    `× ${figure(ratioOf(db(gain)))}`,
    `× ${figure(ratioOf(db(gain)) ** 2)}`,
    `× ${figure(ratioOf(db(-gain)))}`,
  ]),
  sources: [],
};

/** Places along the travel of a fader, from the top. */
const TRAVEL = [1, 0.9, 0.75, 0.6, 0.5, 0.35, 0.25, 0.1, 0.02, 0];

export const fader: ReferenceTable = {
  id: 'fader',
  title: 'The travel of a fader',
  about:
    'Faders of this course. Around unity a finger has room; far down the same way of a finger is many decibels. Other desks differ.',
  columns: ['Height of the knob', 'Gain', 'Voltage'],
  rows: TRAVEL.map((share) => [
    `${Math.round(100 * share)} %`,
    gainText(faderGain(share)),
    `× ${figure(ratioOf(faderGain(share)))}`,
  ]),
  sources: ['trade-practice'],
};

/** A factor with four figures: `1.995`, `1000`, `0.5012`. */
function figure(value: number): string {
  return String(Number(value.toPrecision(4)));
}

/** The gain of a ratio as it is read, silence as what it is. */
export const ratioGain = (ratio: number): string => gainText(gainOf(ratio), 2);
