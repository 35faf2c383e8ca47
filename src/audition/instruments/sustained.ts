import { addAt, type Loop } from './loop.ts';
import { type Note, SAMPLE_RATE } from './piece.ts';

/** A sound that is held: a voice, a bow. */
export interface SustainedSound {
  /** Amplitudes of the harmonics of a note, the fundamental first. */
  readonly harmonics: (frequency: number) => readonly number[];
  /** Seconds in which a note comes and goes. */
  readonly attack: number;
  readonly release: number;
  /** By what share the frequency sways, and how often in a second. */
  readonly vibrato: { readonly depth: number; readonly rate: number };
}

/** Adds a note that is held for its length. */
export function addSustained(
  loop: Loop,
  note: Note,
  sound: SustainedSound,
  noise: () => number,
): void {
  const harmonics = sound.harmonics(note.frequency);
  const step = (2 * Math.PI) / SAMPLE_RATE;
  const swayStart = noise() * Math.PI;
  let phase = noise() * Math.PI;
  const length = note.length + Math.round(sound.release * SAMPLE_RATE);
  for (let frame = 0; frame < length; frame += 1) {
    const time = frame / SAMPLE_RATE;
    // The vibrato comes in only while a note is held.
    const sway = Math.min(1, time / 0.6) * sound.vibrato.depth;
    phase +=
      step *
      note.frequency *
      (1 + sway * Math.sin(2 * Math.PI * sound.vibrato.rate * time + swayStart));
    const fadeIn = Math.min(1, time / sound.attack);
    const fadeOut = Math.min(1, (length - frame) / (sound.release * SAMPLE_RATE));
    const loudness = note.loudness * smooth(fadeIn) * smooth(fadeOut);
    addAt(loop, note.start + frame, loudness * sumOfHarmonics(phase, harmonics));
  }
}

/** From 0 to 1 without an edge. */
const smooth = (share: number): number => share * share * (3 - 2 * share);

/** Σ aₖ sin(kφ), by sin((k+1)φ) = 2 cos φ sin kφ − sin((k−1)φ). */
function sumOfHarmonics(phase: number, amplitudes: readonly number[]): number {
  const twiceCos = 2 * Math.cos(phase);
  let before = 0;
  let sine = Math.sin(phase);
  let sum = 0;
  for (const amplitude of amplitudes) {
    sum += amplitude * sine;
    const next = twiceCos * sine - before;
    before = sine;
    sine = next;
  }
  return sum;
}

/** A resonance of a mouth or a body: where it lies and how wide it is, in hertz, and how strong. */
export type Resonance = readonly [frequency: number, width: number, strength: number];

/** Harmonics that fall off with their number and are lifted by resonances, up to 5 kHz and no more than 32. */
export const resonating =
  (slope: number, resonances: readonly Resonance[]) =>
  (frequency: number): number[] =>
    Array.from({ length: Math.min(32, Math.floor(5000 / frequency)) }, (_, index) => {
      const harmonic = (index + 1) * frequency;
      const lift = resonances.reduce(
        (sum, [centre, width, strength]) =>
          sum + strength / (1 + ((harmonic - centre) / width) ** 2),
        0.05,
      );
      return lift / (index + 1) ** slope;
    });
