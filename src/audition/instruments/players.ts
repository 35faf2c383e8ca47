import { seededNoise } from '../seeded-noise.ts';
import { emptyLoop, type Loop, levelled } from './loop.ts';
import { brokenChords, melody, type Note, strokes } from './piece.ts';
import { addBurst, addRinging, type RingingTone, stringTones } from './struck.ts';
import { addSustained, resonating, type SustainedSound } from './sustained.ts';

/** The seven players of the net-loft session. Each makes its part from nothing, the same every time, at an RMS of 1. */

/** Resonances of a mouth that sings “ah”, in hertz; from memory. */
const TENOR_MOUTH = resonating(0.8, [
  [650, 90, 1],
  [1080, 110, 0.6],
  [2650, 200, 0.25],
]);
const ALTO_MOUTH = resonating(0.9, [
  [750, 110, 1],
  [1200, 130, 0.5],
  [2900, 250, 0.2],
]);
const CELLO_BODY = resonating(0.9, [
  [220, 120, 1],
  [450, 150, 0.6],
  [1500, 600, 0.3],
]);

export const tenor = (): Loop =>
  sung('tenor', melody('tenor'), {
    harmonics: TENOR_MOUTH,
    attack: 0.09,
    release: 0.12,
    vibrato: { depth: 0.008, rate: 5.1 },
  });

export const alto = (): Loop =>
  sung('alto', melody('alto'), {
    harmonics: ALTO_MOUTH,
    attack: 0.08,
    release: 0.12,
    vibrato: { depth: 0.009, rate: 5.6 },
  });

export const cello = (): Loop =>
  sung('cello', melody('cello'), {
    harmonics: CELLO_BODY,
    attack: 0.14,
    release: 0.2,
    vibrato: { depth: 0.005, rate: 4.6 },
  });

export function bass(): Loop {
  const string = { tones: 10, slope: 1.1, decay: 1.6, stiffness: 0.0001 };
  return struck('bass', melody('bass'), ({ frequency }) => stringTones(frequency, string));
}

/** Hammers on courses of strings: a quick rise through each chord. */
export function dulcimer(): Loop {
  const notes = brokenChords(4, [
    [0, 0, 1],
    [0.5, 2, 0.6],
    [1, 3, 0.8],
    [1.5, 4, 0.6],
    [2, 3, 0.7],
    [2.5, 2, 0.5],
  ]);
  const string = { tones: 9, slope: 0.9, decay: 1.5, stiffness: 0.0004 };
  const tap = { amplitude: 0.4, decay: 0.03, dullness: 0.3 };
  // The strings of a course are never quite in tune.
  const tones = ({ frequency }: Note) => [
    ...stringTones(frequency, string),
    ...stringTones(frequency * 1.0012, string),
  ];
  return struck('dulcimer', notes, tones, tap);
}

/** A skin: its tones stand in the ratios of a round membrane. Source: zeros of Bessel functions, by j₀₁ = 2.4048. */
const MEMBRANE = [1, 1.5933, 2.1355, 2.2954, 2.6531, 2.9173];

export function drum(): Loop {
  const notes = strokes([
    [0, 1],
    [1.5, 0.35],
    [2, 0.55],
    [2.5, 0.3],
  ]);
  const tones = MEMBRANE.map((ratio, index) => ({
    frequency: 82 * ratio,
    amplitude: 1 / (1 + index),
    decay: 0.7 / (1 + 0.4 * index),
  }));
  return struck('drum', notes, () => tones, { amplitude: 0.9, decay: 0.09, dullness: 0.75 });
}

const PIANO_STRING = { tones: 10, slope: 1.2, decay: 2, stiffness: 0.0003 };
const HAMMER = { amplitude: 0.12, decay: 0.04, dullness: 0.7 };

/** Low strings, to the left. */
export const pianoLeft = (): Loop =>
  struck(
    'piano left',
    brokenChords(3, [
      [0, 0, 1],
      [1, 1, 0.5],
    ]),
    ({ frequency }) => stringTones(frequency, PIANO_STRING),
    HAMMER,
  );

/** High strings, to the right. */
export const pianoRight = (): Loop =>
  struck(
    'piano right',
    brokenChords(4, [
      [1, 2, 0.6],
      [1.5, 3, 0.5],
      [2, 4, 0.7],
      [2.5, 1, 0.4],
    ]),
    ({ frequency }) => stringTones(frequency, PIANO_STRING),
    HAMMER,
  );

function sung(seed: string, notes: readonly Note[], sound: SustainedSound): Loop {
  const loop = emptyLoop();
  const noise = seededNoise(seed);
  for (const note of notes) addSustained(loop, note, sound, noise);
  return levelled(loop);
}

function struck(
  seed: string,
  notes: readonly Note[],
  tonesOf: (note: Note) => readonly RingingTone[],
  burst?: Parameters<typeof addBurst>[2],
): Loop {
  const loop = emptyLoop();
  const noise = seededNoise(seed);
  for (const note of notes) {
    addRinging(loop, note, tonesOf(note), noise);
    if (burst) addBurst(loop, note, burst, noise);
  }
  return levelled(loop);
}
