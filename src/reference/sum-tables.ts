import {
  dbu,
  inParallel,
  loadedRatio,
  type Ohms,
  PAN_LAWS,
  panMono,
  SILENCE,
  sumCoherent,
  summingNoiseGain,
  sumUncorrelated,
} from '../../simulator/index.ts';
import { frequencyText, gainText, signed } from '../text/index.ts';
import { ratioGain } from './level-tables.ts';
import type { ReferenceTable } from './reference-table.ts';

const COUNTS = [2, 3, 4, 8, 16, 32];

export const equals: ReferenceTable = {
  id: 'equals',
  title: 'Several at the same level',
  about:
    'By how much so many together stand above one of them: the same sound adds in voltage, different sounds in power. The last column is what a bus of so many strips adds to the noise of its own amplifier.',
  columns: ['How many', 'The same sound', 'Different sounds', 'Noise gain of the bus'],
  rows: COUNTS.map((count) => {
    const all = Array.from({ length: count }, () => dbu(0));
    return [
      String(count),
      gainText(sumCoherent(all.map((level) => ({ level }))), 2),
      gainText(sumUncorrelated(all), 2),
      gainText(summingNoiseGain(count), 2),
    ];
  }),
  sources: ['audio-engineering-2008', 'textbook-adder'],
};

const DIFFERENCES = [0, 1, 2, 3, 6, 10, 12, 20, 30];

export const unequal: ReferenceTable = {
  id: 'unequal',
  title: 'Two at different levels',
  about:
    'By how much two together stand above the louder one. With one of them inverted, the same sound loses instead.',
  columns: [
    'The other is lower by',
    'The same sound',
    'The same, one inverted',
    'Different sounds',
  ],
  rows: DIFFERENCES.map((difference) => {
    const [loud, soft] = [dbu(0), dbu(-difference)];
    return [
      `${difference} dB`,
      gainText(sumCoherent([{ level: loud }, { level: soft }]), 2),
      invertedText(sumCoherent([{ level: loud }, { level: soft, inverted: true }])),
      gainText(sumUncorrelated([loud, soft]), 2),
    ];
  }),
  sources: ['audio-engineering-2008'],
};

const POSITIONS = [-1, -0.75, -0.5, -0.25, 0, 0.25, 0.5, 0.75, 1];
const PAN_NAMES = {
  'equal-power': 'Equal power',
  compromise: 'Compromise',
  linear: 'Linear',
} as const;

export const pans: ReferenceTable = {
  id: 'pan-laws',
  title: 'Pan laws',
  about:
    'What each side gets of a mono sound. With equal power it stays as loud on its way across when both sides are heard in a room; with the linear law it stays as loud in mono.',
  columns: [
    'Position',
    ...PAN_LAWS.flatMap((law) => [`${PAN_NAMES[law]}, left`, `${PAN_NAMES[law]}, right`]),
  ],
  rows: POSITIONS.map((position) => [
    positionText(position),
    ...PAN_LAWS.flatMap((law) => {
      const { left, right } = panMono(law, position);
      return [ratioGain(left), ratioGain(right)];
    }),
  ]),
  sources: ['w3c-web-audio'],
};

/** How late a way is, in samples at 48 kHz: what buffers and plug-ins are made of. */
const LATE_SAMPLES = [16, 32, 64, 128, 256, 512, 1024];
const SAMPLE_RATE = 48_000;

export const combs: ReferenceTable = {
  id: 'combs',
  title: 'Two ways, one of them late',
  about:
    'The same sound by two ways at the same level: the first gap, and how far apart the peaks stand. A gap every so often is a comb.',
  columns: ['Late by, at 48 kHz', 'In time', 'First gap at', 'Peaks apart by'],
  rows: LATE_SAMPLES.map((samples) => {
    const seconds = samples / SAMPLE_RATE;
    return [
      `${samples} samples`,
      `${Number((1000 * seconds).toPrecision(3))} ms`,
      frequencyText(1 / (2 * seconds)),
      frequencyText(1 / seconds),
    ];
  }),
  sources: ['everest-handbook'],
};

/** Output and input impedances as they are common on line level, in ohms. */
const OUTPUT = 100 as Ohms;
const INPUT = 10_000 as Ohms;

export const loads: ReferenceTable = {
  id: 'loads',
  title: 'One output into several inputs',
  about: `What a passive mult takes: an output of ${OUTPUT} Ω into inputs of ${INPUT / 1000} kΩ each. It is why a mult into line inputs is harmless, and into low ones is not.`,
  columns: ['Inputs', 'Load', 'Loss against no load'],
  rows: [1, 2, 3, 4, 8].map((count) => {
    const load = inParallel(INPUT, count);
    return [String(count), `${Math.round(load)} Ω`, ratioGain(loadedRatio(OUTPUT, load))];
  }),
  sources: ['textbook-divider'],
};

function invertedText(level: number): string {
  return level === SILENCE ? 'silence' : gainText(level, 2);
}

function positionText(position: number): string {
  if (position === 0) return 'centre';
  return `${signed(100 * Math.abs(position), 0).replace('+', '')} % ${position < 0 ? 'left' : 'right'}`;
}
