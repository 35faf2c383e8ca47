import { seededNoise } from '../seeded-noise.ts';
import { emptyLoop, type Loop, levelled } from './loop.ts';
import { brokenChords } from './piece.ts';
import { addRinging, stringTones } from './struck.ts';
import { addSustained } from './sustained.ts';

/** Sounds of the plain voices, softest last: how their harmonics fall off. */
const VOICES = [
  { kind: 'plucked', slope: 1 },
  { kind: 'held', slope: 1.6 },
  { kind: 'plucked', slope: 1.8 },
  { kind: 'held', slope: 2.4 },
] as const;

/**
 * A voice for a track that none of the players stands for: plucked or held tones of the chords, each number with
 * tones of its own.
 *
 * @param number from 0; the same number makes the same voice.
 */
export function plainVoice(number: number): Loop {
  const { kind, slope } = VOICES[number % VOICES.length] ?? VOICES[0];
  const loop = emptyLoop();
  const noise = seededNoise(`plain voice ${number}`);
  const tone = number % 5;
  const notes = brokenChords(3, [
    [(number % 4) / 2, tone, 1],
    [1.5, tone + 1, 0.7],
    [2, tone + 2, 0.8],
  ]);
  const string = { tones: 10, slope, decay: 1.2, stiffness: 0 };
  const held = {
    harmonics: () => Array.from({ length: 10 }, (_, index) => 1 / (index + 1) ** slope),
    attack: 0.05,
    release: 0.1,
    vibrato: { depth: 0.002, rate: 5 },
  };
  for (const note of notes) {
    if (kind === 'held') addSustained(loop, note, held, noise);
    else addRinging(loop, note, stringTones(note.frequency, string), noise);
  }
  return levelled(loop);
}
