import { addAt, type Loop } from './loop.ts';
import { type Note, SAMPLE_RATE } from './piece.ts';

/** One of the tones that a struck or plucked thing rings at. */
export interface RingingTone {
  /** In hertz. */
  readonly frequency: number;
  readonly amplitude: number;
  /** Seconds in which it falls by 60 dB. */
  readonly decay: number;
}

/** Fall of an amplitude by 60 dB as an exponent. */
const SIXTY_DB = Math.log(1000);

/**
 * Adds tones that begin together and die away: y[n] = 2r cos ω · y[n−1] − r² · y[n−2], which is a decaying sine.
 * Each begins at 0, upwards or downwards.
 */
export function addRinging(
  loop: Loop,
  { start, loudness }: Note,
  tones: readonly RingingTone[],
  noise: () => number,
): void {
  for (const { frequency, amplitude, decay } of tones) {
    if (frequency >= SAMPLE_RATE / 2) continue;
    const omega = (2 * Math.PI * frequency) / SAMPLE_RATE;
    const shrink = Math.exp(-SIXTY_DB / (decay * SAMPLE_RATE));
    const one = 2 * shrink * Math.cos(omega);
    const two = -shrink * shrink;
    let before = 0;
    let now = loudness * amplitude * Math.sign(noise()) * Math.sin(omega);
    const length = decay * SAMPLE_RATE;
    for (let frame = 1; frame < length; frame += 1) {
      addAt(loop, start + frame, now);
      const next = one * now + two * before;
      before = now;
      now = next;
    }
  }
}

/**
 * Adds a burst of noise that dies away, as a hammer or a palm makes it.
 *
 * @param dullness from 0, all of the noise, up to but not 1: how much each sample keeps of the one before.
 */
export function addBurst(
  loop: Loop,
  { start, loudness }: Note,
  { amplitude, decay, dullness }: { amplitude: number; decay: number; dullness: number },
  noise: () => number,
): void {
  let sample = 0;
  for (let frame = 0; frame < decay * SAMPLE_RATE; frame += 1) {
    const time = frame / SAMPLE_RATE;
    sample = dullness * sample + (1 - dullness) * noise();
    // It begins within a millisecond, not at once.
    const rise = Math.min(1, time / 0.001);
    const fall = Math.exp((-SIXTY_DB * time) / decay);
    addAt(loop, start + frame, loudness * amplitude * rise * fall * sample);
  }
}

/**
 * Tones of a string: multiples of its frequency, a little sharp where it is stiff, the higher ones softer and
 * sooner gone.
 *
 * @param stiffness B in f(k) = k·f·√(1 + B·k²). Source: Fletcher, *Normal vibration frequencies of a stiff piano
 * string*, 1964; from memory.
 */
export const stringTones = (
  frequency: number,
  string: { tones: number; slope: number; decay: number; stiffness: number },
): RingingTone[] =>
  Array.from({ length: string.tones }, (_, index) => {
    const number = index + 1;
    return {
      frequency: number * frequency * Math.sqrt(1 + string.stiffness * number ** 2),
      amplitude: 1 / number ** string.slope,
      decay: string.decay / Math.sqrt(number),
    };
  });
